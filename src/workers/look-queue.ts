import type { Look } from '../kitchen/look';
import type { FromLight, FromPattern, ToPattern } from './messages';
import { PatternShelf } from './pattern-shelf';

const MOST_PATTERNS = 32;

type PaintedLook = Extract<FromLight, { kind: 'look' }>;

/** Looks wait here until their patterns are baked; the newest per option, of the room and of the stand, is handed on, older ones never after newer. */
export class LookQueue {
  readonly #shelf = new PatternShelf(MOST_PATTERNS);
  readonly #baking = new Set<string>();
  readonly #waiting = new Map<string, PaintedLook>();

  constructor(
    private readonly bake: (request: ToPattern) => void,
    /** `revision`: the request the look answers. */
    private readonly ready: (look: Look, revision: number, stand: PaintedLook['stand']) => void,
  ) {}

  /** Has patterns baked that a look will need soon. */
  prepare(patterns: readonly ToPattern[]): void {
    for (const pattern of patterns) this.#ask(pattern);
  }

  add(look: PaintedLook): void {
    this.#waiting.set(`${look.stand ? 'stand' : 'room'} ${look.look.option}`, look);
    this.#release();
  }

  /** Another room or stand came: looks of the one before no longer fit what is drawn. */
  forget(scene: 'room' | 'stand'): void {
    for (const key of this.#waiting.keys()) if (key.startsWith(`${scene} `)) this.#waiting.delete(key);
  }

  baked({ key, texture }: FromPattern): void {
    this.#baking.delete(key);
    this.#shelf.put(key, texture);
    this.#release();
  }

  #release(): void {
    for (const [key, { look, patterns, revision, stand }] of [...this.#waiting]) {
      const missing = patterns.filter(({ key }) => !this.#shelf.has(key));
      for (const pattern of missing) this.#ask(pattern);
      if (missing.length) continue;
      this.#waiting.delete(key);
      const keys = patterns.map(({ key }) => key);
      this.ready({ ...look, patterns: this.#shelf.take(keys, this.#needed(keys)) }, revision, stand);
    }
  }

  #ask({ key, spec }: ToPattern): void {
    if (this.#baking.has(key) || this.#shelf.has(key)) return;
    this.#baking.add(key);
    this.bake({ key, spec });
  }

  #needed(keys: readonly string[]): ReadonlySet<string> {
    const waiting = [...this.#waiting.values()].flatMap(({ patterns }) => patterns.map(({ key }) => key));
    return new Set([...keys, ...waiting]);
  }
}
