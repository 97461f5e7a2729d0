import { expect, it } from 'vitest';
import { studyOption } from '../../src/kitchen/study/assess-option';
import { judgeInput } from '../../src/kitchen/study/readings';
import { checkKitchen } from '../../src/model/check-kitchen';
import type { Kitchen } from '../../src/model/kitchen';
import { demoProject } from '../io/demo';
import { brokenInvariants } from '../kitchen/invariants';

// A kitchen without an upstand passed every check; then its faces of no area had no light, and the study stopped.

const project = demoProject();
const without = (height: number): Kitchen => {
  const fronts = { ...project.kitchen.fronts, style: 'flat' } as const;
  const kitchen = { ...project.kitchen, fronts, upstand_height: height, skirting_height: height };
  expect(checkKitchen(kitchen, 'kitchen')).toEqual([]);
  return kitchen;
};

it.each([0, 0.01, 0.2])('builds a kitchen with %d mm of upstand and baseboard', (height) => {
  expect(brokenInvariants(without(height), 20)).toEqual([]);
});

it('reads every surface in a kitchen without them', () => {
  const fixtures = project.kitchen.fixtures.filter(({ kind }) => kind === 'panel');
  const bare = { ...project, kitchen: { ...without(0), openings: [], fixtures } };
  const found = studyOption(bare, 'our-floor', 'evening');
  if (!found.ok) throw new Error(found.problem.text);
  const { surfaces } = judgeInput(bare, found.value.study, found.value.solved, found.value.setting);
  // Nor is anything said of the upstand that is not there.
  expect(surfaces.map(({ surface }) => surface)).not.toContain('upstand');
  const read = surfaces.filter(({ installed }) => installed.length > 0).map(({ surface }) => surface);
  expect(read).toContain('counter');
  expect(read).not.toContain('upstand');
});
