import { expect, it } from 'vitest';
import { componentColumns } from '../../src/engine/batch/component-columns';
import { componentRecords, recordAt } from '../../src/engine/batch/component-record';
import { ROW } from '../../src/engine/batch/rows';
import { finishComponent, type GivenComponent } from '../../src/engine/finish/component';
import type { GivenColor } from '../../src/engine/finish/given-color';
import type { FinishClass } from '../../src/engine/finish/types';
import type { ComponentRecord } from '../../src/engine/judge/assessment';
import { componentRecord } from '../../src/engine/judge/component-record';
import { mulberry32 } from '../../src/engine/random';
import { COLOR_CHECKER } from '../vectors/color-checker.data';

const CLASSES: readonly FinishClass[] = ['stone', 'wood', 'paint', 'laminate', 'metal', 'grout'];

const random = mulberry32(4711);
const spread = (reach: number) => reach * (2 * random() - 1);
const component = (color: GivenColor, finishClass: FinishClass = 'stone'): GivenComponent => ({
  role: 'base',
  share: random(),
  color,
  finishClass,
  provenance: 'declared',
});
const lab = (l: number, a: number, b: number): GivenColor => ({
  kind: 'lab',
  lab: [l, a, b],
  illuminant: 'D65',
  observer_deg: 2,
});

const GIVEN: readonly GivenComponent[] = [
  ...Array.from({ length: 300 }, (_, i) =>
    component(lab(15 + 80 * random(), spread(8), spread(12)), CLASSES[i % CLASSES.length]!),
  ),
  ...Array.from({ length: 100 }, () => component(lab(100 * random(), spread(80), spread(80)))),
  component({ kind: 'lab', lab: [80, 1, 6], illuminant: 'A', observer_deg: 10 }),
  component({ kind: 'xyz', xyz: [40, 42, 30], illuminant: 'D50', observer_deg: 2 }),
  component({ kind: 'lch', lch: [70, 12, 80], illuminant: 'D65', observer_deg: 2 }),
  {
    ...component({ kind: 'lab', lab: [75, 1, 4], illuminant: 'D65', observer_deg: 2, specular: 'excluded' }),
    glossGu: 60,
  },
  component({ kind: 'xyz', xyz: [30, 32, 28], illuminant: 'D65', observer_deg: 10, specular: 'included' }),
  component({ kind: 'hex', hex: '#d8d2c4' }),
  component({ kind: 'munsell', munsell: '5Y 8.5/2' }),
  component({ kind: 'lrv', lrv: 60, hue: 'warm gray' }),
  ...COLOR_CHECKER.map(({ reflectance }) => component({ kind: 'spectrum', start_nm: 380, step_nm: 5, reflectance })),
  component(lab(Number.NaN, 0, 0)),
  component(lab(97, 0, 130)),
  component({ kind: 'hex', hex: 'ivory' }),
];

it('gives the record, or the problem, that one finish alone gets, to 1e-9', () => {
  componentRecords(GIVEN).forEach((inBatch, row) => {
    const made = finishComponent(GIVEN[row]!);
    expect(inBatch.ok, `row ${row}`).toBe(made.ok);
    if (!made.ok || !inBatch.ok) {
      expect(!inBatch.ok && inBatch.problem).toEqual(!made.ok && made.problem);
      return;
    }
    // The type of the one is the type of the other.
    const record: ComponentRecord = inBatch.value;
    const alone = componentRecord(made.value);
    const numbers = ({ lab_d65, lrv, undertone, share, uncertainty_de00 }: ComponentRecord) =>
      [...lab_d65, lrv, undertone.strength, share, uncertainty_de00] as const;
    numbers(record).forEach((value, k) => {
      expect(Math.abs(value - numbers(alone)[k]!)).toBeLessThan(1e-9);
    });
    const words = ({ undertone, name, munsell, role, provenance, spectrum_source, specular }: ComponentRecord) =>
      [undertone.word, undertone.level, name, munsell, role, provenance, spectrum_source, specular] as const;
    expect(words(record)).toEqual(words(alone));
    expect(Object.keys(record).sort()).toEqual(Object.keys(alone).sort());
  });
});

it('marks every row that cannot be, and only those', () => {
  const columns = componentColumns(GIVEN);
  GIVEN.forEach((_, row) => {
    const numbers = [
      ...columns.lab.slice(3 * row, 3 * row + 3),
      ...columns.rho.slice(81 * row, 81 * row + 81),
      columns.lrv[row]!,
      ...columns.names.munsell.slice(3 * row, 3 * row + 3),
      columns.names.strength[row]!,
      columns.uncertaintyDe00[row]!,
    ];
    const isOk = columns.code[row] === ROW.ok;
    expect(numbers.every((value) => (isOk ? Number.isFinite(value) : Number.isNaN(value)))).toBe(true);
    expect(columns.names.block[row]! > 0).toBe(isOk);
    expect(columns.problems.has(row)).toBe(!isOk);
    expect(recordAt(columns, row).ok).toBe(isOk);
  });
  expect([...columns.code].filter((code) => code !== ROW.ok).length).toBeGreaterThan(3);
});
