import type { DirectMap } from '../engine/light/direct-map';
import { DIRECT_LAYERS } from '../engine/light/direct-scene';
import type { ByLayer } from '../kitchen/look';
import type { DaylightState } from '../kitchen/study/daylight-of';
import {
  basisUnder,
  type RoomBasis,
  type RoomParts,
  type RoomStudy,
  refineBasis,
  studyBasis,
  studyReadings,
} from '../kitchen/study/room-study';
import { createDirectDesk, type DirectDesk } from './direct-desk';
import type { Post } from './messages';

/** The picture gets finer direct light this many times on the way to full quality. */
const REFINEMENTS = 4;
/** Skies kept for when one comes back to them: day and night, morning and afternoon. */
const MOST_SKIES = 6;

type Pause = () => Promise<void>;
type Stale = () => boolean;

/** Which layers of light are on: what is off can wait. */
export type Lit = readonly [daylight: boolean, lamps: boolean];

/** What is known of the room under one state of the outdoors. */
interface UnderSky {
  basis: RoomBasis;
  study: RoomStudy | null;
  readonly desk: DirectDesk;
}

/** A room being worked on: each part gets better in place, and is done once. */
export class RoomAtWork {
  #isFinal = false;
  #revision = 0;
  #lamps: DirectDesk | null = null;
  #byNight: { basis: RoomBasis; study: RoomStudy | null };
  #sky: UnderSky | null = null;
  #lit: Lit = [false, false];
  /** Layers that got finer while they were off, since the picture heard of them. */
  readonly #untold = new Set<0 | 1>();
  readonly #skies = new Map<string, UnderSky>();
  #latest: RoomStudy | null = null;

  private constructor(
    base: RoomBasis,
    private readonly post: Post,
    private readonly pause: Pause,
  ) {
    this.#byNight = { basis: base, study: null };
  }

  /** Builds a kitchen and posts its room; light follows with `under`. */
  static async begin(parts: RoomParts, post: Post, pause: Pause): Promise<RoomAtWork> {
    const room = new RoomAtWork(await inSlices(studyBasis(parts), pause), post, pause);
    post({ kind: 'room', room: room.basis.room });
    return room;
  }

