import { describe, expect, it } from 'vitest';
import { whiteOf } from '../../src/engine/color/xyz';
import type { LaidFinish } from '../../src/engine/finish/types';
import { lightById } from '../../src/engine/spectrum/lights';
import { observer2 } from '../../src/engine/spectrum/observers';
import { finishInLights } from '../../src/kitchen/study/finish-in-lights';
import { daylightMatch, pairSentence } from '../../src/kitchen/study/pair-in-lights';
import { studyBasisNow } from '../../src/kitchen/study/room-study';
import { settingLight } from '../../src/kitchen/study/setting-light';
import { worktopLights } from '../../src/kitchen/study/worktop-lights';
import { DAYLIGHT_GROUPS, GROUPS, type GroupId, type Project } from '../../src/model/project';
import { demoProject } from '../io/demo';
import { finish, knownTo } from './finishes';
import { measured, metamericTo } from './metamers';

const whole = demoProject();
/** The demo in two lights only. */
const project: Project = {
  ...whole,
  settings: whole.settings.filter(({ id }) => id === 'day' || id === 'evening'),
};
/** The room the lights are read in, and its direct light on the worktop by day. */
const day = settingLight(project, project.settings[0]!);
if (!day.ok) throw new Error(day.problem.text);
const basis = studyBasisNow(project, day.value.daylight);
const lightsOf = (of: typeof project) => {
  const lights = worktopLights(of, basis);
  if (!lights.ok) throw new Error(lights.problem.text);
  return lights.value;
};
const lights = lightsOf(project);
const under = (of: LaidFinish, id: string) => finishInLights(of, lights).lights.find((light) => light.id === id)!;

describe('lights of a project', () => {
  it('are mixed by the lux they throw on the worktop', () => {
    const mixOf = (level: number) => {
      const both = project.settings.map((setting) => ({
        ...setting,
        daylight: { ...project.settings[0]!.daylight!, light: 'D65' },
        lamps: { ...setting.lamps, ceiling: { level, light: 'LED-B2' } },
      }));
      return whiteOf(lightsOf({ ...project, settings: both })[0]!.spd, observer2);
    };
    // White by day comes from sky and ground, whose lights differ; lamps that throw as many lux mix with it by X + Y + Z
    // (Grassmann): the chromaticity in between.
    const lux = (groups: readonly GroupId[]) =>
      groups.reduce((sum, group) => sum + basis.worktopLight[GROUPS.indexOf(group)]!, 0);
    const [by, lamp] = [mixOf(0), whiteOf(lightById('LED-B2')!, observer2)];
    const ratio = lux(DAYLIGHT_GROUPS) / lux(['ceiling']);
    const level = Math.min(1, ratio);
    const mix = mixOf(level);
    const share = level / (level + ratio);
    expect(mix.x).toBeCloseTo((1 - share) * by.x + share * lamp.x, 9);
    expect(mix.z).toBeCloseTo((1 - share) * by.z + share * lamp.z, 9);
  });

  it('leave out a setting that lights nothing', () => {
    const [day, ...rest] = project.settings;
    const dark = { ...day!, daylight: null };
    expect(lightsOf({ ...project, settings: [dark, ...rest] }).map(({ id }) => id)).not.toContain('day');
  });
});

describe('a finish in each light', () => {
  it('has nothing to shift under D65, whatever its curve', () => {
    const { average } = under(finish('PT-01'), 'D65');
    // Curves of one color are solved to 1e-8 of Y.
    expect(average.shift_de00).toBeLessThan(1e-4);
    expect(average.shift_from_to_de00[1]).toBeLessThan(1e-3);
    expect(average.verdict).toBe('holds');
  });

  it('is open under a lamp by its color alone, and certain by a measured spectrum', () => {
    const [from, to] = under(finish('PT-01'), 'FL11').average.shift_from_to_de00;
    expect(to - from).toBeGreaterThan(1);
    const known = under(measured(finish('PT-01')), 'FL11').average;
    expect(known.shift_from_to_de00).toEqual([known.shift_de00, known.shift_de00]);
  });

  it('says of a finish in parts what its mean does, and each part', () => {
    const { average, components } = under(finish('ST-01'), 'A');
    expect(components.map(({ role }) => role)).toEqual(['base', 'cleft']);
    const shifts = components.map((c) => c.shift_de00);
    expect(average.shift_de00).toBeGreaterThan(Math.min(...shifts));
    expect(average.shift_de00).toBeLessThan(Math.max(...shifts));
  });
});

