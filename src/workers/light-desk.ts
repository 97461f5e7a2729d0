import type { JudgeInput } from '../engine/judge/input';
import type { Problem } from '../engine/result';
import { SURFACES } from '../engine/surface';
import type { SeenBy } from '../kitchen/seen-by';
import { gatherGroup, type LitScheme } from '../kitchen/study/lit-scheme';
import { paintLook } from '../kitchen/study/paint-look';
import { judgeInput } from '../kitchen/study/readings';
import { layScheme } from '../kitchen/study/scheme';
import { type SettingLight, settingLight } from '../kitchen/study/setting-light';
import { solveSchemeGroup } from '../kitchen/study/solved-scheme';
import { findTints } from '../kitchen/study/tints';
import type { Kitchen } from '../model/kitchen';
import { DAYLIGHT_GROUPS, GROUPS, type GroupId, LAMP_GROUPS, type Lamp, type Project } from '../model/project';
import { ANSWERS, type AtHand } from './answers';
import { calculationFailed } from './failure';
import { createInterner } from './intern-records';
import type { InSlices, Job } from './job';
import { KeptSchemes } from './kept-schemes';
import type { Post, SeeBy, Show, ToLight } from './messages';
import type { Answer, Question } from './questions';
import { RepairDesk } from './repair-desk';
import { type Lit, RoomAtWork } from './room-desk';
import { ShelfDesk } from './shelf-desk';
import { StandAtWork, type StandRequest } from './stand-desk';

/**
 * The light worker without the worker: takes what is to be shown, works in slices with `pause` between them, most urgent
 * first, and starts anew as soon as something newer is asked for. What did not change is never computed again. `rest` is waited for
 * before what takes seconds, unless something newer comes.
 */
