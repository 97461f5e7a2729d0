import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkKitchen } from '../../src/model/check-kitchen';
import type { Kitchen } from '../../src/model/kitchen';
import { planRows } from '../../src/model/layout/plan-rows';
import { movableParts, movedAsFar, moveSteps, placeWords } from '../../src/ui/room/movable-parts';
import { terrace } from './terrace';

const kitchen: Kitchen = terrace().kitchen;
const parts = movableParts(kitchen, planRows(kitchen));
const part = (id: string) => parts.find((one) => one.id === id)!;

describe('what can be moved on the plan', () => {
  it('is there under names of its own', () => {
    expect(new Set(parts.map(({ id }) => id)).size).toBe(parts.length);
    for (const id of ['island', 'sink', 'cooktop', 'door']) expect(part(id)).toBeDefined();
    expect(parts.filter(({ id }) => id.startsWith('opening-'))).toHaveLength(kitchen.openings.length);
  });

  it('stays where it is when it is moved nowhere', () => {
    for (const one of parts) expect(one.moved(one.place)).toEqual(kitchen);
  });

  it('a corner that two runs share is no end to be moved', () => {
    expect(parts.some(({ id }) => id === 'run-left-to')).toBe(false);
    expect(parts.some(({ id }) => id === 'run-back-from')).toBe(false);
    expect(part('run-left-from')).toBeDefined();
  });

  it('never leaves what fits, wherever it is dragged, and stops for a reason', () => {
    const to = fc.tuple(fc.integer({ min: -3000, max: 9000 }), fc.integer({ min: -3000, max: 9000 }));
    fc.assert(
      fc.property(fc.constantFrom(...parts), to, fc.constantFrom('mm' as const, 'in' as const), (one, place, unit) => {
        const { kitchen: next, problem } = movedAsFar(kitchen, one, place, unit);
        expect(checkKitchen(next, 'kitchen')).toEqual([]);
        if (problem) expect(problem.text).not.toBe('');
        const now = movableParts(next, planRows(next)).find(({ id }) => id === one.id)!;
        // Without a problem it is where it was to go, but for the ways it cannot go and the step.
        const [step] = moveSteps(unit);
        for (const k of [0, 1] as const) {
          const goes = one.ways.includes(k === 0 ? 'x' : 'y');
          if (!goes) expect(now.place[k]).toBe(one.place[k]);
          else if (!problem) expect(Math.abs(now.place[k] - place[k])).toBeLessThanOrEqual(step / 2 + 0.1);
        }
      }),
      { numRuns: 150 },
    );
  });

  it('says where it is', () => {
    const { island, sink } = kitchen;
    expect(placeWords(part('island'), 'mm')).toBe(
      `${island!.x} mm from the left wall, ${island!.y} mm from the door wall`,
    );
    expect(placeWords(part('sink'), 'mm')).toBe(`${sink.center} mm from the door wall`);
    // 25.4 mm to the inch.
    const moved = movedAsFar(kitchen, part('sink'), [0, sink.center + 26], 'in').kitchen;
    expect(placeWords(movableParts(moved, planRows(moved)).find(({ id }) => id === 'sink')!, 'in')).toMatch(
      /^\d+( 1\/2)? in from the door wall$/,
    );
  });
});
