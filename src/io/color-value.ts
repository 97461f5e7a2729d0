import { D65_AT_2 } from '../engine/finish/conditions';
import type { GivenColor } from '../engine/finish/given-color';
import { hueWordOf } from '../engine/finish/hue-words';
import type { Provenance } from '../engine/finish/types';
import { labCFromMunsell } from '../engine/naming/munsell';
import { failure, type Problem, type Result, success } from '../engine/result';
import { LIGHT_IDS } from '../engine/spectrum/lights';
import { checkGivenColor } from '../model/check-finish';
import {
  type ColorLine,
  illuminantId,
  MOST_LETTERS_IN_LINE,
  type NumberKind,
  plain,
  readColorLine,
  type SaidBeside,
  saidTogether,
  TOO_LONG,
} from './color-line';

/** A color as typed, how far it can be trusted by the way it was given, and what the line said beside it. */
export interface TypedColor {
  readonly color: GivenColor;
  readonly provenance: Provenance;
  /** LRV printed beside numbers, where the line has one. */
  readonly lrv?: number;
}

/**
 * Reads a color as one types it: `#a1b2c3` (with or without #, also three digits), `p3:#a1b2c3` (Display P3),
 * `lab:88.5,-0.8,-0.3`, `lch:84,6,85`, `xyz:66,70,65` (light and observer in parentheses, `lab(D50,10):...`),
 * `munsell:5Y 9/1`, `lrv:70 warm gray` (light reflectance value 0-100 and a word for the hue, in either order), or a line that names its
 * numbers, "L* 84.2 a* 0.5 b* 6.1 D65/10° SCI". Where the text does not say light, observer or mirror reflection, those of
 * `unsaid` are taken, and D65 with 2 degrees where that says nothing either.
 */
export function parseColorValue(text: string, unsaid: SaidBeside = {}): Result<TypedColor> {
  // Before any pattern: they take long on long texts.
  if (text.length > MOST_LETTERS_IN_LINE) return failure(TOO_LONG);
  const value = plain(text);
  const prefix = /^(lab|lch|xyz|munsell|lrv|hex|p3)\s*(?:\(([^)]*)\)\s*)?:\s*(.*)$/i.exec(value);
  if (!prefix) return readBare(value, text, unsaid);
  const [, name, conditions, rest] = prefix;
  const kind = name!.toLowerCase();
  if (kind === 'lab' || kind === 'lch' || kind === 'xyz') {
    const said = readConditions(conditions ?? '');
    if (!said.ok) return said;
    const line = readColorLine(rest!);
    if (!line.ok) return line;
    const beside = saidTogether(said.value, line.value.beside);
    return beside.ok ? readNumbers(kind, { ...line.value, beside: beside.value }, text, unsaid) : beside;
  }
  if (conditions !== undefined) return failure(notAColor(text));
  if (kind === 'munsell') return readMunsell(rest!);
  if (kind === 'lrv') return readLrv(rest!, text);
  return readHex(rest!, text, kind === 'p3' ? 'display-p3' : 'srgb');
}

/** What says itself which kind it is. */
function readBare(value: string, text: string, unsaid: SaidBeside): Result<TypedColor> {
  if (/^(N\s*\d|\d*\.?\d+\s*(R|YR|Y|GY|G|BG|B|PB|P|RP)\s*\d)/i.test(value) && !isHex(value)) return readMunsell(value);
  if (isHex(value)) return readHex(value, text, 'srgb');
  const line = readColorLine(value);
  if (!line.ok) return line;
  if (line.value.kind) return readNumbers(line.value.kind, line.value, text, unsaid);
  return LRV_NAME.test(value) ? readLrv(value, text) : readHex(value, text, 'srgb');
}

const isHex = (text: string): boolean => /^#?([0-9a-f]{6}|[0-9a-f]{3})$/i.test(text);

function readHex(digits: string, text: string, space: 'srgb' | 'display-p3'): Result<TypedColor> {
  if (!isHex(digits)) return failure(notAColor(text));
  const short = digits.replace('#', '').toLowerCase();
  const hex = `#${short.length === 3 ? [...short].map((digit) => digit + digit).join('') : short}`;
  const color: GivenColor = { kind: 'hex', hex, ...(space === 'display-p3' && { space }) };
  return success({ color, provenance: 'screen' });
}

