import { describe, expect, it } from 'vitest';
import type { Severity, Warning, WarningCode } from '../../src/engine/judge/assessment';
import { judge } from '../../src/engine/judge/judge';
import { pairTable } from '../../src/engine/judge/pair-table';
import type { SurfaceId } from '../../src/engine/surface';
import { signOf, urgency, warningsBetween } from '../../src/ui/pairs/cell-sign';
import { movedSquare, type Square } from '../../src/ui/pairs/grid-moves';
import { cellName } from '../../src/ui/words/pairs';
import { scheme } from '../judgement/schemes';

describe('arrow keys in the upper triangle', () => {
  const COUNT = 5;
  const all: Square[] = [0, 1, 2, 3].flatMap((row) =>
    [1, 2, 3, 4].filter((column) => column > row).map((column) => ({ row, column })),
  );
  const arrows = ['ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight', 'Home', 'End'];

  it('never leave it', () => {
    for (const square of all) for (const key of arrows) expect(all).toContainEqual(movedSquare(square, key, COUNT));
  });

  it('reach every square from the first', () => {
    const reached: Square[] = [{ row: 0, column: 1 }];
    for (const square of reached) {
      for (const key of arrows) {
        const next = movedSquare(square, key, COUNT)!;
        if (!reached.some(({ row, column }) => row === next.row && column === next.column)) reached.push(next);
      }
    }
    expect(reached).toHaveLength(all.length);
  });

  it('leave other keys to the page', () => {
    expect(movedSquare({ row: 0, column: 1 }, 'Escape', COUNT)).toBeNull();
  });
});

describe('the sign of a square', () => {
  const input = scheme([
    ['counter', 'EN-01', 20],
    ['floor', 'ST-01', 30],
    ['base-fronts', 'PT-01', 50],
  ]);
  const table = pairTable(input, judge(input));
  const cell = table.cells.find(({ a, b }) => a === 1 && b === 2)!;
  const warning = (code: WarningCode, severity: Severity, surfaces: readonly SurfaceId[]): Warning => ({
    code,
    severity,
    surfaces,
    text: code,
    why: '',
    basis: 'sample',
    holds_in: null,
  });

  it('is that of the pair where nothing else is found', () => {
    expect(signOf([], table, cell)).toEqual({ kind: cell.worst.verdict, severity: cell.worst.severity });
  });

  it('is the edge where that is hard to see', () => {
    const edge = warning('weak-edge', 'visible', ['floor', 'base-fronts']);
    expect(signOf([edge], table, cell)).toEqual({ kind: 'weak-edge', severity: 'visible' });
    expect(warningsBetween([edge], table, cell)).toEqual([edge]);
    expect(cellName('Floor', 'Base fronts', { kind: 'weak-edge', severity: 'visible' }, 'adjacent')).toBe(
      'Floor and base fronts: an edge that is hard to see (visible); they touch',
    );
  });

  it('is not what is found between others, nor of one of them alone', () => {
    const others = [
      warning('weak-edge', 'grave', ['counter', 'base-fronts']),
      warning('tinted-by-bounce', 'grave', ['floor', 'base-fronts']),
    ];
    expect(signOf(others, table, cell).kind).toBe(cell.worst.verdict);
  });

  it('asks for attention by its grade, an open question more than what is fine', () => {
    const signs = [
      { kind: 'looks-dirty', severity: 'grave' },
      { kind: 'weak-edge', severity: 'visible' },
      { kind: 'looks-dirty', severity: 'note' },
      { kind: 'cannot-tell', severity: null },
      { kind: 'agree', severity: null },
      { kind: 'none', severity: null },
    ] as const;
    const ranks = signs.map(urgency);
    expect(ranks).toEqual([...ranks].sort((a, b) => b - a));
    expect(new Set(ranks).size).toBe(ranks.length);
  });
});