export function createLightDesk(
  post: Post,
  pause: () => Promise<void>,
  rest: () => Promise<void> = pause,
): { receive(message: ToLight): void } {
  const internLamps = createInterner<Lamp>();
  const kept = new KeptSchemes();
  let room: RoomAtWork | null = null;
  const stand = new StandAtWork(post, pause);
  const repairs = new RepairDesk(pause);
  const shelf = new ShelfDesk((facts, number) => post({ kind: 'facts', shelf: number, ...facts }));
  let kitchenKey = '';
  let wanted: Show | null = null;
  let seenBy: SeenBy = 'used-to-it';
  let current: Job | null = null;
  let generation = 0;
  let running = false;
  let wake = () => {};
  let isPreparing = false;
  /** Nothing of the picture or its findings is being worked out. */
  let isAtRest = false;

  return {
    receive(message) {
      if (message.kind === 'see-by') return told(() => paintAnew(message));
      if (message.kind === 'shelf') {
        shelf.put(message.shelf, message.number);
        return void prepareShelf();
      }
      if (message.kind !== 'show') return void answer(message);
      seenBy = message.seenBy;
      wanted = { ...message, project: interned(message.project) };
      generation++;
      isAtRest = false;
      wake();
      if (!running) void run();
    },
  };

  function interned(project: Project): Project {
    const { lamps } = project;
    return { ...shelf.adopt(project), ...(lamps && { lamps: internLamps(lamps) }) };
  }

  /** What the finishes of libraries are, as long as there is nothing else to do. */
  async function prepareShelf(): Promise<void> {
    if (isPreparing) return;
    isPreparing = true;
    try {
      while (isAtRest && shelf.prepare()) await pause();
    } catch (error) {
      post({ kind: 'problem', problem: calculationFailed('The library', error) });
    }
    isPreparing = false;
  }

  /** Work that fails is told. */
  function told(work: () => void): void {
    try {
      work();
    } catch (error) {
      post({ kind: 'problem', problem: calculationFailed('The light', error) });
    }
  }

  async function run(): Promise<void> {
    running = true;
    for (let served = -1; served !== generation; ) {
      const mine = generation;
      served = mine;
      let hasFailed = false;
      try {
        await serve(wanted!, () => hasFailed || generation !== mine);
      } catch (error) {
        // What waits for its light to be final would wait for ever.
        hasFailed = !room?.isFinal;
        post({ kind: 'problem', problem: calculationFailed('The light', error) });
      }
    }
    running = false;
    atRest();
  }

  function atRest(): void {
    isAtRest = true;
    void prepareShelf();
  }

  async function serve(show: Show, stale: () => boolean): Promise<void> {
    const chosen = show.project.settings.find(({ id }) => id === show.setting);
    if (!chosen) return post({ kind: 'problem', problem: unknownSetting(show) });
    kept.keepOnly(show.project.options);
    const setting = settingLight(show.project, chosen);
    if (!setting.ok) return post({ kind: 'problem', problem: setting.problem });
    postPatterns(show);
    const job: Job = { show, room: await roomOf(show.project), setting: setting.value, stale };
    const lit = litLayers(setting.value);
    if (!(await job.room.under(setting.value.daylight, lit, stale))) return;
    current = job;
    const request = standRequest(job);
    if (request && !(await stand.show(request))) return;
    for (const option of show.options) if (!(await picture(job, option))) return;
    if (request && !(await stand.finish(request))) return;
    if (!job.room.isFinal) {
      if (!(await job.room.finish(stale))) return;
      for (const option of show.options) if (!(await picture(job, option))) return;
    }
    const complete = new Map<string, JudgeInput>();
    for (const option of show.options) if (!(await completeReadings(job, option, complete))) return;
    if (!(await job.room.refineDirect(lit, stale))) return;
    for (const option of show.options) {
      const scheme = litOf(job, option);
      for (const group of groupsThere(job)) {
        if (scheme && !((await solve(job, scheme, group)) && (await gather(job, scheme, group)))) return;
      }
    }
    // What would help takes seconds: only of what is on screen, and once nobody changes anything any more.
    const [shown] = show.options;
    const input = shown !== undefined && complete.get(shown);
    if (!input) return;
    if (!stale()) atRest();
    await Promise.race([rest(), new Promise<void>((resolve) => (wake = resolve))]);
    if (!stale()) await findRepairs(job, shown, input);
  }

  function standRequest({ show, setting, room, stale }: Job): StandRequest | null {
    return show.stand && { show, seenBy: () => seenBy, choice: show.stand, setting, room: room.basis, stale };
  }

  /** Patterns take about as long to bake as a room to build: in a new room they are asked for first. */
  function postPatterns({ project, options }: Show): void {
    if (room) return;
    for (const option of options) {
      const scheme = layScheme(project, option, SURFACES);
      const laid = scheme.ok ? scheme.value.surfaces : [];
      post({ kind: 'patterns', patterns: laid.flatMap(({ pattern }) => pattern ?? []) });
    }
  }

  /** The room of a kitchen; built anew only when the kitchen changed. */
  async function roomOf({ kitchen, beams = [] }: Project): Promise<RoomAtWork> {
    const key = JSON.stringify([withoutSite(kitchen), beams]);
    if (!room || key !== kitchenKey) {
      room = await RoomAtWork.begin({ kitchen, beams }, post, pause);
      kitchenKey = key;
      kept.clear();
    }
    return room;
  }

  /** Solve, then findings and picture. False when something newer came in between. */
  async function picture(job: Job, option: string): Promise<boolean> {
    const { show, room, setting } = job;
    const lit = lay(job, option);
    if (!lit) return true;
    const lamps = [...GROUPS.keys()].filter((group) => setting.levels[group]! > 0);
    for (const group of lamps) if (!(await solve(job, lit, group))) return false;
    const postReadings = () => {
      const input = judgeInput(show.project, room.study, lit.solved, setting);
      post({ kind: 'readings', revision: show.revision, input, complete: false });
    };
    // In a new room the picture comes first, for what readings need takes longer than it; later they are ready at once.
    const atOnce = room.hasStudy;
    if (atOnce) postReadings();
    for (const group of lamps) if (!(await gather(job, lit, group))) return false;
    paint(job, lit);
    await pause();
    if (job.stale()) return false;
    if (!atOnce) postReadings();
    await pause();
    return !job.stale();
  }

  function paint({ show, room, setting }: Job, lit: LitScheme): void {
    const { look, patterns } = paintLook(room.basis, lit, setting, seenBy);
    post({ kind: 'look', revision: show.revision, look, patterns }, [look.nodeColors.buffer as ArrayBuffer]);
  }

  /** The pictures that are there, for another eye; those still being worked out are painted so when they are ready. */
  function paintAnew(message: SeeBy): void {
    seenBy = message.seenBy;
    if (!current || current.stale()) return;
    const { levels } = current.setting;
    for (const option of current.show.options) {
      const lit = litOf(current, option);
      if (lit && levels.every((level, group) => level === 0 || lit.nodeLight[group])) paint(current, lit);
    }
    const request = standRequest(current);
    if (request) stand.repaint(request);
  }

  /** The scheme of an option to be lit; null, and said why, when it cannot be laid. */
  function lay({ show, room }: Job, option: string): LitScheme | null {
    const lit = kept.take(show.project, option, room.basis);
    if (lit.ok) return lit.value;
    post({ kind: 'problem', problem: lit.problem });
    return null;
  }

  function litOf({ room }: Job, option: string): LitScheme | undefined {
    return kept.find(option, room.basis);
  }

  async function solve(job: Job, lit: LitScheme, group: number): Promise<boolean> {
    if (lit.solved.radiosity[group]) return true;
    solveSchemeGroup(job.room.basis, lit.solved, group);
    await pause();
    return !job.stale();
  }

  async function gather(job: Job, lit: LitScheme, group: number): Promise<boolean> {
    if (lit.nodeLight[group]) return true;
    gatherGroup(job.room.basis, lit, group);
    await pause();
    return !job.stale();
  }

  /** Findings again, now with the sources of every tint. */
  async function completeReadings(job: Job, option: string, complete: Map<string, JudgeInput>): Promise<boolean> {
    const { show, room, setting, stale } = job;
    const lit = litOf(job, option);
    if (!lit) return true;
    const steps = findTints(room.study, lit.solved, setting);
    for (;;) {
      const step = steps.next();
      if (step.done) {
        const input = judgeInput(show.project, room.study, lit.solved, setting, step.value);
        post({ kind: 'readings', revision: show.revision, input, complete: true });
        complete.set(option, input);
        return true;
      }
      await pause();
      if (stale()) return false;
    }
  }

  /** What would help, from complete readings. */
  async function findRepairs(job: Job, option: string, input: JudgeInput): Promise<void> {
    const lit = litOf(job, option);
    const assessment = lit && (await repairs.assess(job, option, lit.solved, input));
    if (assessment) post({ kind: 'repairs', revision: job.show.revision, assessment });
  }

  /** The request on screen, unless its room is under another sky already: its lamps and that sky do not belong together. */
  function settled(): Job | null {
    const sky = current?.setting.daylight;
    return current && (!sky || sky.key === current.room.basis.outdoors) ? current : null;
  }

  /** Who asked is waiting: an answer that fails is told, and answered with nothing. */
  async function answer(question: Question): Promise<void> {
    const { kind, ticket } = question;
    const done = (found: Answer['answer']) => post({ kind: 'answer', to: kind, ticket, answer: found } as Answer);
    try {
      const work = (ANSWERS[kind] as Answering)(question, atHand());
      if (!isInSlices(work)) return done(work);
      for (;;) {
        const step = work.next();
        if (step.done) return done(step.value);
        await pause();
      }
    } catch (error) {
      post({ kind: 'problem', problem: calculationFailed('The light', error) });
      done(null);
    }
  }

  function atHand(): AtHand {
    return { current, project: wanted?.project ?? null, shelf: shelf.shelf, settled: settled(), stand, seenBy, litOf };
  }
}

