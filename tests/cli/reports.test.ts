import { expect, it } from 'vitest';
import { openProject } from '../../src/cli/open-project';
import { run } from '../../src/cli/run';
import { assessmentText } from '../../src/cli/text/assessment-text';
import { lightText } from '../../src/cli/text/light-text';
import { xyzFromEmission } from '../../src/engine/color/xyz';
import { emissionSpd } from '../../src/engine/spectrum/grid';
import { observer2 } from '../../src/engine/spectrum/observers';
import { SURFACES } from '../../src/engine/surface';
import { DEMO_PATH } from '../io/demo';

const json = (...args: readonly string[]) => {
  const { exit, out } = run([...args, '--json']);
  expect(exit).toBe(0);
  return JSON.parse(out);
};

const assessed = json('assess', DEMO_PATH, '--option', 'our-floor', '--setting', 'day');
const lit = json('light', DEMO_PATH, '--option', 'our-floor', '--setting', 'day');

it('gives the assessment with its fixed fields', () => {
  for (const field of [
    'project',
    'option',
    'setting',
    'surfaces',
    'pairs',
    'balance',
    'warnings',
    'repairs',
    'status',
  ]) {
    expect(assessed).toHaveProperty(field);
  }
  expect(assessed).toMatchObject({ option: 'our-floor', setting: { id: 'day' }, status: 'done' });
  const { warm_share, leaning_share, cool_share, neutral_share } = assessed.balance;
  // The four shares are a partition of what one sees.
  expect(warm_share + leaning_share + cool_share + neutral_share).toBeCloseTo(1, 6);
  for (const surface of assessed.surfaces) {
    expect(SURFACES).toContain(surface.surface);
    const sum = surface.components.reduce((total: number, one: { share: number }) => total + one.share, 0);
    expect(sum).toBeCloseTo(1, 6);
    for (const { illuminance_lx } of surface.installed) expect(illuminance_lx).toBeGreaterThan(0);
  }
});

it('follows the finish: an edited project is judged by its own colors', () => {
  const other = json('assess', DEMO_PATH, '--option', 'copied-look', '--setting', 'day');
  const floor = (assessment: typeof assessed) =>
    assessment.surfaces.find((one: { surface: string }) => one.surface === 'floor');
  expect(floor(assessed).finish).toBe('ST-01');
  expect(floor(other).finish).toBe('WD-01');
  expect(floor(other).average.lab_d65[2]).toBeGreaterThan(floor(assessed).average.lab_d65[2] + 20);
});

it('says in words what the JSON says in fields', () => {
  const flat = assessmentText(assessed).replace(/\s+/g, ' ');
  expect(flat).toContain(assessed.balance.sentence);
  for (const warning of assessed.warnings) {
    expect(flat).toContain(warning.text);
    expect(flat).toContain(warning.why);
  }
  for (const surface of assessed.surfaces) expect(flat).toContain(surface.label);
  expect(assessed.cautions.map(({ code }: { code: string }) => code)).toEqual(
    expect.arrayContaining(['dust', 'heat', 'lead']),
  );
  for (const caution of assessed.cautions) expect(flat).toContain(caution.text);
  expect(lightText(lit).match(/ lx on average/g)).toHaveLength(lit.surfaces.length);
});

it('says which option and setting were taken when none was named', () => {
  const opened = openProject(DEMO_PATH);
  expect(opened).toMatchObject({ ok: true, value: { option: 'copied-look', setting: 'day' } });
  expect(opened.ok && opened.value.notices.map((notice) => notice.code)).toEqual(['first-taken', 'first-taken']);
});

it('gives the assessment the same light, by shares of illuminance', () => {
  for (const { surface, facing, lux_min, from } of lit.surfaces) {
    const { installed } = assessed.surfaces.find((one: { surface: string }) => one.surface === surface);
    const reading = installed.find((one: { facing: string }) => one.facing === facing);
    expect(reading.lux_min).toBe(lux_min);
    const shareOf = (list: readonly { source: string; kind: string; share: number }[], of: (typeof from)[number]) =>
      list.find(({ source, kind }) => source === of.source && kind === of.kind)?.share;
    for (const one of from) expect(shareOf(reading.light_from, one)).toBeCloseTo(one.share, 9);
  }
});

it('gives light per surface and facing, no darker than its darkest place', () => {
  expect(lit.surfaces.length).toBeGreaterThanOrEqual(SURFACES.length - 3);
  for (const { surface, facing, lux_mean, lux_min, installed, from, tint_from, spectrum } of lit.surfaces) {
    expect(SURFACES).toContain(surface);
    expect(['up', 'down', 'upright']).toContain(facing);
    expect(lux_min).toBeGreaterThan(0);
    expect(lux_mean).toBeGreaterThanOrEqual(lux_min);
    expect(installed).toHaveLength(3);
    for (const one of tint_from) expect(Object.keys(one)).toEqual(['source', 'share']);
    const parts: readonly { share: number; tint_share: number }[] = from;
    expect(parts.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
    expect([0, 1]).toContain(Number(parts.reduce((sum, one) => sum + one.tint_share, 0).toFixed(9)));
    expect(parts.map(({ share }) => share)).toEqual(parts.map(({ share }) => share).sort((a, b) => b - a));
    // The spectrum is the light the figure is of: CIE 15, 683 lm/W, 5 nm. The figure is gathered in single precision.
    const lux = xyzFromEmission(emissionSpd(spectrum), observer2).y;
    expect(lux / lux_mean).toBeCloseTo(1, 6);
  }
});
