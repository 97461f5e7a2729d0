import { expect, it } from 'vitest';
import { SURFACES } from '../../src/engine/surface';
import { applyCommand } from '../../src/model/apply-command';
import { ledgeSamples } from '../../src/ui/ledge/ledge-samples';
import { terrace } from '../ui/terrace';

// Fronts of one veneer, but with the grain turned on the island, stood on the ledge as one sample.

it('shows fronts apart whose grain runs another way', () => {
  let project = terrace();
  for (const surface of ['base-fronts', 'wall-fronts', 'tall-fronts', 'island-fronts'] as const) {
    const laying = { layout: 'plain' as const, ...(surface === 'island-fronts' ? { direction_deg: 90 as const } : {}) };
    const laid = applyCommand(project, { kind: 'lay-finish', option: 'our-floor', surface, finish: 'WD-07', laying });
    if (!laid.ok) throw new Error(laid.problem.text);
    project = laid.value;
  }
  const option = project.options.find(({ id }) => id === 'our-floor')!;
  const { upright } = ledgeSamples(option, project.library, SURFACES);
  const sampleOf = (surface: 'base-fronts' | 'island-fronts') =>
    upright.find((sample) => sample.surfaces.includes(surface))!.surfaces;
  expect(sampleOf('island-fronts')).toEqual(['island-fronts']);
  expect(sampleOf('base-fronts')).toContain('tall-fronts');
});
