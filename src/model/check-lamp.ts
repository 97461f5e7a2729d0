import { lightFromWords } from '../engine/lamp/light-words';
import type { Problem } from '../engine/result';
import { checkNumber, checkText } from './check-number';
import type { Lamp } from './project';
import { spectrumOfLamp } from './project-lights';

/** What an id of a lamp is made of: none of the marks that words for a light are put together with. */
const LAMP_ID = /^[A-Za-z0-9][A-Za-z0-9_-]*$/;

/** Wavelengths and steps a spectrum of a lamp can sensibly have, nm, and how many values at most (our judgment). */
const START_NM = [100, 1000, 'nm'] as const;
const STEP_NM = [0.1, 50, 'nm'] as const;
const MOST_VALUES = 10_000;

/** What is wrong with a lamp: its id, its name, its wavelengths, its powers. */
export function checkLamp(lamp: Lamp, path: string): readonly Problem[] {
  const problems = [
    ...checkId(lamp.id, `${path}.id`),
    ...checkText(lamp.label, `${path}.label`),
    ...checkNumber(lamp.start_nm, START_NM, `${path}.start_nm`),
    ...checkNumber(lamp.step_nm, STEP_NM, `${path}.step_nm`),
    ...checkNumber(lamp.power.length, [2, MOST_VALUES, 'values'], `${path}.power`),
  ];
  if (problems.length > 0) return problems;
  const made = spectrumOfLamp(lamp);
  if (made.ok) return [];
  const at = `${path}.power`;
  return [{ ...made.problem, text: `${at}: ${made.problem.text}`, at: { path: at } }];
}

function checkId(id: string, path: string): readonly Problem[] {
  if (!LAMP_ID.test(id)) {
    return [
      {
        code: 'lamp-id',
        text: `${path}: "${id}" is no id for a lamp.`,
        at: { path },
        remedy: 'Use letters, digits, - and _ only.',
      },
    ];
  }
  if (!lightFromWords(id).ok) return [];
  return [
    {
      code: 'lamp-id',
      text: `${path}: "${id}" is the name of a standard light.`,
      at: { path },
      remedy: 'Give the lamp an id of its own.',
    },
  ];
}
