import type { Conditions, Specular } from '../engine/finish/given-color';
import { failure, type Problem, type Result, success } from '../engine/result';
import { LIGHT_IDS } from '../engine/spectrum/lights';

/** What else a line with a color may say: light, observer, mirror reflection, printed LRV. */
export interface SaidBeside {
  readonly illuminant?: string;
  readonly observer_deg?: Conditions['observer_deg'];
  readonly specular?: Specular;
  readonly lrv?: number;
}

export type NumberKind = 'lab' | 'lch' | 'xyz';

/** The numbers of a line; `kind` where it names them. */
export interface ColorLine {
  readonly kind?: NumberKind;
  /** Three numbers, or fewer or more where the line has them. */
  readonly numbers: readonly number[];
  readonly beside: SaidBeside;
  /** What is left of a line with three numbers when all that is understood is taken out; '' where nothing is. */
  readonly unread: string;
}

/** No line from a report is longer; a longer one may take seconds. */
export const MOST_LETTERS_IN_LINE = 300;

const NUMBER = String.raw`[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d+)?`;
const DEGREE = String.raw`\s*(?:°|º|deg(?:rees?)?\b)`;

/** The degree sign of a hue angle that stands third of three bare numbers is no observer's. */
const HUE_DEGREES = new RegExp(String.raw`^((?:${NUMBER}[\s,;]+){2}${NUMBER})${DEGREE}`, 'i');

/**
 * Takes a line apart as it stands in a report, a data sheet or on a sample: "L* 84.2 a* 0.5 b* 6.1 (D65/10°, SCI), LRV 65".
 * Numbers may have decimal commas where the comma does not separate them. Problems: 'too-long', 'a-difference' and
 * 'contradiction', where the line says two things of the same.
 */
export function readColorLine(text: string): Result<ColorLine> {
  if (text.length > MOST_LETTERS_IN_LINE) return failure(TOO_LONG);
  const line = plain(text);
  const taken = takeBeside(line.replace(HUE_DEGREES, '$1'));
  if (!taken.ok) return taken;
  const { beside, rest } = taken.value;
  const labelled = labelledNumbers(rest);
  if (labelled) return labelled.ok ? success({ ...labelled.value, beside }) : labelled;
  if (isDifference(line)) return failure(A_DIFFERENCE);
  const kind = kindNamed(rest);
  const words = bareWords(withoutName(rest));
  const numbers = words.map(numberOf);
  const hasThree = numbers.length > 3 && numbers.slice(0, 3).every((number) => !Number.isNaN(number));
  return success({ ...(kind && { kind }), numbers, beside, unread: hasThree ? words.slice(3).join(' ') : '' });
}

/** What two places of a line say together, or what they say differently. */
export function saidTogether(a: SaidBeside, b: SaidBeside): Result<SaidBeside> {
  for (const key of ['illuminant', 'observer_deg', 'specular', 'lrv'] as const) {
    if (a[key] !== undefined && b[key] !== undefined && a[key] !== b[key]) {
      return failure(contradiction(BESIDE_WORDS[key], wordOf(a[key]), wordOf(b[key])));
    }
  }
  return success({ ...a, ...b });
}

const BESIDE_WORDS: { readonly [K in keyof SaidBeside]-?: string } = {
  illuminant: 'light',
  observer_deg: 'observer',
  specular: 'mirror reflection',
  lrv: 'LRV',
};

const wordOf = (said: string | number): string =>
  said === 'included' ? 'SCI' : said === 'excluded' ? 'SCE' : `${said}`;

/** Lamps of shops by their trade names, which CIE 15 has as types of fluorescent lamps (common practice, from memory). */
const TRADE_NAMES: Readonly<Record<string, string>> = { TL84: 'FL11', TL83: 'FL12', CWF: 'FL2' };

/** The id of a CIE light as people write it ('d50', 'F11', 'led b3', 'TL84'); null when it is none. */
export function illuminantId(text: string): string | null {
  const name = text
    .trim()
    .toUpperCase()
    .replace(/\s+/g, '-')
    .replace(/^F(?=\d)/, 'FL');
  const id = Object.hasOwn(TRADE_NAMES, name) ? TRADE_NAMES[name] : name;
  return LIGHT_IDS.find((one) => one === id) ?? null;
}

