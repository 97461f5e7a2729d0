import { describe, expect, it } from 'vitest';
import type { DecisionState, SurfaceId } from '../../src/engine/surface';
import { type Narrowing, narrowings } from '../../src/kitchen/study/narrowing';
import { shortlistSamples } from '../../src/kitchen/study/shortlist-samples';
import type { Option, Project, Scheme } from '../../src/model/project';
import { narrowingWords } from '../../src/ui/words/decisions';
import { demoProject } from '../io/demo';

const demo = demoProject();
const PRESENT: readonly SurfaceId[] = ['counter', 'floor', 'base-fronts', 'backsplash', 'wall'];

/** The demo's own option with some surfaces settled so and all others open. */
function settled(states: Partial<Record<SurfaceId, DecisionState>>): { project: Project; option: Option } {
  const own = demo.options.find(({ id }) => id === 'our-floor')!;
  const scheme = Object.fromEntries(
    Object.entries(own.scheme).map(([surface, placement]) => [
      surface,
      { ...placement, state: states[surface as SurfaceId] ?? 'open' },
    ]),
  ) as unknown as Scheme;
  const option = { ...own, scheme };
  return { project: { ...demo, options: demo.options.map((one) => (one.id === own.id ? option : one)) }, option };
}

function counted(states: Partial<Record<SurfaceId, DecisionState>>): readonly Narrowing[] {
  const { project, option } = settled(states);
  const steps = narrowings(project, option, PRESENT);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
const leftFor = (all: readonly Narrowing[], surface: SurfaceId) =>
  all.find(({ surfaces }) => surfaces.includes(surface))!;

describe('what is left of the library', () => {
  it('is all that is made for a place while nothing is settled', () => {
    for (const { of, left, by } of counted({})) {
      expect(left).toBe(of);
      expect(by).toEqual([]);
    }
  });

  it('adds up, and is what the shortlist accepts', () => {
    const states = { floor: 'fixed', counter: 'decided' } as const;
    const { project, option } = settled(states);
    const all = counted(states);
    expect(all.map(({ surfaces }) => surfaces[0])).toEqual(['base-fronts', 'backsplash', 'wall']);
    for (const { surfaces, of, left, by } of all) {
      expect(by.reduce((sum, { takes }) => sum + takes, 0)).toBe(of - left);
      const list = shortlistSamples(project, option.id, surfaces[0]!, { present: PRESENT });
      expect(list.ok && list.value.accepted.length).toBe(left);
    }
    expect(leftFor(all, 'backsplash').left).toBeLessThan(leftFor(all, 'backsplash').of);
  });

  it('never grows with another decision', () => {
    const before = counted({ floor: 'fixed' });
    const after = counted({ floor: 'fixed', counter: 'decided' });
    for (const one of after) expect(one.left).toBeLessThanOrEqual(leftFor(before, one.surfaces[0]!).left);
  });
});

describe('its words', () => {
  it('say who takes out how many', () => {
    expect(
      narrowingWords({
        surfaces: ['wall'],
        of: 31,
        left: 14,
        by: [
          { surfaces: ['floor'], takes: 9 },
          { surfaces: ['counter', 'upstand'], takes: 8 },
        ],
      }),
    ).toBe(
      'Of 31 finishes made for it, the floor takes out 9 and the counter and the upstand take out 8; 14 are left.',
    );
    expect(narrowingWords({ surfaces: ['wall'], of: 3, left: 3, by: [] })).toBe(
      'Nothing settled speaks against any of the 3 finishes made for it.',
    );
    expect(narrowingWords({ surfaces: ['wall'], of: 1, left: 0, by: [{ surfaces: ['floor'], takes: 1 }] })).toContain(
      'none is left',
    );
  });
});
