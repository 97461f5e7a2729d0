import { describe, expect, it } from 'vitest';
import { faultCode } from '../../src/engine/judge/claims';
import { holdsIn } from '../../src/engine/judge/holds';
import type { JudgeInput } from '../../src/engine/judge/input';
import { judge } from '../../src/engine/judge/judge';
import { type PairTable, pairTable, type TableCell, type TablePart } from '../../src/engine/judge/pair-table';
import { SURFACES, type SurfaceId } from '../../src/engine/surface';
import { finish, knownTo } from './finishes';
import { inPlace, type Row, scheme, tinted } from './schemes';

const ROWS: Row[] = [
  ['counter', 'EN-01', 8],
  ['island-counter', 'EN-01', 4],
  ['floor', 'ST-01', 12],
  ['base-fronts', 'PT-01', 20],
  ['tall-fronts', 'PT-01', 10],
  ['backsplash', 'TL-02', 10],
  ['wall', 'TL-01', 26],
  ['ceiling', 'LM-01', 9],
  ['hardware', 'MT-01', 1],
];

const FAULTS: readonly string[] = ['white-looks-dirty', 'too-yellow', 'undertones-pull-apart'];

const tableOf = (input: JudgeInput): PairTable => pairTable(input, judge(input));
const rowWith = (table: PairTable, surface: SurfaceId): number =>
  table.rows.findIndex(({ surfaces }) => surfaces.includes(surface));
function cellOf(table: PairTable, one: SurfaceId, other: SurfaceId): TableCell {
  const [a, b] = [rowWith(table, one), rowWith(table, other)].sort((x, y) => x - y);
  return table.cells.find((cell) => cell.a === a && cell.b === b)!;
}

describe('the table of all pairs', () => {
  const input = scheme(ROWS);
  const table = tableOf(input);

  it('has a row for every finish, in decision order, and a cell for every two', () => {
    expect(table.rows.map(({ name }) => name)).toEqual([
      'Counters',
      'Floor',
      'Base and tall fronts',
      'Backsplash',
      'Wall',
      'Ceiling',
      'Handles',
    ]);
    const firsts = table.rows.map(({ surfaces }) => SURFACES.indexOf(surfaces[0]!));
    expect(firsts).toEqual([...firsts].sort((a, b) => a - b));
    const n = table.rows.length;
    expect(table.cells).toHaveLength((n * (n - 1)) / 2);
    for (const { a, b, parts, worst } of table.cells) {
      expect(a).toBeLessThan(b);
      expect(parts[0]).toBe(worst);
    }
  });

  it('judges part by part, on both bases', () => {
    const { parts } = cellOf(table, 'counter', 'floor');
    const kinds = parts.map(({ a, b, basis }) => `${a} ${b} ${basis}`).sort();
    // Base and vein of the counter, base and clefts of the floor.
    const expected = ['base', 'vein'].flatMap((a) =>
      ['base', 'cleft'].flatMap((b) => [`${a} ${b} installed`, `${a} ${b} sample`]),
    );
    expect(kinds).toEqual(expected.sort());
    for (const { text, reason, why } of parts)
      for (const words of [text, reason, why]) expect(words).toMatch(/^[A-Z].*\.$/);
  });

  // Verdicts of whites beside a cool counter: the independent computation in whites.test.
  it.each([
    ['backsplash', 'too-yellow', 'grave'],
    ['wall', 'agree', null],
    ['ceiling', 'looks-dirty', 'note'],
  ] as const)('shows the worst of counter and %s: %s', (surface, verdict, severity) => {
    const { parts } = cellOf(table, 'counter', surface);
    const bases = parts.filter(({ a, b, basis }) => a === 'base' && b === 'base' && basis === 'sample');
    expect(bases.map((part) => [part.verdict, part.severity])).toEqual([[verdict, severity]]);
  });

  it('says of what says nothing why', () => {
    const { worst } = cellOf(table, 'floor', 'wall');
    expect(worst).toMatchObject({ verdict: 'none', severity: null });
    expect(worst.text).toBe(
      'The floor and the wall leave each other’s undertone alone, a clear step in lightness apart.',
    );
    expect(worst.reason).not.toBe('');
  });

  it('holds every finding on pairs, and warns where they do', () => {
    const assessment = judge(input);
    for (const { a, b, verdict, basis } of assessment.pairs) {
      const found = cellOf(table, a.surface, b.surface).parts.filter((part) => part.basis === basis);
      expect(found.map((part) => part.verdict)).toContain(verdict);
    }
    const faults = assessment.warnings.filter(({ code }) => FAULTS.includes(code));
    expect(faults.length).toBeGreaterThan(1);
    for (const { code, severity, surfaces } of faults) {
      const isOf = (part: TablePart) => faultCode(part.verdict) === code && part.severity !== null;
      const cells = table.cells.filter(({ parts }) => parts.some(isOf));
      const named = cells.flatMap((cell) => [cell.a, cell.b].flatMap((i) => table.rows[i]!.surfaces));
      expect(surfaces.filter((surface) => !named.includes(surface))).toEqual([]);
      expect(cells.flatMap(({ parts }) => parts.filter(isOf).map((part) => part.severity))).toContain(severity);
    }
  });

  it('does not depend on the order of the surfaces', () => {
    expect(tableOf({ ...input, surfaces: [...input.surfaces].reverse() })).toEqual(table);
  });

  it('warns of no grout line, but shows it', () => {
    const thin = finish('EN-01').components.map((c) => ({ ...c, share: c.role === 'vein' ? 0.03 : 0.97 }));
    const lined = scheme([
      ['counter', { ...finish('EN-01'), components: thin }, 50],
      ['wall', 'TL-02', 50],
    ]);
    const veins = cellOf(tableOf(lined), 'counter', 'wall').parts.filter(({ a }) => a === 'vein');
    expect(veins.map(({ verdict, severity, isMinor }) => ({ verdict, severity, isMinor }))).toEqual(
      veins.map(() => ({ verdict: 'pulls-apart', severity: null, isMinor: true })),
    );
  });
});

describe('in place', () => {
  const white = { l: 100, a: 0, b: 7 };
  const rows: Row[] = [
    ['counter', 'EN-03', 40],
    ['wall', 'TL-01', 60],
  ];
  const installed = (cell: TableCell) =>
    cell.parts.find(({ a, b, basis }) => a === 'base' && b === 'base' && basis === 'installed')!;

  it('charges what the place makes to the place', () => {
    const plain = scheme(rows);
    const components = finish('TL-01').components.map(({ labD65 }) => tinted(labD65, white));
    const part = installed(
      cellOf(tableOf(inPlace(plain, 'wall', { placeWhite: white, components })), 'counter', 'wall'),
    );
    expect(part.severity).toBeNull();
    expect(part.reason).toContain('light of their places');
  });

  it('says nothing as installed in the dark', () => {
    const dark = scheme(rows);
    const table = tableOf({ ...dark, surfaces: dark.surfaces.map((s) => ({ ...s, installed: [] })) });
    expect(cellOf(table, 'counter', 'wall').parts.map(({ basis }) => basis)).not.toContain('installed');
  });
});

it('softens with the assessment: what is known by eye is a question', () => {
  const input = scheme([
    ['counter', 'EN-04', 50],
    ['wall', knownTo(finish('PT-03'), 5, 'by-eye'), 50],
  ]);
  const worst = cellOf(pairTable(input, holdsIn(input, judge(input))), 'counter', 'wall').worst;
  expect(worst.severity).not.toBe('grave');
  expect(worst.text).toMatch(/may|Cannot tell/);
});