/** One sign for minus, one for a space. */
export const plain = (text: string): string => text.replace(/[−–]/g, '-').replace(/\s+/g, ' ').trim();

const SPECULAR =
  /\b(?:(SCI|SPIN|spec(?:ular)?\s+incl(?:uded|\.)?|di\s?[:/]\s?8)|SCE|SPEX|spec(?:ular)?\s+excl(?:uded|\.)?|de\s?[:/]\s?8)\b[.°]?/i;
/** Geometry of a sphere instrument that says nothing of its trap (CIE 15:2018, 5.1). */
const SPHERE = /\bd\s?[:/]\s?8\b°?/i;
const LRV = new RegExp(String.raw`\bLRV\s*[:=]?\s*(${NUMBER})\s*%?`, 'i');
// Of the lights with one letter only what cannot be a* or C*: with a slash, a degree sign, or called an illuminant.
const LIGHTS = [
  new RegExp(
    String.raw`\b(?:illuminant\s*)?(D\d\d|FL?\d\d?|LED[- ]?[A-Z]+\d)\b(?:\s*[/,-]?\s*(10|2)\b(?![.,]?\d)(?:${DEGREE})?)?`,
    'i',
  ),
  new RegExp(String.raw`\b(A|C)\s*(?:\/\s*(10|2)\b(?:${DEGREE})?|,?\s*(10|2)${DEGREE})`),
  /\billuminant\s*(A|C)\b/i,
];
const OBSERVER = new RegExp(String.raw`(?<!\bh\s*(?:ab)?\s*[:=]?\s*)(?<![\d.])(10|2)${DEGREE}(?:\s*observer)?`, 'i');

function takeBeside(text: string): Result<{ readonly beside: SaidBeside; readonly rest: string }> {
  let rest = text;
  const takeAll = (pattern: RegExp): readonly RegExpExecArray[] => {
    const matches: RegExpExecArray[] = [];
    for (let match = pattern.exec(rest); match; match = pattern.exec(rest)) {
      rest = `${rest.slice(0, match.index)} ${rest.slice(match.index + match[0].length)}`;
      matches.push(match);
    }
    return matches;
  };
  const parts: readonly SaidBeside[] = [
    ...takeAll(SPECULAR).map(([, isIncluded]) => ({ specular: isIncluded ? 'included' : 'excluded' }) as const),
    ...takeAll(SPHERE).map(() => ({})),
    ...takeAll(LRV).map(([, number]) => ({ lrv: Number(number!.replace(',', '.')) })),
    ...LIGHTS.flatMap(takeAll).map(([, light, ...degrees]) => ({
      illuminant: illuminantId(light!) ?? light!,
      ...observerOf(degrees.find((one) => one !== undefined)),
    })),
    ...takeAll(OBSERVER).map(([, degrees]) => observerOf(degrees)),
  ];
  let beside: SaidBeside = {};
  for (const part of parts) {
    const said = saidTogether(beside, part);
    if (!said.ok) return said;
    beside = said.value;
  }
  return success({
    beside,
    rest: rest
      .replace(/[()[\]]/g, ' ')
      .replace(/^[\s,;]+(?=\s)/, '')
      .trim(),
  });
}

const observerOf = (degrees: string | undefined): SaidBeside =>
  degrees === undefined ? {} : { observer_deg: degrees === '2' ? 2 : 10 };

const LABELS: readonly { readonly kind: NumberKind; readonly names: readonly string[] }[] = [
  { kind: 'lab', names: ['L', 'a', 'b'] },
  { kind: 'lch', names: ['L', 'C', 'h'] },
  { kind: 'xyz', names: ['X', 'Y', 'Z'] },
];

/** A letter with its number, not one that says a difference. */
const LABELLED = new RegExp(
  String.raw`(?<![\p{L}∆]|[Δ∆δ]\s|delta\s)([LabChXYZ])(?:\s*\*)?(?:ab)?(?:\s*\*)?(?:\s*[°º])?\s*[:=]?\s*(${NUMBER})(?:${DEGREE})?`,
  'giu',
);

