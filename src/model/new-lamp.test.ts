import { expect, it } from 'vitest';
import { checkLamp } from './check-lamp';
import { newLamp } from './new-lamp';
import type { Lamp } from './project';
import { lightOfProject } from './project-lights';

const NM = Array.from({ length: 401 }, (_, i) => 380 + i);
const made = (name: string, nm: readonly number[] = NM, lamps: readonly Lamp[] = []): Lamp => {
  const lamp = newLamp({ lamps }, { name, nm, power: nm.map((one) => one / 100) }, 'Invented.');
  if (!lamp.ok) throw new Error(lamp.problem.text);
  return lamp.value;
};

it('keeps the numbers of even steps and gives the lamp an id', () => {
  const lamp = made('Island pendant, 2700 K');
  expect(lamp).toMatchObject({ id: 'lamp-island-pendant-2700-k', start_nm: 380, step_nm: 1, note: 'Invented.' });
  expect(lamp.power).toHaveLength(401);
  expect(checkLamp(lamp, 'lamp')).toEqual([]);
});

it('takes fractions of a nanometer as even when only rounding breaks them', () => {
  const thirds = Array.from({ length: 301 }, (_, i) => Number((380 + (i * 4) / 3).toFixed(4)));
  expect(made('thirds', thirds).power).toHaveLength(301);
});

it('brings uneven steps to the grid, and the light stays the same', () => {
  const uneven = NM.filter((nm) => nm < 500 || nm % 2 === 0);
  const lamp = made('uneven', uneven);
  expect([lamp.start_nm, lamp.step_nm, lamp.power.length]).toEqual([380, 5, 81]);
  const light = lightOfProject({ lamps: [lamp] }, lamp.id);
  // A straight line of power: 1 % for the change of step in the middle.
  expect(light.ok && Math.abs(light.value[40]! / light.value[10]! - 580 / 430)).toBeLessThan(0.01);
});

it('gives a lamp back that the project has, and another of the same name an id of its own', () => {
  const first = made('Strip');
  expect(made('Strip', NM, [first])).toBe(first);
  const second = made('Strip', NM.slice(0, 400), [first]);
  expect(second.id).not.toBe(first.id);
  expect([made('D65').id, made('***').id, made('Lamp').id]).toEqual(['lamp-d65', 'lamp-own', 'lamp']);
});

it('refuses what the engine refuses', () => {
  expect(newLamp({}, { name: 'x', nm: [400, 700], power: [1, 1] }, '')).toMatchObject({ ok: false });
});