/** The question is of the kind that its answer is for: TypeScript cannot tell. */
type Answering = (question: Question, from: AtHand) => Answer['answer'] | InSlices<Answer['answer']>;

const isInSlices = <T>(work: T | InSlices<T>): work is InSlices<T> =>
  typeof (work as Partial<InSlices<T>> | null)?.next === 'function';

/** Bearing and surroundings are no part of the room's geometry. */
const withoutSite = ({ site: _, ...kitchen }: Kitchen): Omit<Kitchen, 'site'> => kitchen;

/** Which layers of direct light a setting has on. */
const litLayers = ({ levels }: SettingLight): Lit => {
  const isOn = (group: GroupId) => levels[GROUPS.indexOf(group)]! > 0;
  return [DAYLIGHT_GROUPS.some(isOn), LAMP_GROUPS.some(isOn)];
};

/** Groups that light the room as it is now: by night there is no daylight to work out. */
const groupsThere = ({ room }: Job): readonly number[] =>
  [...GROUPS.keys()].filter((group) => room.basis.outdoors !== '' || group >= DAYLIGHT_GROUPS.length);

const unknownSetting = ({ project, setting }: Show): Problem => ({
  code: 'unknown-setting',
  text: `There is no setting ${setting} in this project.`,
  at: { path: 'settings' },
  remedy: `Choose one of: ${project.settings.map(({ id }) => id).join(', ')}.`,
});
