import type { SparseRows } from '../types';

/** Where rows lie in a module's memory, in bytes. */
export interface PlacedRows {
  readonly start: number;
  readonly column: number;
  /** From a column to its weight. */
  readonly toValue: number;
}

/** What is kept beyond this is all dropped; what is still used is copied again. Three large kitchens. */
const KEPT_BYTES = 64 * 2 ** 20;
const PAGE = 2 ** 16;

/**
 * A WebAssembly memory in two parts: what is used again and again, below, and above it what one call needs. `begin` frees the upper part.
 */
export class Arena {
  private top = 0;
  private kept = 0;
  private places = new WeakMap<object, unknown>();

  constructor(private readonly memory: WebAssembly.Memory) {}

  get bytes(): number {
    return this.memory.buffer.byteLength;
  }

  /** Starts a call that works on `rows`, which are there already or copied now. */
  begin(rows: SparseRows): PlacedRows {
    return this.beginWith(rows, 4 * rows.start.length + 8 * rows.column.length + 3 * 16, () => {
      const start = this.place(rows.start);
      const column = this.place(rows.column);
      return { start, column, toValue: this.place(rows.value) - column };
    });
  }

  /** Starts a call that works on what `copy` places of `key` in at most so many bytes; it is there already or copied now. */
  beginWith<T extends object>(key: object, bytes: number, copy: () => T): T {
    this.top = this.kept;
    const known = this.places.get(key);
    if (known) return known as T;
    if (this.kept + bytes > KEPT_BYTES) {
      this.places = new WeakMap();
      this.top = 0;
    }
    const placed = copy();
    this.places.set(key, placed);
    this.kept = this.top;
    return placed;
  }

  /** The same for something more, straight after `begin`. Where there is no room to keep it, it is copied for this call. */
  also<T extends object>(key: object, bytes: number, copy: () => T): T {
    const known = this.places.get(key);
    if (known) return known as T;
    const placed = copy();
    if (this.kept + bytes <= KEPT_BYTES) {
      this.places.set(key, placed);
      this.kept = this.top;
    }
    return placed;
  }

  /** Starts a call that needs nothing of what is kept. */
  beginWithout(): void {
    this.top = this.kept;
  }

  /** Room for `bytes`, at a multiple of 16; holds whatever was there. */
  reserve(bytes: number): number {
    const at = this.top;
    this.top = (at + bytes + 15) & ~15;
    const missing = this.top - this.bytes;
    if (missing > 0) this.memory.grow(Math.ceil(missing / PAGE));
    return at;
  }

  place(values: Float32Array | Float64Array | Uint32Array | Int32Array): number {
    const at = this.reserve(values.byteLength);
    const Numbers = values.constructor as Float32ArrayConstructor;
    new Numbers(this.memory.buffer, at, values.length).set(values as Float32Array);
    return at;
  }

  /** `length` integers at `at`, until memory grows. */
  integers(at: number, length: number): Int32Array {
    return new Int32Array(this.memory.buffer, at, length);
  }

  /** `length` doubles at `at`, until memory grows. */
  doubles(at: number, length: number): Float64Array {
    return new Float64Array(this.memory.buffer, at, length);
  }

  /** `length` floats at `at`, until memory grows. */
  floats(at: number, length: number): Float32Array {
    return new Float32Array(this.memory.buffer, at, length);
  }

  /** Values in groups of `width`, each filled up with zeros to `padded`; gives their place. */
  placePadded(values: Float32Array | Float64Array, width: number, padded: number): number {
    const count = values.length / width;
    const at = this.reserve(4 * count * padded);
    const to = this.floats(at, count * padded);
    if (width === padded) to.set(values);
    else {
      to.fill(0);
      for (let i = 0; i < count; i++) for (let k = 0; k < width; k++) to[i * padded + k] = values[i * width + k]!;
    }
    return at;
  }

  /** The reverse: what is at `at`, without the filling. */
  readPadded(at: number, width: number, padded: number, out: Float32Array | Float64Array): void {
    const count = out.length / width;
    const from = this.floats(at, count * padded);
    if (width === padded) out.set(from);
    else for (let i = 0; i < count; i++) for (let k = 0; k < width; k++) out[i * width + k] = from[i * padded + k]!;
  }
}
