import { expect, it } from 'vitest';
import { lightById } from '../engine/spectrum/lights';
import type { Lamp } from './project';
import { lightOfProject } from './project-lights';

/** A lamp of equal energy on the engine's own grid. */
const equal: Lamp = { id: 'mine', label: 'Mine', start_nm: 380, step_nm: 5, power: new Array(81).fill(1) };

it('finds a lamp of the project by its id, resampled once', () => {
  const found = lightOfProject({ lamps: [equal] }, 'mine');
  expect(found.ok && [...found.value]).toEqual(equal.power);
  expect(lightOfProject({ lamps: [equal] }, 'mine')).toBe(found);
});

it('knows the CIE lights with and without lamps of the project', () => {
  for (const project of [{}, { lamps: [equal] }]) {
    expect(lightOfProject(project, 'FL11')).toMatchObject({ ok: true, value: lightById('FL11') });
  }
});

it('names the lamps there are when a light is not known', () => {
  expect(lightOfProject({ lamps: [equal] }, 'yours')).toMatchObject({
    ok: false,
    problem: { code: 'unknown-light', remedy: expect.stringContaining("The project's own lamps are mine.") },
  });
});
