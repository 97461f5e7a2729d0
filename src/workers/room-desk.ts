import type { DirectMap } from '../engine/light/direct-map';
import { type RoomBasis, type RoomStudy, refineBasis, studyBasis, studyReadings } from '../kitchen/study/room-study';
import type { Kitchen } from '../model/project';
import { createDirectDesk, type DirectDesk } from './direct-desk';
import type { Post } from './messages';

/** The picture gets finer direct light this many times on the way to full quality. */
const REFINEMENTS = 4;

type Pause = () => Promise<void>;

/** A room being worked on: each part gets better in place, and is done once. */
export class RoomAtWork {
  #study: RoomStudy | null = null;
  #isFinal = false;
  readonly #direct: DirectDesk;

  private constructor(
    private current: RoomBasis,
    private readonly post: Post,
    private readonly pause: Pause,
  ) {
    this.#direct = createDirectDesk(current);
  }

  /** Builds a kitchen up to a first picture and posts its room and light. */
  static async begin(kitchen: Kitchen, post: Post, pause: Pause): Promise<RoomAtWork> {
    const room = new RoomAtWork(await inSlices(studyBasis(kitchen), pause), post, pause);
    while (room.#direct.step().stage === 'lattice') await pause();
    post({ kind: 'room', room: room.current.room });
    room.#postLight();
    return room;
  }

  get basis(): RoomBasis {
    return this.current;
  }

  get directMap(): DirectMap | null {
    return this.#direct.map;
  }

  /** True once numbers are final: only direct light in the picture may still get finer. */
  get isFinal(): boolean {
    return this.#isFinal;
  }

  /** Whether what findings need is worked out already. */
  get hasStudy(): boolean {
    return this.#study !== null;
  }

  /** What findings need; worked out when first asked for. */
  get study(): RoomStudy {
    this.#study ??= studyReadings(this.current);
    return this.#study;
  }

  /** Gathers at final quality. False when something newer came in between. */
  async finish(stale: () => boolean): Promise<boolean> {
    if (this.#isFinal) return true;
    const finer = await inSlices(refineBasis(this.current), this.pause, stale);
    if (!finer) return false;
    this.#study = studyReadings(finer, this.study);
    this.current = finer;
    this.#isFinal = true;
    return true;
  }

  /** Draws direct light on until full quality; false when something newer came in between. */
  async refineDirect(stale: () => boolean): Promise<boolean> {
    let sent = 0;
    while (!this.#direct.done) {
      const { share } = this.#direct.step();
      if (this.#direct.done || share >= (sent + 1) / REFINEMENTS) {
        sent = Math.floor(share * REFINEMENTS);
        this.#postLight();
      }
      await this.pause();
      if (stale()) return false;
    }
    return true;
  }

  #postLight(): void {
    const light = this.#direct.roomLight();
    this.post({ kind: 'light', light }, [light.direct.buffer as ArrayBuffer]);
  }
}

async function inSlices<T>(steps: Generator<unknown, T>, pause: Pause): Promise<T>;
async function inSlices<T>(steps: Generator<unknown, T>, pause: Pause, stale: () => boolean): Promise<T | null>;
async function inSlices<T>(steps: Generator<unknown, T>, pause: Pause, stale?: () => boolean): Promise<T | null> {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    await pause();
    if (stale?.()) return null;
  }
}
