import type { DirectMap } from '../engine/light/direct-map';
import { directTexels } from '../engine/light/direct-texels';
import type { ByLayer } from '../kitchen/look';
import { presentSurfaces } from '../kitchen/present-surfaces';
import type { SeenBy } from '../kitchen/seen-by';
import { buildStand } from '../kitchen/stand/build-stand';
import type { StandChoice } from '../kitchen/stand/types';
import { beginLight, gatherGroup, type LitScheme } from '../kitchen/study/lit-scheme';
import { paintLook } from '../kitchen/study/paint-look';
import type { RoomBasis } from '../kitchen/study/room-study';
import { layScheme } from '../kitchen/study/scheme';
import type { SettingLight } from '../kitchen/study/setting-light';
import { beginScheme, solveSchemeGroup } from '../kitchen/study/solved-scheme';
import { LAMP_LAYERS, mapsLit } from '../kitchen/study/stand-light';
import { readSamples } from '../kitchen/study/stand-samples';
import { standScheme } from '../kitchen/study/stand-scheme';
import {
  type LitStand,
  refineStandInSteps,
  type StandBase,
  standBaseInSteps,
  standInRoom,
} from '../kitchen/study/stand-study';
import { GROUPS, type Project } from '../model/project';
import type { Post, Show } from './messages';

type Pause = () => Promise<void>;
type Stale = () => boolean;

/** What the stand is to show now. */
export interface StandRequest {
  readonly show: Show;
  /** Whose sight it is painted for when it comes to that: another may be asked for meanwhile. */
  readonly seenBy: () => SeenBy;
  readonly choice: StandChoice;
  readonly setting: SettingLight;
  /** The room whose worktop's light is repeated. */
  readonly room: RoomBasis;
  readonly stale: Stale;
}

/** Per layer of LAMP_LAYERS: the map as far as it is drawn. */
interface Drawing {
  readonly steps: ReturnType<typeof directTexels>;
  map: DirectMap | null;
  done: boolean;
}

/** Pictures of the stand are kept for this many lights: to go back and forth between settings is quick. */
const MOST_LIT = 6;

/** The sample stand being worked on: its geometry is done once for what stands there, its light once for each light of the worktop. */
export class StandAtWork {
  #key = '';
  #base: StandBase | null = null;
  #isFine = false;
  #drawings: Drawing[] = [];
  /** The direct light that was posted last. */
  #maps: ByLayer<DirectMap> = [null, null];
  #lit: { readonly room: RoomBasis['room']; readonly outdoors: string; readonly stand: LitStand } | null = null;
  readonly #schemes = new Map<string, LitScheme>();
  #revision = 0;

  constructor(
    private readonly post: Post,
    private readonly pause: Pause,
  ) {}