  /**
   * Puts the room under a sky (null: as it was, by night) and draws what is lit coarsely. False when something newer came in
   * between: then the room may be under the old sky still.
   */
  async under(state: DaylightState | null, lit: Lit, stale: Stale): Promise<boolean> {
    if (state && state.key !== this.#sky?.basis.outdoors && !(await this.#changeSky(state, stale))) return false;
    const [daylight, lamps] = this.#lit;
    const isOther = daylight !== lit[0] || lamps !== lit[1];
    this.#lit = lit;
    let isNews = this.#revision === 0;
    for (const layer of [0, 1] as const) {
      // In the dark the picture needs texels, too: those of lamps that are off.
      const isNeeded = lit[layer] || (layer === 1 && !lit[0]);
      if (!isNeeded) continue;
      if (layer === 1) this.#lamps ??= createDirectDesk(this.basis, DIRECT_LAYERS[1]);
      const desk = this.#desk(layer);
      if (!desk) continue;
      // Half a lattice would be shown as if it were all: it is drawn to its end even when it is no longer wanted.
      while (!desk.isWhole) {
        desk.step();
        this.#untold.add(layer);
        await this.pause();
      }
      isNews ||= this.#untold.has(layer);
    }
    if (isNews) this.#postLight();
    else if (isOther) this.#postLight('none');
    return !stale();
  }

  get basis(): RoomBasis {
    return (this.#sky ?? this.#byNight).basis;
  }

  get directMaps(): ByLayer<DirectMap> {
    return [this.#sky?.desk.map ?? null, this.#lamps?.map ?? null];
  }

  /** True once numbers are final: only direct light in the picture may still get finer. */
  get isFinal(): boolean {
    return this.#isFinal;
  }

  /** Whether what findings need is worked out already. */
  get hasStudy(): boolean {
    return (this.#sky ?? this.#byNight).study !== null;
  }

  /** What findings need; worked out when first asked for. */
  get study(): RoomStudy {
    const under = this.#sky ?? this.#byNight;
    if (under.study?.nodes !== under.basis.nodes) {
      under.study = studyReadings(under.basis, under.study ?? this.#latest ?? undefined);
      this.#latest = under.study;
    }
    return under.study;
  }

  /** Gathers at final quality. False when something newer came in between. */
  async finish(stale: Stale): Promise<boolean> {
    if (this.#isFinal) return true;
    const finer = await inSlices(refineBasis(this.basis), this.pause, stale);
    if (!finer) return false;
    const { nodes, props } = finer;
    for (const under of [this.#byNight, ...this.#skies.values()]) under.basis = { ...under.basis, nodes, props };
    this.#isFinal = true;
    return true;
  }

  /** Draws direct light on until full quality, what is lit first; false when something newer came in between. */
  async refineDirect(lit: Lit, stale: Stale): Promise<boolean> {
    this.#lamps ??= createDirectDesk(this.basis, DIRECT_LAYERS[1]);
    for (const layer of lit[0] ? ([0, 1] as const) : ([1, 0] as const)) {
      const desk = this.#desk(layer);
      let sent = 0;
      while (desk && !desk.done) {
        const { stage, share } = desk.step();
        if (!lit[layer]) this.#untold.add(layer);
        // Of light that is off the picture hears once, at its best: each state of it would be drawn for nothing to be seen.
        const isFiner = lit[layer] && stage === 'refine' && share >= (sent + 1) / REFINEMENTS;
        if (desk.done || isFiner) {
          sent = Math.floor(share * REFINEMENTS);
          this.#postLight(layer);
        }
        await this.pause();
        if (stale()) return false;
      }
    }
    return true;
  }

  async #changeSky(state: DaylightState, stale: Stale): Promise<boolean> {
    const known = this.#skies.get(state.key);
    if (known) {
      this.#skies.delete(state.key);
      this.#skies.set(state.key, known);
      this.#sky = known;
      this.#postLight();
      return true;
    }
    const { nodes, props } = this.basis;
    const basis = await inSlices(basisUnder({ ...this.#byNight.basis, nodes, props }, state), this.pause, stale);
    if (!basis) return false;
    this.#sky = { basis, study: null, desk: createDirectDesk(basis, DIRECT_LAYERS[0]) };
    this.#skies.set(state.key, this.#sky);
    if (this.#skies.size > MOST_SKIES) this.#skies.delete(this.#skies.keys().next().value!);
    return true;
  }

  #desk(layer: 0 | 1): DirectDesk | null {
    return layer === 0 ? (this.#sky?.desk ?? null) : this.#lamps;
  }

  /** Posts the light of one layer, of both, or only how far it is. */
  #postLight(only?: 0 | 1 | 'none'): void {
    const { basis } = this;
    const lights = ([0, 1] as const).map((layer) => {
      const desk = only === undefined || only === layer ? this.#desk(layer) : null;
      if (desk) this.#untold.delete(layer);
      return desk?.map ? desk.light() : null;
    });
    const [daylight, lamps] = lights;
    const map = this.#sky?.desk.map ?? this.#lamps?.map;
    if (!map) return;
    const light = {
      directAtlas: map.atlas,
      direct: [daylight?.direct ?? null, lamps?.direct ?? null] as const,
      nodeAtlas: basis.nodes.atlas,
      propDirect: [daylight?.props ?? null, lamps?.props ?? null] as const,
      revision: ++this.#revision,
      isFinal: ([0, 1] as const).every((layer) => !this.#lit[layer] || (this.#desk(layer)?.done ?? false)),
    };
    this.post(
      { kind: 'light', light },
      light.direct.flatMap((data) => (data ? [data.buffer as ArrayBuffer] : [])),
    );
  }
}

async function inSlices<T>(steps: Generator<unknown, T>, pause: Pause): Promise<T>;
async function inSlices<T>(steps: Generator<unknown, T>, pause: Pause, stale: Stale): Promise<T | null>;
async function inSlices<T>(steps: Generator<unknown, T>, pause: Pause, stale?: Stale): Promise<T | null> {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    await pause();
    if (stale?.()) return null;
  }
}
