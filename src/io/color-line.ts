import type { Conditions, Specular } from '../engine/finish/given-color';
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
}

const NUMBER = String.raw`[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d+)?`;
const DEGREE = String.raw`\s*(?:°|º|deg(?:rees?)?\b)`;

/** The degree sign of a hue angle that stands third of three bare numbers is no observer's. */
const HUE_DEGREES = new RegExp(String.raw`^((?:${NUMBER}[\s,;]+){2}${NUMBER})${DEGREE}`, 'i');

/**
 * Takes a line apart as it stands in a report, a data sheet or on a sample: "L* 84.2 a* 0.5 b* 6.1 (D65/10°, SCI), LRV 65".
 * Numbers may have decimal commas where the comma does not separate them.
 */
export function readColorLine(text: string): ColorLine {
  const { beside, rest } = takeBeside(plain(text).replace(HUE_DEGREES, '$1'));
  const labelled = labelledNumbers(rest);
  if (labelled) return { ...labelled, beside };
  const kind = kindNamed(rest);
  return { ...(kind && { kind }), numbers: bareNumbers(withoutName(rest)), beside };
}

/** The id of a CIE light as people write it ('d50', 'F11', 'led b3'); null when it is none. */
export function illuminantId(text: string): string | null {
  const name = text
    .trim()
    .toUpperCase()
    .replace(/\s+/g, '-')
    .replace(/^F(?=\d)/, 'FL');
  return LIGHT_IDS.find((id) => id === name) ?? null;
}

/** One sign for minus, one for a space. */
export const plain = (text: string): string => text.replace(/[−–]/g, '-').replace(/\s+/g, ' ').trim();

function takeBeside(text: string): { readonly beside: SaidBeside; readonly rest: string } {
  let rest = text;
  const take = (pattern: RegExp): RegExpExecArray | null => {
    const match = pattern.exec(rest);
    if (match) rest = `${rest.slice(0, match.index)} ${rest.slice(match.index + match[0].length)}`;
    return match;
  };
  const specular = take(
    /\b(?:(SCI|SPIN|spec(?:ular)?\s+incl(?:uded|\.)?)|SCE|SPEX|spec(?:ular)?\s+excl(?:uded|\.)?)\b\.?/i,
  );
  const lrv = take(new RegExp(String.raw`\bLRV\s*[:=]?\s*(${NUMBER})\s*%?`, 'i'));
  // Of the lights with one letter only what cannot be a* or C*: with a slash, a degree sign, or called an illuminant.
  const light =
    take(
      new RegExp(
        String.raw`\b(?:illuminant\s*)?(D\d\d|FL?\d\d?|LED[- ]?[A-Z]+\d)\b(?:\s*[/,-]?\s*(10|2)\b(?![.,]?\d)(?:${DEGREE})?)?`,
        'i',
      ),
    ) ??
    take(new RegExp(String.raw`\b(A|C)\s*(?:\/\s*(10|2)\b(?:${DEGREE})?|,?\s*(10|2)${DEGREE})`)) ??
    take(/\billuminant\s*(A|C)\b/i);
  const observer = take(
    new RegExp(String.raw`(?<!\bh\s*(?:ab)?\s*[:=]?\s*)(?<![\d.])(10|2)${DEGREE}(?:\s*observer)?`, 'i'),
  );
  const degrees = Number(light?.[2] ?? light?.[3] ?? observer?.[1]);
  const illuminant = light ? (illuminantId(light[1]!) ?? light[1]!) : null;
  const beside: SaidBeside = {
    ...(illuminant && { illuminant }),
    ...((degrees === 2 || degrees === 10) && { observer_deg: degrees }),
    ...(specular && { specular: specular[1] ? 'included' : 'excluded' }),
    ...(lrv && { lrv: Number(lrv[1]!.replace(',', '.')) }),
  };
  return { beside, rest: rest.replace(/[()[\]]/g, ' ').trim() };
}

const LABELS: readonly { readonly kind: NumberKind; readonly names: readonly string[] }[] = [
  { kind: 'lab', names: ['L', 'a', 'b'] },
  { kind: 'lch', names: ['L', 'C', 'h'] },
  { kind: 'xyz', names: ['X', 'Y', 'Z'] },
];

/** "L* 84.2 a* = 0.5; b*: 6.1": numbers by their names, in whatever order; CIELAB before L C h where both stand there. */
function labelledNumbers(text: string): { readonly kind: NumberKind; readonly numbers: readonly number[] } | null {
  const found = new Map<string, number>();
  const pattern = new RegExp(
    String.raw`(?<![A-Za-z])([LabChXYZ])(?:\s*\*)?(?:ab)?(?:\s*\*)?\s*[:=]?\s*(${NUMBER})`,
    'gi',
  );
  for (const [, name, number] of text.matchAll(pattern)) {
    const key = nameOf(name!);
    if (!found.has(key)) found.set(key, Number(number!.replace(/,$/, '').replace(',', '.')));
  }
  for (const { kind, names } of LABELS) {
    if (names.every((name) => found.has(name))) return { kind, numbers: names.map((name) => found.get(name)!) };
  }
  return null;
}

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

/** Numbers alone: "84.2, 0.5, 6.1", "84,2 0,5 6,1", "84,2; 0,5; 6,1". NaN for what is none. */
function bareNumbers(text: string): readonly number[] {
  const words = text.split(/\s*;\s*|\s+/).filter((word) => word !== '');
  const isSpaced = words.length > 1 && words.every((word) => !word.startsWith(',') && !word.endsWith(','));
  const parts = isSpaced ? words : text.replace(/[\s,;]+$/, '').split(/\s*,\s*|\s+/);
  return parts.map(numberOf);
}

const WHOLE_NUMBER = new RegExp(`^${NUMBER}$`, 'i');

const numberOf = (word: string): number => (WHOLE_NUMBER.test(word) ? Number(word.replace(',', '.')) : Number.NaN);
