import { expect, it } from 'vitest';
import { assessOption } from '../../src/kitchen/study/assess-option';
import { demoProject } from '../io/demo';

const project = demoProject();
const bothLit = {
  ...project,
  settings: project.settings.map((setting) => ({
    ...setting,
    daylight: { sky: 'overcast', month: 3, day: 21, hour: 12, blind: 1, sky_lx: 10_000 } as const,
    lamps: { ...setting.lamps, ceiling: { level: 1, light: 'LED-B2' } },
  })),
};

it('sky and ceiling lamps together: the mix is said of the light, and the balance stays that of the samples', () => {
  const done = assessOption(bothLit, 'our-floor', 'day');
  if (!done.ok) throw new Error(done.problem.text);
  const { balance, surfaces, warnings } = done.value;
  // One mean cast for window and lamp places alike made three quarters of this kitchen cool.
  expect(Math.abs(balance.installed.shares[2] - balance.cool_share)).toBeLessThan(0.05);
  expect(balance.installed.verdict).toBe(balance.verdict);
  const wall = surfaces
    .find(({ surface }) => surface === 'wall')!
    .installed.find(({ facing }) => facing === 'upright')!;
  expect(wall.place_white_lab_d65[2]).toBeGreaterThan(15);
  expect(wall.tint_from_light).toBeGreaterThan(0.9);
  expect(wall.tint_from.reduce((sum, { share }) => sum + share, 0)).toBeLessThan(0.1);
  const mix = warnings.filter(({ text }) => text.startsWith('The light here is a mix of daylight and lamps'));
  expect(mix).toHaveLength(1);
  expect(mix[0]).toMatchObject({ code: 'light-shift', severity: 'note' });
  expect(warnings.some(({ code, surfaces }) => code === 'tinted-by-bounce' && surfaces.includes('wall'))).toBe(false);
});
