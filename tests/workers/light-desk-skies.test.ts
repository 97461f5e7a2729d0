import { beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import * as daylight from '../../src/engine/light/daylight';
import * as transport from '../../src/engine/light/transport';
import * as litScheme from '../../src/kitchen/study/lit-scheme';
import type { SolvedScheme } from '../../src/kitchen/study/solved-scheme';
import * as solvedScheme from '../../src/kitchen/study/solved-scheme';
import { DAYLIGHT_GROUPS, type Daylight, GROUPS, type Project, type Setting } from '../../src/model/project';
import { createLightDesk } from '../../src/workers/light-desk';
import type { FromLight, Show } from '../../src/workers/messages';
import { smallProject } from './small-project';

// A room under several skies: what of the work is done again, and what is shown meanwhile. The work itself is watched.

vi.mock('../../src/engine/light/daylight', watched);
vi.mock('../../src/engine/light/transport', watched);
vi.mock('../../src/kitchen/study/lit-scheme', watched);
vi.mock('../../src/kitchen/study/solved-scheme', watched);

/** Every function of a module works as ever and counts its calls. */
async function watched<T extends Record<string, unknown>>(original: () => Promise<T>): Promise<T> {
  const entries = Object.entries(await original());
  return Object.fromEntries(
    entries.map(([name, value]) => [name, typeof value === 'function' ? vi.fn(value as () => unknown) : value]),
  ) as T;
}

const clear = (hour: number): Daylight => ({ sky: 'clear', month: 6, day: 21, hour, blind: 1 });
const group = (level: number) => ({ level, light: 'LED-B2' });
const at = (id: string, of: Daylight | null): Setting => ({
  id,
  name: id,
  daylight: of,
  lamps: { ceiling: group(1), 'under-cabinet': group(0), pendant: group(0), hood: group(0) },
});
const FURTHER = [8, 10, 11, 12].map((hour) => at(`at ${hour}`, clear(hour)));
const project: Project = {
  ...smallProject,
  settings: [
    at('morning', clear(9)),
    at('afternoon', clear(16)),
    at('later', clear(17.5)),
    at('night', null),
    ...FURTHER,
  ],
};

let pauses = 0;
const tick = () => new Promise<void>((resolve) => setImmediate(resolve));
const pause = () => {
  pauses++;
  return tick();
};
const messages: FromLight[] = [];
const desk = createLightDesk((message) => messages.push(message), pause);
let revision = 0;
const show = (setting: string): Show => ({
  kind: 'show',
  revision: ++revision,
  project,
  options: ['our-floor'],
  setting,
  seenBy: 'used-to-it',
  stand: null,
});

/** Until numbers are final; what follows only makes direct light finer and works ahead. */
async function shown(setting: string) {
  desk.receive(show(setting));
  const isFinal = (message: FromLight) =>
    message.kind === 'readings' && message.revision === revision && message.complete;
  while (!messages.some(isFinal)) await tick();
  const last = messages.findLast((message) => message.kind === 'look');
  if (last?.kind !== 'look') throw new Error('no look');
  expect(last).toMatchObject({ revision, look: { setting } });
  return last.look;
}
const solved = () => vi.mocked(solvedScheme.solveSchemeGroup).mock.calls;
const gathered = () => vi.mocked(litScheme.gatherGroup).mock.calls;
const groupsOf = (calls: readonly (readonly unknown[])[]) => calls.map((call) => GROUPS[call[2] as number]!);
/** What the lamps that are on do in a room. */
const lampsOf = ({ radiosity }: SolvedScheme) => [radiosity[GROUPS.indexOf('ceiling')]];
const skiesWorkedOut = () => vi.mocked(daylight.daylightInSteps).mock.calls.length;
const isDaylight = (id: string) => (DAYLIGHT_GROUPS as readonly string[]).includes(id);

describe('a room under several skies', () => {
  let morning: Awaited<ReturnType<typeof shown>>;
  let lampsByMorning: readonly unknown[];
  beforeAll(async () => {
    morning = await shown('morning');
    lampsByMorning = lampsOf(solved()[0]![1]);
  }, 180_000);
  beforeEach(() => {
    vi.clearAllMocks();
    messages.length = 0;
  });

  it('works out daylight alone when the hour changes: lamps keep their solutions, the room its transport', async () => {
    const look = await shown('afternoon');
    expect(skiesWorkedOut()).toBe(1);
    expect(vi.mocked(transport.buildTransportInSteps)).not.toHaveBeenCalled();
    expect(messages.some(({ kind }) => kind === 'room')).toBe(false);
    expect(groupsOf(solved()).length).toBeGreaterThan(0);
    expect(groupsOf(solved()).every(isDaylight)).toBe(true);
    expect(groupsOf(gathered()).every(isDaylight)).toBe(true);
    lampsOf(solved()[0]![1]).forEach((one, i) => {
      expect(one).toBeInstanceOf(Float32Array);
      expect(one).toBe(lampsByMorning[i]);
    });
    expect(look.nodeColors).not.toEqual(morning.nodeColors);
    const light = messages.find((message) => message.kind === 'light');
    expect(light?.kind === 'light' && light.light.direct[0]).not.toBeNull();
  });

  it('works out nothing anew when an earlier hour comes back, and shows the same picture', async () => {
    const look = await shown('morning');
    expect([skiesWorkedOut(), solved().length, gathered().length]).toEqual([0, 0, 0]);
    expect(look.nodeColors).toEqual(morning.nodeColors);
    expect(look.surfaces).toEqual(morning.surfaces);
    const light = messages.find((message) => message.kind === 'light');
    expect(light?.kind === 'light' && light.light.direct[0]).not.toBeNull();
  });

  it('has dark windows by night, and nothing to work out for them', async () => {
    const look = await shown('night');
    expect(look.outside).toBeNull();
    expect(morning.outside).toMatchObject({ sunShines: true, blind: 1 });
    for (const { groupColors } of look.surfaces) {
      for (const colors of groupColors) {
        expect(colors.subarray(0, 3 * DAYLIGHT_GROUPS.length).every((value) => value === 0)).toBe(true);
        expect(colors.subarray(3 * DAYLIGHT_GROUPS.length).some((value) => value > 0)).toBe(true);
      }
    }
    expect([skiesWorkedOut(), solved().length, gathered().length]).toEqual([0, 0, 0]);
    const readings = messages.findLast((message) => message.kind === 'readings');
    expect(readings).toMatchObject({ revision, complete: true });
  });

  it.each([1, 12, 60])('leaves a sky it was working out when something newer comes after %d slices', async (n) => {
    desk.receive(show('later'));
    for (const until = pauses + n; pauses < until; ) await tick();
    const from = messages.length;
    const look = await shown('morning');
    const after = messages.slice(from);
    for (const message of after) {
      if (message.kind === 'look' || message.kind === 'readings') expect(message.revision).toBe(revision);
    }
    expect(after.findLast((message) => message.kind === 'readings')).toMatchObject({ complete: true });
    expect(look.nodeColors).toEqual(morning.nodeColors);
    expect(groupsOf(solved()).every(isDaylight)).toBe(true);
  });

  it('forgets the sky that was not asked for longest, not the one it knew first', async () => {
    const looked = async (setting: string) => {
      desk.receive(show(setting));
      while (!messages.some((one) => one.kind === 'look' && one.revision === revision)) await tick();
    };
    // Six skies are kept; morning is the first of all and is asked for again before a seventh comes.
    for (const setting of ['at 8', 'at 10', 'at 11', 'morning', 'at 12']) await looked(setting);
    vi.clearAllMocks();
    await looked('morning');
    expect([skiesWorkedOut(), solved().length, gathered().length]).toEqual([0, 0, 0]);
  });

  it('ends with the sky asked for last, however often it was left', async () => {
    const look = await shown('later');
    expect(look.nodeColors).not.toEqual(morning.nodeColors);
    expect(messages.some(({ kind }) => kind === 'problem')).toBe(false);
  });
});