function readNumbers(kind: NumberKind, line: ColorLine, text: string, unsaid: SaidBeside): Result<TypedColor> {
  const { numbers, beside, unread } = line;
  const [first, second, third] = numbers;
  const isOtherKind = line.kind !== undefined && line.kind !== kind;
  if (unread !== '' && !isOtherKind) return failure(notRead(unread));
  if (numbers.length !== 3 || isOtherKind || numbers.some(Number.isNaN)) return failure(notAColor(text));
  const { illuminant, observer_deg, specular } = { ...D65_AT_2, ...unsaid, ...beside };
  if (!LIGHT_IDS.includes(illuminant)) return failure(unknownIlluminant(illuminant));
  const triple = [first!, second!, third!] as const;
  const under = { illuminant, observer_deg, ...(specular && { specular }) };
  const color: GivenColor =
    kind === 'lab'
      ? { kind, lab: triple, ...under }
      : kind === 'lch'
        ? { kind, lch: triple, ...under }
        : { kind, xyz: triple, ...under };
  const { lrv } = beside;
  if (lrv !== undefined && !(lrv >= 0 && lrv <= 100)) return failure(lrvOutOfRange(lrv));
  const isScale1 = kind === 'xyz' && second! > 0 && Math.max(...triple) <= 1.3;
  return checked(color, 'declared', lrv, isScale1 ? [xyzScale(second!)] : []);
}

/** The words in parentheses after a prefix: light, observer, SCI or SCE, in any order. */
function readConditions(text: string): Result<SaidBeside> {
  let said: SaidBeside = {};
  for (const word of text.split(/[\s,/]+/).filter((one) => one !== '')) {
    const observer = /^(2|10)(?:°|º|deg)?$/i.exec(word)?.[1];
    const illuminant = illuminantId(word);
    const one: SaidBeside | null = observer
      ? { observer_deg: observer === '2' ? 2 : 10 }
      : illuminant
        ? { illuminant }
        : /^SC[IE]$/i.test(word)
          ? { specular: /I$/i.test(word) ? 'included' : 'excluded' }
          : null;
    if (!one) return failure(unknownIlluminant(word));
    const both = saidTogether(said, one);
    if (!both.ok) return both;
    said = both.value;
  }
  return success(said);
}

function readMunsell(notation: string): Result<TypedColor> {
  const understood = labCFromMunsell(notation);
  if (!understood.ok) return understood;
  return success({ color: { kind: 'munsell', munsell: notation.trim() }, provenance: 'declared' });
}

const LRV_NAME = /\bLRV\b\s*[:=]?/i;

/** The number and the word in either order, with or without the name before the number: '70 warm gray', 'warm gray, LRV 70'. */
function readLrv(rest: string, text: string): Result<TypedColor> {
  const match = /^([^\d]*?)[\s,]*(?<![\d.,-])(\d+(?:[.,]\d+)?)\s*%?(?![\d.])[\s,]*([^\d]*)$/.exec(
    rest.replace(LRV_NAME, ' ').trim(),
  );
  if (!match) return hueWordOf(rest.replace(LRV_NAME, ' ')) ? failure(lrvMissing(text)) : failure(notAColor(text));
  const hue = `${match[1]!} ${match[3]!}`.trim();
  if (hue === '') {
    return failure({
      code: 'hue-missing',
      text: `"${text}" says how light the color is, not which color.`,
      remedy: 'Add a word for the hue: lrv:70 warm gray.',
    });
  }
  return checked({ kind: 'lrv', lrv: Number(match[2]!.replace(',', '.')), hue }, 'by-eye');
}

function checked(
  color: GivenColor,
  provenance: Provenance,
  lrv?: number,
  notices: readonly Problem[] = [],
): Result<TypedColor> {
  const [problem, ...more] = checkGivenColor(color, 'color');
  if (problem) return failure(problem, more);
  return success({ color, provenance, ...(lrv !== undefined && { lrv }) }, notices);
}

const notAColor = (text: string): Problem => ({
  code: 'not-a-color',
  text: `We cannot read a color in "${text}".`,
  remedy:
    'Write #a1b2c3, lab:88.5,-0.8,-0.3, lch:84,6,85, xyz:66,70,65, munsell:5Y 9/1, lrv:70 warm gray, or name a file with a spectrum.',
});

const notRead = (part: string): Problem => ({
  code: 'part-not-read',
  text: `"${part}" cannot be read.`,
  remedy: 'Leave it out, or write light, observer and mirror reflection like D65/10 SCI.',
});

const lrvOutOfRange = (lrv: number): Problem => ({
  code: 'lrv-out-of-range',
  text: `A light reflectance value of ${lrv} is outside 0-100.`,
  remedy: 'Give the LRV as printed on the sample, 0 for black to 100 for white.',
});

const lrvMissing = (text: string): Problem => ({
  code: 'lrv-missing',
  text: `"${text}" says which color it is, not how light.`,
  remedy: 'Add the number printed on the sample: lrv:70 warm gray.',
});

const unknownIlluminant = (word: string): Problem => ({
  code: 'unknown-illuminant',
  text: `"${word}" is no CIE light that is known here, and no observer.`,
  remedy: `Write it like lab(D50,10):84,0.5,6. Lights: ${LIGHT_IDS.join(', ')}; observers: 2, 10.`,
});

const xyzScale = (y: number): Problem => ({
  code: 'xyz-scale',
  text: `Y ${y} was read on the scale where a perfect white has 100, so the color is nearly black.`,
  remedy: 'Multiply X, Y and Z by 100 if white has 1 in your numbers.',
});
