import type { PatternTexture } from '../engine/pattern/types';

/**
 * Baked patterns kept for looks to come, about 1 MB each. The least recently taken go first, but never one that is still
 * asked for.
 */
export class PatternShelf {
  readonly #textures = new Map<string, PatternTexture | null>();

  constructor(private readonly most: number) {}

  /** Known keys include those that could not be baked. */
  has(key: string): boolean {
    return this.#textures.has(key);
  }

  put(key: string, texture: PatternTexture | null): void {
    this.#textures.set(key, texture);
  }

  /** The textures of some keys, those that could not be baked left out; then drops what is old and not among `needed`. */
  take(keys: readonly string[], needed: ReadonlySet<string>): Map<string, PatternTexture> {
    const taken = new Map<string, PatternTexture>();
    for (const key of keys) {
      const texture = this.#textures.get(key);
      if (texture === undefined) continue;
      this.#textures.delete(key);
      this.#textures.set(key, texture);
      if (texture) taken.set(key, texture);
    }
    for (const key of this.#textures.keys()) {
      if (this.#textures.size <= this.most) break;
      if (!needed.has(key)) this.#textures.delete(key);
    }
    return taken;
  }
}
