import type { LightRoom } from '../engine/light/types';
import type { PatternSample } from '../engine/pattern/sample';
import { samplePattern } from '../engine/pattern/sample';
import type { ByLayer, Look, RoomLight } from '../kitchen/look';
import { placeOnPattern } from '../kitchen/study/lay-pattern';
import type { PropPlace } from '../kitchen/study/place-light';
import type { Room } from '../kitchen/types';
import type { Shelf } from '../model/offered-finishes';
import type { Project } from '../model/project';
import { createFinishPacker } from './carry-finishes';
import { createShelfPacker } from './carry-shelf';
import { LookQueue } from './look-queue';
import type { FromJudge, FromLight, FromPattern, ToJudge, ToLightWorker, ToPattern } from './messages';
import type { Question, QuestionKind, Questions } from './questions';
import type { PlaceAsked, Shown, Studio, StudioEvents } from './studio';

/** Starts the workers and ties them together. */
export function createStudio(events: StudioEvents): Studio {
  const light = new Worker(new URL('./light.worker.ts', import.meta.url), { type: 'module', name: 'light' });
  const judge = new Worker(new URL('./judge.worker.ts', import.meta.url), { type: 'module', name: 'judge' });
  const baker = new Worker(new URL('./pattern.worker.ts', import.meta.url), { type: 'module', name: 'pattern' });

  const shown = new Map<string, Look>();
  /** Who waits for an answer, by ticket. */
  const asked = new Map<number, (answer: null) => void>();
  /** The last request by which an option's assessment was done. */
  const done = new Map<string, number>();
  let room: Room | null = null;
  let lit: RoomLight | null = null;
  /** The stand and its looks, as `room`, `lit` and `shown`. */
  let standRoom: Room | null = null;
  let standLit: RoomLight | null = null;
  const standShown = new Map<string, Look>();
  let revision = 0;
  let tickets = 0;
  let wanted: { readonly project: Project; readonly shown: Shown } | null = null;

  const queue = new LookQueue(
    (request: ToPattern) => baker.postMessage(request),
    (look, answers, stand) => {
      if (!stand) {
        shown.set(look.option, look);
        return events.look(look, answers === revision);
      }
      standShown.set(look.option, look);
      if (!standRoom || !standLit) return;
      events.stand({ room: standRoom, light: standLit, look, readings: stand.readings }, answers === revision);
    },
  );
  const toLight = (message: ToLightWorker) => light.postMessage(message);
  const pack = createFinishPacker();
  const packShelf = createShelfPacker();
  /** The libraries that the light worker has, and those before that it may still tell of, by number. */
  const shelves = new Map<number, Shelf>();
  let shelfNumber = 0;

  light.onmessage = ({ data }: MessageEvent<FromLight>) => {
    switch (data.kind) {
      case 'room':
        room = data.room;
        lit = null;
        queue.forget('room');
        return events.room(data.room);
      case 'light':
        lit = mergedLight(data.light, lit);
        return events.light(lit);
      case 'stand-room':
        standRoom = data.room;
        standLit = null;
        queue.forget('stand');
        return;
      case 'stand-light':
        standLit = mergedLight(data.light, standLit);
        return events.standLight(standLit);
      case 'patterns':
        return queue.prepare(data.patterns);
      case 'look':
        return queue.add(data);
      case 'readings':
        return judge.postMessage({
          kind: 'readings',
          revision: data.revision,
          input: data.input,
          complete: data.complete,
        } satisfies ToJudge);
      case 'repairs':
        done.set(data.assessment.option, data.revision);
        return events.assessment(data.assessment, data.revision === revision);
      case 'facts': {
        const library = shelves.get(data.shelf)?.libraries.find(({ id }) => id === data.library);
        for (const number of shelves.keys()) if (number < data.shelf) shelves.delete(number);
        return library && events.facts(library, data);
      }
      case 'answer':
        asked.get(data.ticket)?.(data.answer as never);
        asked.delete(data.ticket);
        return;
      case 'problem':
        return events.problem(data.problem);
    }
  };
  judge.onmessage = ({ data }: MessageEvent<FromJudge>) => {
    if (data.kind === 'problem') return events.problem(data.problem);
    if (data.kind === 'pairs') {
      asked.get(data.ticket)?.(data.table as never);
      asked.delete(data.ticket);
      return;
    }
    // Two workers: what is done is not taken back by what led up to it.
    if ((done.get(data.assessment.option) ?? 0) >= data.revision) return;
    events.assessment(data.assessment, data.revision === revision);
  };
  baker.onmessage = ({ data }: MessageEvent<FromPattern>) => queue.baked(data);
  for (const worker of [light, judge, baker]) {
    worker.onerror = (event) => {
      events.problem({
        code: 'worker-failed',
        text: `A background calculation stopped: ${event.message || 'it could not be loaded'}.`,
        remedy: 'Save your work, then reload the page.',
      });
    };
  }

  function ask<K extends QuestionKind>(kind: K, asks: Questions[K]['asks']): Promise<Questions[K]['gets'] | null> {
    return new Promise((resolve) => {
      const ticket = ++tickets;
      asked.set(ticket, resolve);
      toLight({ kind, ticket, ...asks } as Question);
    });
  }

  /** What the pattern drawn at a point has there. */
  function placeAt({ option, rect, u, v, onStand, onProp }: PlaceAsked) {
    const drawn = (onStand ? standRoom : room)?.light;
    const look = (onStand ? standShown : shown).get(option);
    if (drawn && look && onProp) return placeOnProp(drawn, look, onProp);
    const fine = drawn?.fine[rect];
    const surface = fine ? look?.surfaces[fine.surface] : null;
    const texture = surface?.pattern ? look?.patterns.get(surface.pattern) : null;
    if (!fine || !texture) return null;
    return samplePattern(texture, ...placeOnPattern(fine, u, v, surface?.shifts ?? null));
  }

  return {
    show(project, shown) {
      const before = wanted;
      wanted = { project, shown };
      const isOnlySeenAnew =
        before?.project === project &&
        before.shown.setting === shown.setting &&
        before.shown.stand === shown.stand &&
        String(before.shown.options) === String(shown.options);
      if (isOnlySeenAnew) toLight({ kind: 'see-by', seenBy: shown.seenBy });
      else {
        const { library, ...rest } = project;
        toLight({ kind: 'show', revision: ++revision, project: rest, library: pack(library), ...shown });
      }
    },
    keepShelf(next) {
      shelves.set(++shelfNumber, next);
      toLight({ kind: 'shelf', number: shelfNumber, shelf: packShelf(next) });
    },
    readPoint: (place) => ask('read-point', { ...place, place: placeAt(place) }),
    readHeld: (place, held) => ask('read-held', { ...place, held, place: placeAt(place) }),
    readLights: (option, surface, beside) => ask('read-lights', { option, surface, beside }),
    readPairs: (option) =>
      new Promise((resolve) => {
        const ticket = ++tickets;
        asked.set(ticket, resolve);
        judge.postMessage({ kind: 'pairs', ticket, option } satisfies ToJudge);
      }),
    readNarrowings: (option) => ask('read-narrowings', { option }),
    readBalance: (option, setting) => ask('read-balance', { option, setting }),
    readShortlist: (asked) => ask('read-shortlist', asked),
    readRows: (asked) => ask('read-rows', asked),
    readWhy: (option, surface, finish) => ask('read-why', { option, surface, finish }),
    readStand: (option, finish) => ask('read-stand', { option, finish }),
    carryLook: (asked) => ask('carry-look', asked),
    relateLook: (look) => ask('relate-look', { look }),
    dispose() {
      for (const worker of [light, judge, baker]) worker.terminate();
      for (const resolve of asked.values()) resolve(null);
      asked.clear();
    },
  };
}

/** A message brings the layers that changed; the page has both. */
const mergedLight = (now: RoomLight, before: RoomLight | null): RoomLight => ({
  ...now,
  direct: merged(now.direct, before?.direct),
  propDirect: merged(now.propDirect, before?.propDirect),
});

const merged = <T>([daylight, lamps]: ByLayer<T>, before: ByLayer<T> | undefined): ByLayer<T> => [
  daylight ?? before?.[0] ?? null,
  lamps ?? before?.[1] ?? null,
];

/** What the pattern has at a place of a prop; null where it shows one plain color. */
function placeOnProp({ props }: LightRoom, look: Look, { prop, vertices, weights }: PropPlace): PatternSample | null {
  const mesh = props[prop];
  const key = mesh && look.surfaces[mesh.surface]?.pattern;
  const texture = key ? look.patterns.get(key) : null;
  const coordinates = mesh?.pattern;
  if (!texture || !coordinates) return null;
  const mean = (k: number): number =>
    vertices.reduce((sum, vertex, i) => sum + weights[i]! * coordinates[2 * vertex + k]!, 0);
  return samplePattern(texture, mean(0), mean(1));
}
