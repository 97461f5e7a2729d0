import type { SurfaceId } from '../engine/surface';
import { presentSurfaces } from '../kitchen/present-surfaces';
import type { SeenBy } from '../kitchen/seen-by';
import { balanceIn } from '../kitchen/study/balance-in-setting';
import { finishInLights } from '../kitchen/study/finish-in-lights';
import { readHeld } from '../kitchen/study/held-reading';
import { laidSample } from '../kitchen/study/lay-sample';
import type { LitScheme } from '../kitchen/study/lit-scheme';
import { meetingsOf } from '../kitchen/study/meetings';
import { narrowings } from '../kitchen/study/narrowing';
import { readPoint, readPropPoint } from '../kitchen/study/point-reading';
import { readStand } from '../kitchen/study/stand-reading';
import { worktopLights } from '../kitchen/study/worktop-lights';
import { offeredFinishes, type Shelf } from '../model/offered-finishes';
import type { Project } from '../model/project';
import { carryLook, relateLook } from './carry-look';
import type { InSlices, Job } from './job';
import type { QuestionKind, Questions } from './questions';
import { rowsNow, type ShortlistSource, shortlistInPlace, shortlistNow, whyNow } from './shortlist-desk';
import type { StandAtWork } from './stand-desk';
import { underSky } from './under-sky';

/** What there is to answer from. */
export interface AtHand {
  /** The request on screen; null before the first is lit. */
  readonly current: Job | null;
  /** The document as it was last sent, also where nothing of it is lit yet. */
  readonly project: Project | null;
  /** The libraries kept beside it. */
  readonly shelf: Shelf;
  /** The same, unless its room is under another sky already: its lamps and that sky do not belong together. */
  readonly settled: Job | null;
  readonly stand: StandAtWork;
  readonly seenBy: SeenBy;
  /** The option as lit for a request, as far as that is. */
  litOf(job: Job, option: string): LitScheme | undefined;
}

type Answering<K extends QuestionKind> = (
  asked: Questions[K]['asks'],
  from: AtHand,
) => Questions[K]['gets'] | null | InSlices<Questions[K]['gets'] | null>;

/** How each question is answered: at once, or in slices where that takes long. */
export const ANSWERS: { readonly [K in QuestionKind]: Answering<K> } = {
  'read-narrowings': ({ option: id }, { current }) => {
    const option = current?.show.project.options.find((one) => one.id === id);
    // Something newer is on its way: what is asked about may be of it.
    if (!current || current.stale() || !option) return null;
    const { room, show } = current;
    const meetings = room.hasStudy ? meetingsOf(room.study) : undefined;
    return narrowings(show.project, option, presentSurfaces(room.basis.room), meetings);
  },
  'read-balance': function* ({ option, setting }, { current }) {
    const studied = current && (yield* underSky(current, setting));
    // The document asked about may be a newer one: who is told nothing asks again.
    if (!studied || current.stale()) return null;
    const balance = balanceIn(current.show.project, option, studied);
    return balance.ok ? balance.value : null;
  },
  'read-point': ({ option, rect, u, v, onProp, eye, place, onStand }, from) => {
    const read = placeFrom(from, option, onStand);
    if (!read) return null;
    const { basis, lit, maps, setting } = read;
    return onProp
      ? readPropPoint(basis, lit, setting, maps, onProp, place, eye, from.seenBy)
      : readPoint(basis, lit, setting, maps, rect, u, v, place, eye, from.seenBy);
  },
  'read-held': ({ option, onStand, held, ...place }, from) => {
    const read = placeFrom(from, option, onStand);
    return read && readHeld(read.project, read.basis, read.lit, read.setting, read.maps, place, held, from.seenBy);
  },
  'read-lights': ({ option, surface, beside }, { current, litOf }) => {
    if (!current) return null;
    const surfaces = litOf(current, option)?.solved.scheme.surfaces;
    const finishOn = (wanted: SurfaceId | null) => surfaces?.find((laid) => laid.surface === wanted)?.finish ?? null;
    const finish = finishOn(surface);
    const lights = worktopLights(current.show.project, current.room.basis);
    return finish && lights.ok ? finishInLights(finish, lights.value, finishOn(beside)) : null;
  },
  'read-stand': ({ option, finish: id }, { settled, litOf }) => {
    const lit = settled && litOf(settled, option);
    const finish = settled && laidSample(settled.show.project, id);
    return lit && finish?.ok ? readStand(settled.room.basis, lit, settled.setting, finish.value) : null;
  },
  'carry-look': (asked, { settled }) => (settled?.room.hasStudy ? carryLook(asked, settled) : null),
  'relate-look': ({ look }) => relateLook(look),
  'read-shortlist': ({ setting, ...asked }, from) => {
    const source = sourceFrom(from);
    if (setting === null || !source) return source && shortlistNow(source, asked);
    const { current: job } = from;
    return job && !job.stale() ? shortlistInPlace({ ...source, project: job.show.project, job }, asked, setting) : null;
  },
  'read-rows': ({ finishes, ...asked }, from) => {
    const source = sourceFrom(from);
    return source && rowsNow(source, asked, finishes);
  },
  'read-why': ({ finish, ...asked }, from) => {
    const source = sourceFrom(from);
    return source && whyNow(source, asked, finish);
  },
};

/** What a shortlist is made from; null before a document was sent. */
const sourceFrom = ({ project, current, shelf }: AtHand): ShortlistSource | null =>
  project && { project, job: current, library: offeredFinishes(project.library, shelf).finishes };

/** What a place of the room, or of the sample stand, is read from. */
function placeFrom({ settled, stand, litOf }: AtHand, option: string, onStand: boolean) {
  if (!settled) return null;
  const { room, setting, show } = settled;
  const lit = litOf(settled, option);
  const from = onStand ? stand.reading(option) : lit && { basis: room.basis, lit, maps: room.directMaps };
  return from ? { ...from, setting, project: show.project } : null;
}
