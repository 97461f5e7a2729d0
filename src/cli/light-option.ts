import { existsSync } from 'node:fs';
import { lightParts } from '../engine/lamp/light-parts';
import { lightFromWords } from '../engine/lamp/light-words';
import { failure, type Problem, type Result, success } from '../engine/result';
import { emissionOnGrid } from '../engine/spectrum/resample-emission';
import type { EmissionSpd } from '../engine/spectrum/types';
import { parseLampFile } from '../io/lamp-file';
import { inFile } from './open-project';
import { readText } from './read-text';
import { unknownLight } from './unknown-light';

/** A light by a name for people, with its spectrum (relative power; do not write to it). */
export interface NamedLight {
  readonly name: string;
  readonly spd: EmissionSpd;
  /** Made from color temperature and Ra, in whole or in part: no lamp there is. */
  readonly modeled: boolean;
}

/** One light, as an option names it: words for a light, a lamp file with one lamp, or FILE#NAME for one of several. */
export function readLight(words: string): Result<NamedLight> {
  const read = readLights(words);
  if (!read.ok) return read;
  const [only, ...more] = read.value;
  if (only && more.length === 0) return success(only, read.notices);
  const names = read.value.map(({ name }) => name).join(', ');
  return failure({
    code: 'several-lamps',
    text: `The file has ${read.value.length} lamps: ${names}.`,
    at: { file: words },
    remedy: `Name one: "${words}#${only?.name}".`,
  });
}

/**
 * The lights that words name: one for words of a light ('D65', 'FL11'), which win over a file of the same name; every lamp
 * of a lamp file; one lamp of it for FILE#NAME or where `column` names it.
 */
export function readLights(words: string, column?: string): Result<readonly NamedLight[]> {
  const known = lightFromWords(words);
  if (known.ok && column === undefined)
    return success([{ name: words, spd: known.value, modeled: isModeled(words) }], known.notices);
  if (!known.ok && blendsFile(words)) return failure(fileInBlend(words));
  if (isFile(words)) return readLampFile(words, column);
  const mark = words.lastIndexOf('#');
  if (mark > 0 && column === undefined && isFile(words.slice(0, mark))) {
    return readLampFile(words.slice(0, mark), words.slice(mark + 1));
  }
  if (known.ok) {
    const text = `"${words}" is the name of a light, not a file with columns.`;
    return failure({ code: 'no-column', text, remedy: `Leave out --column, or write ./${words} for a file.` });
  }
  return failure(unknownLight(words, known.problem));
}

const isModeled = (words: string): boolean => {
  const parts = lightParts(words);
  return parts.ok && parts.value.some(({ light }) => light.kind === 'led');
};

/** A file among lights joined by +; a + may also stand in the name of a file. */
const blendsFile = (words: string): boolean =>
  words.includes('+') &&
  !existsSync(words) &&
  words.split('+').some((part) =>
    isFile(
      part
        .replace(/^\s*[\d.]+\s*%?\s*\*?/, '')
        .replace(/#.*$/, '')
        .trim(),
    ),
  );

const fileInBlend = (words: string): Problem => ({
  code: 'file-in-blend',
  text: `"${words}" blends a file: only lights in words can be blended.`,
  remedy: 'Blend lights like 0.6 led:2700,90 + 0.4 FL11, or write one file with the spectrum of the blend.',
});

const isFile = (words: string): boolean => /\.(csv|tsv|txt|xml|spdx|sp|cgats)$/i.test(words) || existsSync(words);

function readLampFile(file: string, column?: string): Result<readonly NamedLight[]> {
  const text = readText(file);
  if (!text.ok) return text;
  const parsed = parseLampFile(text.value, file);
  if (!parsed.ok) return parsed;
  const wanted = column === undefined ? parsed.value : parsed.value.filter(({ name }) => isNamed(name, column));
  if (wanted.length === 0) {
    return failure({
      code: 'unknown-column',
      text: `There is no lamp "${column}" in this file.`,
      at: { file },
      remedy: `Name one of: ${parsed.value.map(({ name }) => name).join(', ')}.`,
    });
  }
  const lights: NamedLight[] = [];
  const notices = [...(parsed.notices ?? [])];
  for (const { name, nm, power } of wanted) {
    const made = emissionOnGrid({ nm, power });
    const named = parsed.value.length > 1 ? `${name}: ` : '';
    if (!made.ok) return failure(inFile(file, { ...made.problem, text: `${named}${made.problem.text}` }));
    for (const notice of made.notices ?? []) notices.push(inFile(file, { ...notice, text: `${named}${notice.text}` }));
    lights.push({ name, spd: made.value, modeled: false });
  }
  return success(lights, notices);
}

const isNamed = (name: string, wanted: string): boolean => name.trim().toLowerCase() === wanted.trim().toLowerCase();