  /** The stand for every option shown, coarse at first. False when something newer came in between. */
  async show(request: StandRequest): Promise<boolean> {
    if (!(await this.#build(request))) return false;
    if (!(await this.#draw(request, 'lattice'))) return false;
    this.#light(request);
    this.#postLight(request);
    return this.#paint(request);
  }

  /** The same at full quality. */
  async finish(request: StandRequest): Promise<boolean> {
    if (!this.#base) return false;
    if (!this.#isFine) {
      const base = await this.#inSlices(refineStandInSteps(this.#base), request.stale);
      if (!base) return false;
      this.#base = base;
      this.#isFine = true;
      this.#lit = null;
      this.#schemes.clear();
      this.#light(request);
      if (!(await this.#paint(request))) return false;
    }
    if (this.#layersOn(request).every((layer) => this.#drawings[layer]!.done)) return true;
    if (!(await this.#draw(request, 'done'))) return false;
    this.#postLight(request);
    return true;
  }

  /** What a point of the stand is read from; null while the option is not lit there. */
  reading(option: string): { basis: RoomBasis; lit: LitScheme; maps: ByLayer<DirectMap> } | null {
    const stand = this.#lit?.stand;
    const lit = [...this.#schemes.values()].findLast(({ solved }) => solved.scheme.option === option);
    const maps = this.#maps;
    return stand && lit ? { basis: stand.basis, lit, maps } : null;
  }

  /** Paints the options again, as for another eye. */
  repaint(request: StandRequest): void {
    if (!this.#lit) return;
    for (const option of request.show.options) {
      const lit = this.#schemes.get(this.#schemeKey(request, option));
      if (lit) this.#postLook(request, lit);
    }
  }

  async #build({ show, choice, room: { room: kitchen }, stale }: StandRequest): Promise<boolean> {
    const options = show.project.options.filter(({ id }) => show.options.includes(id));
    const stand = buildStand(show.project, options, choice.arrangement, presentSurfaces(kitchen));
    const key = JSON.stringify([choice, stand.samples]);
    if (key === this.#key) return true;
    const base = await this.#inSlices(standBaseInSteps(stand, choice.backing), stale);
    if (!base) return false;
    this.#key = key;
    this.#base = base;
    this.#isFine = false;
    this.#lit = null;
    this.#schemes.clear();
    const { room, transport } = base.lamps;
    this.#drawings = LAMP_LAYERS.map((layer) => ({
      steps: directTexels(room, transport, { layer }),
      map: null,
      done: false,
    }));
    this.post({ kind: 'stand-room', room: stand.room });
    return true;
  }

  /** Which maps are needed: chief faces and fills of the layers that are on. */
  #layersOn({ setting }: Pick<StandRequest, 'setting'>): number[] {
    const half = GROUPS.length / 2;
    const isOn = (layer: number) =>
      setting.levels.some((level, group) => level > 0 && Math.floor(group / half) === layer);
    const on = [0, 1].filter(isOn);
    // In the dark the picture needs texels, too.
    return (on.length > 0 ? on : [1]).flatMap((layer) => [layer, layer + 2]);
  }

  async #draw(request: StandRequest, until: 'lattice' | 'done'): Promise<boolean> {
    for (const layer of this.#layersOn(request)) {
      const drawing = this.#drawings[layer]!;
      // Half a lattice would be shown as if it were all: it is drawn to its end even when it is no longer wanted.
      while (until === 'lattice' ? !drawing.map : !drawing.done) {
        const step = drawing.steps.next();
        if (step.done) {
          drawing.map = step.value;
          drawing.done = true;
        } else if (step.value.stage === 'refine') drawing.map = step.value.map;
        await this.pause();
        if (until === 'done' && request.stale()) return false;
      }
    }
    return !request.stale();
  }

  #light({ room }: StandRequest): void {
    const before = this.#lit;
    if (before?.room === room.room && before.outdoors === room.outdoors) return;
    this.#lit = { room: room.room, outdoors: room.outdoors, stand: standInRoom(this.#base!, room) };
  }

  #postLight(request: StandRequest): void {
    const maps = mapsLit(
      this.#drawings.map(({ map }) => map),
      this.#lit!.stand.lumens,
    );
    this.#maps = maps;
    const { nodes } = this.#base!;
    this.post({
      kind: 'stand-light',
      light: {
        directAtlas: (maps[0] ?? maps[1])!.atlas,
        direct: [maps[0]?.data ?? null, maps[1]?.data ?? null],
        nodeAtlas: nodes.atlas,
        propDirect: [[], []],
        revision: ++this.#revision,
        isFinal: this.#isFine && this.#layersOn(request).every((layer) => this.#drawings[layer]!.done),
      },
    });
  }

  async #paint(request: StandRequest): Promise<boolean> {
    for (const option of request.show.options) {
      const lit = await this.#schemeOf(request, option);
      if (lit === 'stale') return false;
      if (lit) this.#postLook(request, lit);
      await this.pause();
      if (request.stale()) return false;
    }
    return true;
  }

  async #schemeOf(request: StandRequest, option: string): Promise<LitScheme | 'stale' | null> {
    const { show, choice, setting } = request;
    const { basis } = this.#lit!.stand;
    const key = this.#schemeKey(request, option);
    let lit = this.#schemes.get(key);
    if (!lit) {
      const laid = layScheme(show.project, option, basis.room.surfaces);
      // The room tells of it.
      if (!laid.ok) return null;
      lit = beginLight(basis, beginScheme(standScheme(laid.value, choice.backing), GROUPS.length));
    }
    this.#schemes.delete(key);
    this.#schemes.set(key, lit);
    if (this.#schemes.size > 2 * MOST_LIT) this.#schemes.delete(this.#schemes.keys().next().value!);
    for (const [group, level] of setting.levels.entries()) {
      if (!(level > 0) || lit.nodeLight[group]) continue;
      solveSchemeGroup(basis, lit.solved, group);
      gatherGroup(basis, lit, group);
      await this.pause();
      if (request.stale()) return 'stale';
    }
    return lit;
  }

  #schemeKey({ show }: StandRequest, option: string): string {
    return JSON.stringify([this.#lit!.outdoors, roomNumber(this.#lit!.room), optionKey(show.project, option)]);
  }

  #postLook({ show, seenBy, setting }: StandRequest, lit: LitScheme): void {
    const { stand } = this.#lit!;
    const { look, patterns } = paintLook(stand.basis, lit, setting, seenBy());
    const readings = readSamples(stand, this.#base!.stand.samples, lit.solved.scheme, setting);
    this.post({ kind: 'look', revision: show.revision, look, patterns, stand: { readings } });
  }

  async #inSlices<T>(steps: Generator<unknown, T>, stale: Stale): Promise<T | null> {
    for (;;) {
      const step = steps.next();
      if (step.done) return step.value;
      await this.pause();
      if (stale()) return null;
    }
  }
}

/** Rooms are told apart by when they were first met. */
const numbers = new WeakMap<object, number>();
let rooms = 0;
function roomNumber(room: object): number {
  const known = numbers.get(room);
  if (known !== undefined) return known;
  numbers.set(room, ++rooms);
  return rooms;
}

/** Everything the look of an option rests on besides light. */
function optionKey(project: Project, option: string): string {
  const scheme = project.options.find(({ id }) => id === option)?.scheme;
  if (!scheme) return option;
  const used = new Set(Object.values(scheme).flatMap(({ finish, laying }) => [finish, laying.grout ?? '']));
  return JSON.stringify([option, scheme, project.library.filter(({ id }) => used.has(id))]);
}