describe('two finishes in each light', () => {
  const gray = measured(knownTo(finish('PT-21'), 0.25));
  const pair = (one: LaidFinish, other: LaidFinish) => finishInLights(one, lights, other).beside!;

  it('stay matched where they are the same', () => {
    const same = pair(finish('PT-16'), finish('PT-16'));
    expect(same).toMatchObject({ de00_d65: 0, by_day: 'match', uncertainty_de00: 0 });
    for (const { de00_from_to, metamerism_index, verdict } of same.lights) {
      expect([de00_from_to, verdict]).toEqual([[0, 0], 'stays-matched']);
      expect(metamerism_index).toBeLessThan(1e-9);
    }
    expect(same.sentence).toBe('They match by day and in every light asked for.');
  });

  it('part under the evening lamps where measured spectra are metameric', () => {
    const found = pair(gray, metamericTo(gray));
    // A metamer by construction: the same color under D65 to rounding.
    expect(found.de00_d65).toBeLessThan(0.01);
    const evening = found.lights.find(({ id }) => id === 'evening')!;
    expect(evening.verdict).toBe('splits');
    // Matched under the reference, the index is the difference itself; it adapts by XYZ scaling, the reading by CAT16.
    expect(Math.abs(evening.metamerism_index! - evening.de00)).toBeLessThan(0.15 * evening.de00);
    expect(found.sentence).toBe('They match by day but not in “Evening”.');
  });

  it('cannot be told by colors alone, where metamers as far apart are plausible', () => {
    const alone = pair(
      knownTo(finish('PT-01'), 0.25),
      knownTo(
        {
          ...finish('PT-01'),
          id: 'twin',
          components: finish('PT-01').components.map((c) => ({
            ...c,
            spectrum: c.spectrum.slice() as typeof c.spectrum,
          })),
        },
        0.25,
      ),
    );
    expect(alone.by_day).toBe('match');
    expect(alone.lights.find(({ id }) => id === 'evening')!.verdict).toBe('cannot-tell');
    expect(alone.sentence).toBe(
      'They match by day; for “Evening” numbers cannot tell: look at both samples in that light.',
    );
  });
});

describe('two declared finishes whose difference their errors could undo', () => {
  it('are open in every light, without an index: one answer, not two', () => {
    const [one, other] = [knownTo(finish('PT-03'), 1), knownTo(finish('PT-02'), 1)];
    const found = finishInLights(one, lights, other).beside!;
    expect(found.by_day).toBe('cannot-tell');
    for (const { verdict, metamerism_index } of found.lights) {
      expect([verdict, metamerism_index]).toEqual(['cannot-tell', null]);
    }
  });
});

describe('a match by day', () => {
  it.each([
    [0.5, 0.3, 'match'],
    [0.1, 0.35, 'match'],
    [0.5, 1.4, 'cannot-tell'],
    [1.7, 0.35, 'cannot-tell'],
    [1.9, 0.35, 'cannot-tell'],
    [1.3, 0.35, 'match'],
    [3.3, 1.4, 'apart'],
    [2.7, 1.4, 'cannot-tell'],
  ] as const)('%d apart, known to %d: %s', (de00, uncertainty, match) => {
    expect(daylightMatch(de00, uncertainty)).toBe(match);
  });

  it('is answered in one sentence, each light by its name', () => {
    const light = (name: string, verdict: 'splits' | 'cannot-tell' | 'stays-matched') => ({
      kind: 'setting' as const,
      name,
      verdict,
    });
    const known = { match: 'match', de00: 0.4, uncertainty: 0.3, measured: true } as const;
    expect(
      pairSentence(known, [light('Day', 'stays-matched'), light('Evening', 'splits'), light('Strips', 'cannot-tell')]),
    ).toBe(
      'They match by day but not in “Evening”; for “Strips” numbers cannot tell: look at both samples in that light.',
    );
    // Not near-twins, there is nothing for lamps to part, but that is no fault.
    const close = { match: 'apart', de00: 3.5, uncertainty: 1, measured: false } as const;
    expect(pairSentence(close, [light('Evening', 'splits')])).toBe(
      'Close but not the same by day (3.5 CIEDE2000 apart). They may still go together: see the findings.',
    );
    expect(pairSentence({ ...close, de00: 48.9 }, [])).toBe(
      'Two different colors (48.9 CIEDE2000 apart by day); this question is for near-twins.',
    );
    const open = { match: 'cannot-tell', de00: 0.7, uncertainty: 1.4, measured: false } as const;
    expect(pairSentence(open, [light('Evening', 'splits')])).toBe(
      'Cannot tell from here whether they match by day: they differ by 0.7 CIEDE2000, and together they may be off ' +
        'by about 1.4. Compare the samples.',
    );
    // Where spectra are guessed, even a match by all of them is likely, not certain.
    expect(pairSentence({ ...known, measured: false }, [light('Evening', 'stays-matched')])).toBe(
      'They match by day, and likely in every light asked for; their spectra are guessed, so hold both under the lamp.',
    );
  });
});
