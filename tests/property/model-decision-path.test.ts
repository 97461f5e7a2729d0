import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DecisionState, SURFACES, type SurfaceId } from '../../src/engine/surface';
import { nextOpen } from '../../src/model/decision-order';
import { decisionPath, relaidSurfaces, settledAfter } from '../../src/model/decision-path';
import type { Option, Scheme } from '../../src/model/project';
import { demoProject } from '../io/demo';

const [demo] = demoProject().options as [Option, ...Option[]];
const states = fc.array(fc.constantFrom<DecisionState>('open', 'decided', 'ordered', 'fixed'), {
  minLength: SURFACES.length,
  maxLength: SURFACES.length,
});
const inStates = (of: readonly DecisionState[]): Option => ({
  ...demo,
  scheme: Object.fromEntries(
    SURFACES.map((surface, i) => [surface, { ...demo.scheme[surface], state: of[i]! }]),
  ) as unknown as Scheme,
});
const anyOption = states.map(inStates);
const anyPresent = fc.subarray([...SURFACES]);

describe('the path of decisions', () => {
  it('has every surface there is exactly once, those of a group laid alike', () => {
    fc.assert(
      fc.property(anyOption, anyPresent, (option, present) => {
        const groups = decisionPath(option, present).steps.flatMap((step) => step.groups);
        const all = groups.flatMap(({ surfaces }) => surfaces);
        expect([...all].sort()).toEqual([...present].sort());
        for (const { surfaces, finish, state } of groups) {
          for (const one of surfaces) expect(option.scheme[one]).toMatchObject({ finish, state });
        }
      }),
    );
  });

  it('begins with what stays, and with nothing else', () => {
    fc.assert(
      fc.property(anyOption, anyPresent, (option, present) => {
        const { steps } = decisionPath(option, present);
        steps.forEach(({ id, groups }, i) => {
          expect(groups.every(({ state }) => (state === 'fixed') === (id === 'stays'))).toBe(true);
          if (id === 'stays') expect(i).toBe(0);
        });
      }),
    );
  });

  it('names as next what the ledge names, and it is open', () => {
    fc.assert(
      fc.property(anyOption, anyPresent, (option, present) => {
        const { next, steps } = decisionPath(option, present);
        expect(next).toBe(nextOpen(option, present));
        const open = steps.flatMap(({ groups }) => groups.filter(({ state }) => state === 'open'));
        expect(next === null).toBe(open.length === 0);
        if (next) expect(open[0]!.surfaces).toContain(next);
      }),
    );
  });
});

describe('what hangs on a decision', () => {
  const settled = (surfaces: readonly SurfaceId[]) =>
    inStates(SURFACES.map((surface) => (surfaces.includes(surface) ? 'decided' : 'open')));

  it('is what was decided after it, never before, never itself', () => {
    const option = settled(['counter', 'base-fronts', 'backsplash']);
    expect(settledAfter(option, SURFACES, ['counter'])).toEqual(['base-fronts', 'backsplash']);
    expect(settledAfter(option, SURFACES, ['base-fronts'])).toEqual(['backsplash']);
    expect(settledAfter(option, SURFACES, ['backsplash'])).toEqual([]);
    expect(settledAfter(option, SURFACES, ['base-fronts', 'backsplash'])).toEqual([]);
    expect(settledAfter(option, ['counter', 'floor'], ['counter'])).toEqual([]);
    expect(settledAfter(option, SURFACES, [])).toEqual([]);
  });

  it('knows which finishes changed', () => {
    const { wall } = demo.scheme;
    const other = { ...demo, scheme: { ...demo.scheme, wall: { ...wall, finish: 'PT-01' } } };
    expect(relaidSurfaces(demo, other)).toEqual(['wall']);
    expect(relaidSurfaces(demo, settled(['wall']))).toEqual([]);
  });
});
