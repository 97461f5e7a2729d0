import { expect, it } from 'vitest';
import { SURFACES } from '../../src/engine/surface';
import { applyCommand } from '../../src/model/apply-command';
import { ledgeSamples } from '../../src/ui/ledge/ledge-samples';
import { terrace } from './terrace';

const project = terrace();
const option = project.options.find((one) => one.id === 'our-floor')!;

it('shows every surface of the room in exactly one sample', () => {
  const { upright, flat } = ledgeSamples(option, project.library, SURFACES);
  const shown = [...upright, ...flat].flatMap((sample) => sample.surfaces);
  expect([...shown].sort()).toEqual([...SURFACES].sort());
});

it('lays counters, floor, sink and ceiling flat and stands the rest upright', () => {
  const { flat } = ledgeSamples(option, project.library, SURFACES);
  expect(flat.flatMap((sample) => sample.surfaces).sort()).toEqual(
    ['ceiling', 'counter', 'floor', 'island-counter', 'sink'].sort(),
  );
});

it('puts what is fixed first', () => {
  expect(ledgeSamples(option, project.library, SURFACES).flat[0]?.id).toBe('floor');
});

it('parts one front from the others as soon as it carries another finish', () => {
  const before = ledgeSamples(option, project.library, SURFACES).upright;
  expect(before.find((sample) => sample.surfaces.includes('island-fronts'))?.surfaces).toContain('base-fronts');
  const laid = applyCommand(project, {
    kind: 'lay-finish',
    option: option.id,
    surface: 'island-fronts',
    finish: 'WD-07',
  });
  if (!laid.ok) throw new Error(laid.problem.text);
  const after = ledgeSamples(
    laid.value.options.find((one) => one.id === option.id)!,
    project.library,
    SURFACES,
  ).upright;
  expect(after.find((sample) => sample.surfaces.includes('island-fronts'))?.surfaces).toEqual(['island-fronts']);
});

it('leaves out surfaces that the room does not have', () => {
  const { upright, flat } = ledgeSamples(option, project.library, ['floor', 'wall']);
  expect([...upright, ...flat].map((sample) => sample.id).sort()).toEqual(['floor', 'wall']);
});
