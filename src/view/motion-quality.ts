/** Share of the pixels per edge while the camera moves, best first. 1 is the picture at rest, multisampled. */
const SHARES = [1, 0.6, 0.45] as const;
/** Frames of a moving camera closer together than this leave room for a better step, ms. */
const EASY_MS = 20;
/** Frames farther apart than this are too slow, ms. */
const HARD_MS = 36;
const FRAMES_TO_TRUST = 4;
/** A step that proved too slow is not tried again for so long, ms. */
const GIVE_UP_MS = 20_000;
/** A longer gap is a pause of the hand, not a slow frame, ms. */
const PAUSE_MS = 400;

/** Decides from the pace of frames how fine a moving camera may be drawn on this machine. */
export class MotionQuality {
  #step = 1;
  #easyFrames = 0;
  #hardFrames = 0;
  #last_ms = Number.NEGATIVE_INFINITY;
  #gaveUp_ms = Number.NEGATIVE_INFINITY;

  /** Pixels per edge, as a share of the picture at rest. */
  get share(): number {
    return SHARES[this.#step]!;
  }

  /** Call once per frame while the camera moves. */
  noteFrame(now_ms: number): void {
    const gap = now_ms - this.#last_ms;
    this.#last_ms = now_ms;
    if (gap > PAUSE_MS) return;
    this.#easyFrames = gap <= EASY_MS ? this.#easyFrames + 1 : 0;
    this.#hardFrames = gap > HARD_MS ? this.#hardFrames + 1 : 0;
    if (this.#hardFrames >= FRAMES_TO_TRUST && this.#step < SHARES.length - 1) {
      this.#gaveUp_ms = now_ms;
      this.#moveTo(this.#step + 1);
    } else if (this.#easyFrames >= FRAMES_TO_TRUST && this.#step > 0 && now_ms - this.#gaveUp_ms > GIVE_UP_MS) {
      this.#moveTo(this.#step - 1);
    }
  }

  #moveTo(step: number): void {
    this.#step = step;
    this.#easyFrames = 0;
    this.#hardFrames = 0;
  }
}
