import { beginLight, gatherGroup, type LitScheme } from '../kitchen/study/lit-scheme';
import { paintLook } from '../kitchen/study/paint-look';
import { readPoint } from '../kitchen/study/point-reading';
import { judgeInput } from '../kitchen/study/readings';
import { type RoomStudy, studyRoom } from '../kitchen/study/room-study';
import { layScheme } from '../kitchen/study/scheme';
import { type SettingLight, settingLight } from '../kitchen/study/setting-light';
import { beginScheme, solveSchemeGroup } from '../kitchen/study/solved-scheme';
import { beginTints, type TintSteps } from '../kitchen/study/tints';
import { GROUPS, type Kitchen } from '../model/project';
import { createDirectDesk, type DirectDesk } from './direct-desk';
import { createInterner } from './intern-library';
import type { FromLight, Show, ToLight } from './messages';

type Post = (message: FromLight, transfer?: Transferable[]) => void;

/** What is kept per option: the lit scheme, and the text it was made from. */
interface Kept {
  readonly key: string;
  readonly lit: LitScheme;
}

/**
 * The light worker without the worker: takes what is to be shown, works in slices with `pause` between them, and starts
 * anew as soon as something newer is asked for. What did not change is never computed again.
 */
export function createLightDesk(post: Post, pause: () => Promise<void>): { receive(message: ToLight): void } {
  const intern = createInterner();
  const kept = new Map<string, Kept>();
  let study: RoomStudy | null = null;
  let kitchenKey = '';
  let direct: DirectDesk | null = null;
  let wanted: Show | null = null;
  let setting: SettingLight | null = null;
  let generation = 0;
  let running = false;

  return {
    receive(message) {
      if (message.kind === 'read-point') return answer(message);
      wanted = { ...message, project: { ...message.project, library: intern(message.project.library) } };
      generation++;
      if (!running) void run();
    },
  };

  function answer({ ticket, option, rect, u, v }: Extract<ToLight, { kind: 'read-point' }>): void {
    const lit = kept.get(option)?.lit;
    const map = direct?.map;
    const reading = study && lit && setting && map ? readPoint(study, lit, setting, map, rect, u, v) : null;
    post({ kind: 'point', ticket, reading });
  }

  async function run(): Promise<void> {
    running = true;
    let done = -1;
    while (done !== generation) {
      done = generation;
      await serve(wanted!, () => generation !== done);
    }
    running = false;
  }

  /** Everything one request needs, most urgent first; gives up when `stale`. */
  async function serve(show: Show, stale: () => boolean): Promise<void> {
    const wantedSetting = show.project.settings.find(({ id }) => id === show.setting);
    const light = wantedSetting ? settingLight(wantedSetting) : null;
    if (!light) return;
    if (!light.ok) return post({ kind: 'problem', problem: light.problem });
    setting = light.value;
    await prepareRoom(show.project.kitchen);
    const room = study!;

    const schemes: LitScheme[] = [];
    for (const option of show.options) {
      const lit = lay(show, option, room);
      if (!lit) continue;
      schemes.push(lit);
      for (const group of GROUPS.keys()) {
        if (setting.levels[group]! <= 0 || lit.solved.radiosity[group]) continue;
        solveSchemeGroup(room, lit.solved, group, previous.get(option)?.solved);
        await pause();
        if (stale()) return;
      }
      post({ kind: 'readings', input: judgeInput(show.project, room, lit.solved, setting), complete: false });
      for (const group of GROUPS.keys()) {
        if (setting.levels[group]! <= 0 || lit.nodeLight[group]) continue;
        gatherGroup(room, lit, group);
        await pause();
        if (stale()) return;
      }
      postLook(room, lit, setting);
      await pause();
      if (stale()) return;
    }
    if (await refineDirect(stale)) return;
    for (const lit of schemes) if (await completeReadings(show, room, lit, setting, stale)) return;
    for (const lit of schemes) if (await fillGroups(room, lit, stale)) return;
  }

  async function prepareRoom(kitchen: Kitchen): Promise<void> {
    const key = JSON.stringify(kitchen);
    if (study && key === kitchenKey) return;
    kitchenKey = key;
    kept.clear();
    previous.clear();
    const steps = studyRoom(kitchen);
    for (;;) {
      const step = steps.next();
      if (step.done) {
        study = step.value;
        break;
      }
      await pause();
    }
    post({ kind: 'room', room: study.room });
    direct = createDirectDesk(study);
    post({ kind: 'light', light: direct.roomLight() });
  }
}