/** "L* 84.2 a* = 0.5; b*: 6.1": numbers by their names, in whatever order; CIELAB before L C h where both stand there. */
function labelledNumbers(text: string): Result<Omit<ColorLine, 'beside'>> | null {
  const found = new Map<string, number>();
  let twice: Problem | null = null;
  for (const [, name, digits] of text.matchAll(LABELLED)) {
    const key = nameOf(name!);
    const number = Number(digits!.replace(/,$/, '').replace(',', '.'));
    const before = found.get(key);
    if (before !== undefined && before !== number) twice ??= contradiction(key, `${before}`, `${number}`);
    if (before === undefined) found.set(key, number);
  }
  for (const { kind, names } of LABELS) {
    if (!names.every((name) => found.has(name))) continue;
    if (twice) return failure(twice);
    const numbers = names.map((name) => found.get(name)!);
    return success({ kind, numbers, unread: unreadOf(text.replace(LABELLED, ' ')) });
  }
  return null;
}

/** Without what only names the numbers, the light and the observer, and without punctuation. */
const unreadOf = (rest: string): string =>
  rest
    .replace(/\b(?:CIE\s?)?(?:L\s?\*?\s?a\s?\*?\s?b|L\s?\*?\s?C\s?\*?\s?h|XYZ)(?![\p{L}\d])\*?/giu, ' ')
    .replace(/\b(?:CIE(?:\s?1976)?|illuminant|observer|and|at|under)\b/gi, ' ')
    .replace(/(?<![^\s,;:/|.-])[,;:/|.-]+(?![^\s,;:/|.-])/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[\s,;]+|[\s,;]+$/g, '');

/** Names of differences: with a delta, or with a d before the letter (ISO/CIE 11664-4 writes a delta). */
const isDifference = (text: string): boolean =>
  /[Δ∆δ]|\bdelta\b/i.test(text) ||
  /(?<![\p{L}\d#])d(?:Lab|LCh|[LabCHE](?:\s?\*|ab|00)?)(?![\p{L}])\s?[*:=]?\s?[+-]?[\d.,]/iu.test(text);

/** Letters in the case the standard writes them. */
const nameOf = (letter: string): string =>
  LABELS.flatMap(({ names }) => names).find((name) => name.toLowerCase() === letter.toLowerCase())!;

const NAMES: readonly (readonly [NumberKind, RegExp])[] = [
  ['lch', /^(?:CIE\s*)?L\s*\*?\s*C\s*\*?\s*h\s*\*?(?:ab)?(?:\s*°)?\s*[:=]?(?=[\s\d+-])/i],
  ['lab', /^(?:CIE\s*)?L\s*\*?\s*a\s*\*?\s*b\s*\*?\s*[:=]?(?=[\s\d+-])/i],
  ['xyz', /^(?:CIE\s*)?XYZ\s*[:=]?(?=[\s\d+-])/i],
];

const kindNamed = (text: string): NumberKind | undefined => NAMES.find(([, name]) => name.test(text))?.[0];
const withoutName = (text: string): string => NAMES.reduce((rest, [, name]) => rest.replace(name, ''), text).trim();

/** Numbers alone: "84.2, 0.5, 6.1", "84,2 0,5 6,1", "84,2; 0,5; 6,1". */
function bareWords(text: string): readonly string[] {
  const list = text.replace(/[\s,;]+$/, '');
  const words = list.split(/\s*;\s*|\s+/).filter((word) => word !== '');
  const isSpaced = words.length > 1 && words.every((word) => !word.startsWith(',') && !word.endsWith(','));
  return isSpaced ? words : list.split(/\s*,\s*|\s+/);
}

const WHOLE_NUMBER = new RegExp(`^${NUMBER}$`, 'i');

const numberOf = (word: string): number => (WHOLE_NUMBER.test(word) ? Number(word.replace(',', '.')) : Number.NaN);

export const TOO_LONG: Problem<'too-long'> = {
  code: 'too-long',
  text: `A color takes no more than ${MOST_LETTERS_IN_LINE} letters; this text is longer.`,
  remedy: 'Paste only the line of one color.',
};

const A_DIFFERENCE: Problem<'a-difference'> = {
  code: 'a-difference',
  text: 'These are differences, not a color.',
  remedy: 'Give the color itself: L* 84.2 a* 0.5 b* 6.1.',
};

const contradiction = (what: string, one: string, other: string): Problem<'contradiction'> => ({
  code: 'contradiction',
  text: `The text gives two values of ${what}: ${one} and ${other}.`,
  remedy: 'Keep the one that belongs to the numbers.',
});
