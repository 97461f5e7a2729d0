import { finishComponent } from '../../engine/finish/component';
import { D65_AT_2, sameConditions } from '../../engine/finish/conditions';
import type { Conditions, GivenColor, Specular } from '../../engine/finish/given-color';
import { givenWords } from '../../engine/finish/given-words';
import { notationDoubtDe00 } from '../../engine/finish/notation-doubt';
import { specularDoubtDe00 } from '../../engine/finish/specular';
import type { FinishClass, Provenance } from '../../engine/finish/types';
import { failure, type Problem, type Result, success } from '../../engine/result';
import { illuminantId, readColorLine, type SaidBeside } from '../../io/color-line';
import { parseColorValue, type TypedColor } from '../../io/color-value';
import { givenComponents } from '../../model/given-components';
import type { Finish } from '../../model/project';
import { SHEEN_GU } from '../../model/sheens';
import { TYPE_IN } from '../words/drawer';
import { nameOfGiven } from './own-name';

export type OwnKind = 'lab' | 'lch' | 'xyz' | 'munsell' | 'hex' | 'lrv' | 'spectrum';
export type OwnSheen = 'flat' | 'satin' | 'gloss';
export type ScreenSpace = 'srgb' | 'display-p3';

/** A spectrum file that was opened, and what it holds. */
export interface OpenedSpectrum {
  readonly file: string;
  readonly read: Result<GivenColor & { kind: 'spectrum' }>;
}

/** What somebody typed about a finish that is not in the library. */
export interface OwnFinishEntry {
  readonly kind: OwnKind;
  readonly value: string;
  readonly name: string;
  readonly class: FinishClass;
  readonly sheen: OwnSheen;
  /** Gloss units at 60 degrees, as typed; where empty, by the sheen. */
  readonly gloss?: string;
  /** As chosen; where nobody chose, by the kind (see `provenanceOf`). */
  readonly provenance?: Provenance;
  /** Light and observer of numbers; where not set, what the text says, or D65 and 2 degrees. */
  readonly conditions?: Conditions;
  /** What the instrument did with the mirror-like reflection; where not set, what the text says. */
  readonly specular?: Specular | 'unsaid';
  /** Of a hex code. */
  readonly space?: ScreenSpace;
  /** The LRV printed beside the color, as typed. */
  readonly lrv?: string;
  readonly spectrum?: OpenedSpectrum;
  /** What the text that stands there now has filled in. */
  readonly filled?: Filled;
  /** Size of one piece, mm, where the finish comes in tiles. */
  readonly piece_mm?: Finish['piece_mm'];
}

/** Fields that a pasted line fills in. */
type LineFields = Pick<OwnFinishEntry, 'conditions' | 'specular' | 'lrv' | 'space'>;

interface Filled {
  readonly set: LineFields;
  readonly before: LineFields;
}

/** Kinds that hold for a light and an observer. */
export const NUMBER_KINDS = ['lab', 'lch', 'xyz'] as const;

export const isNumbers = (kind: OwnKind): kind is (typeof NUMBER_KINDS)[number] =>
  (NUMBER_KINDS as readonly OwnKind[]).includes(kind);

/** Kinds that an instrument gives, which counts the mirror-like reflection or traps it. */
export const isMeasured = (kind: OwnKind): boolean => isNumbers(kind) || kind === 'spectrum';

/** Gloss units at 60 degrees that the words stand for. */
export const GLOSS_GU: { readonly [S in OwnSheen]: number } = {
  flat: SHEEN_GU.flat,
  satin: SHEEN_GU.satin,
  gloss: SHEEN_GU.gloss,
};

/** The sheen word whose level lies nearest, on a scale where doubling counts as one step. */
export function sheenNear(glossGu: number): OwnSheen {
  const away = (sheen: OwnSheen) => Math.abs(Math.log((glossGu + 1) / (GLOSS_GU[sheen] + 1)));
  return (Object.keys(GLOSS_GU) as OwnSheen[]).reduce((best, sheen) => (away(sheen) < away(best) ? sheen : best));
}

/** How the color is known: as chosen, except that hex codes are screen colors and an LRV with a word is judged by eye. */
export function provenanceOf({ kind, provenance }: OwnFinishEntry): Provenance {
  if (kind === 'hex') return 'screen';
  if (kind === 'lrv') return 'by-eye';
  return provenance ?? (kind === 'spectrum' ? 'measured' : 'declared');
}

/**
 * The entry with another text. A line that says by itself what it is, as pasted from a data sheet, sets the kind, and what it
 * says of light, observer, mirror reflection and LRV goes into their fields. What the text before had filled in goes with it.
 */
export function withValue(entry: OwnFinishEntry, value: string): OwnFinishEntry {
  const bare = withoutFilled(entry);
  const typed = parseColorValue(value);
  const kind = typed.ok ? kindOf(typed.value.color) : null;
  // Three digits are a hex code, too, but may be the beginning of something else.
  const isClear = kind !== null && (kind !== 'hex' || /^\s*(#|hex|p3)/i.test(value));
  const line = readColorLine(value);
  const { illuminant, observer_deg, specular, lrv }: SaidBeside = line.ok ? line.value.beside : {};
  const before = bare.conditions ?? D65_AT_2;
  const conditions = {
    illuminant: illuminant && illuminantId(illuminant) ? illuminant : before.illuminant,
    observer_deg: observer_deg ?? before.observer_deg,
  };
  const isP3 = kind === 'hex' && /^\s*p3/i.test(value);
  const set: LineFields = {
    ...(!sameConditions(conditions, before) && { conditions }),
    ...(specular && { specular }),
    ...(isP3 && { space: 'display-p3' as const }),
    ...(lrv !== undefined && isClear && kind !== 'lrv' && { lrv: String(lrv) }),
  };
  const isFilled = Object.keys(set).length > 0;
  return {
    ...bare,
    value,
    ...(isClear && { kind }),
    ...set,
    ...(isFilled && { filled: { set, before: lineFields(bare) } }),
  };
}

/** The entry with another kind of color. A spectrum takes nothing from a line that was pasted before. */
export function withKind(entry: OwnFinishEntry, kind: OwnKind): OwnFinishEntry {
  if (kind === 'spectrum') return { ...withoutFilled(entry), kind };
  // Back from a spectrum, the text counts again, but not against what was set meanwhile.
  return entry.kind === 'spectrum' ? { ...withValue(entry, entry.value), ...entry, kind } : { ...entry, kind };
}

/** Without what the text has filled in, except where that was changed by hand. */
function withoutFilled({ filled, ...entry }: OwnFinishEntry): OwnFinishEntry {
  if (!filled) return entry;
  let bare: OwnFinishEntry = entry;
  for (const field of LINE_FIELDS) {
    if (filled.set[field] === undefined || bare[field] !== filled.set[field]) continue;
    const { [field]: _, ...rest } = bare;
    bare = { ...rest, ...(filled.before[field] !== undefined && { [field]: filled.before[field] }) } as OwnFinishEntry;
  }
  return bare;
}

const lineFields = (entry: OwnFinishEntry): LineFields =>
  Object.fromEntries(LINE_FIELDS.flatMap((field) => (entry[field] === undefined ? [] : [[field, entry[field]]])));

const LINE_FIELDS = ['conditions', 'specular', 'lrv', 'space'] as const;

const kindOf = (color: GivenColor): OwnKind => color.kind;

/** A finish of one plain color from what was typed, or what is wrong with it. Notices tell how it was read. */
export function ownFinish(entry: OwnFinishEntry, library: readonly Finish[]): Result<Finish> {
  const typed = readEntry(entry);
  if (!typed.ok) return failure(inFormWords(entry, typed.problem));
  const printed = printedLrv(entry);
  if (!printed.ok) return printed;
  const gloss = glossOf(entry);
  if (!gloss.ok) return gloss;
  const { color } = typed.value;
  const lrv = printed.value ?? typed.value.lrv;
  const id = freeId(library);
  return success(
    {
      id,
      label: `${entry.name.trim() || nameOfGiven(color, entry.spectrum?.file)}, ${id}`,
      class: entry.class,
      gloss_gu: gloss.value,
      components: [{ role: 'base', share: 1, color, ...(lrv !== undefined && { lrv }) }],
      pattern: { kind: 'plain' },
      variation: 'V0',
      ...(entry.piece_mm && { piece_mm: entry.piece_mm }),
      provenance: provenanceOf({ ...entry, kind: color.kind }),
    },
    typed.notices,
  );
}

/** What one should know of a finish of one color before it is used, beyond its numbers. */
export interface OwnDoubts {
  /** The color as it was given, where it was not given for D65, 2 degrees. */
  readonly given: string | null;
  readonly notices: readonly Problem[];
  /** Root mean square CIEDE2000 by which a Munsell notation is off because it is rounded; 0 for the rest. */
  readonly roundingDe00: number;
  /** CIEDE2000 by which it is off if the mirror-like reflection was excluded; 0 where that is said or no question. */
  readonly specularDe00: number;
}

export function ownDoubts(finish: Finish): OwnDoubts {
  const [component] = givenComponents(finish);
  const made = finishComponent(component!);
  const { color } = component!;
  const isInstrument = color.kind === 'spectrum' || 'illuminant' in color;
  const doubt = made.ok && isInstrument ? specularDoubtDe00(made.value, finish.class, finish.gloss_gu) : 0;
  const isElsewhere = 'illuminant' in color && !sameConditions(color, D65_AT_2);
  const isTranslated =
    isElsewhere || color.kind === 'munsell' || (color.kind === 'hex' && color.space === 'display-p3');
  return {
    given: isTranslated ? givenWords(color) : null,
    notices: (made.ok && made.notices) || [],
    roundingDe00: notationDoubtDe00(color),
    specularDe00: doubt ?? 0,
  };
}

function readEntry(entry: OwnFinishEntry): Result<TypedColor> {
  const read = entry.kind === 'spectrum' ? readOpened(entry) : parseColorValue(withPrefix(entry));
  if (!read.ok) return read;
  const { color } = read.value;
  const isNumberColor = 'illuminant' in color;
  if (!isNumberColor && color.kind !== 'spectrum') return read;
  const { specular: said, ...rest } = color;
  const specular = entry.specular ?? said ?? 'unsaid';
  const set = {
    ...rest,
    ...(isNumberColor && entry.conditions),
    ...(specular !== 'unsaid' && { specular }),
  };
  return success({ ...read.value, color: set as GivenColor }, read.notices);
}

function readOpened({ spectrum }: OwnFinishEntry): Result<TypedColor> {
  const read = spectrum?.read;
  if (!read) return failure({ code: 'no-spectrum', text: TYPE_IN.noSpectrum, remedy: TYPE_IN.openSpectrum });
  return read.ok ? success({ color: read.value, provenance: 'measured' }, read.notices) : read;
}

function printedLrv({ kind, lrv = '' }: OwnFinishEntry): Result<number | undefined> {
  const text = lrv.trim();
  if (text === '' || kind === 'lrv') return success(undefined);
  const number = numberTo100(text.replace(/\s*%$/, ''));
  if (number !== null) return success(number);
  return failure({ code: 'lrv-not-understood', text: TYPE_IN.lrvWrong(text), remedy: TYPE_IN.lrvRemedy });
}

function glossOf({ gloss = '', sheen }: OwnFinishEntry): Result<number> {
  const text = gloss.trim();
  const number = text === '' ? GLOSS_GU[sheen] : numberTo100(text.replace(/\s*GU$/i, ''));
  if (number !== null) return success(number);
  return failure({ code: 'gloss-not-understood', text: TYPE_IN.glossWrong(text), remedy: TYPE_IN.glossRemedy });
}

/** The entry with a gloss as typed; the sheen follows the number. */
export function withGloss(entry: OwnFinishEntry, gloss: string): OwnFinishEntry {
  const read = glossOf({ ...entry, gloss });
  return { ...entry, gloss, ...(gloss.trim() !== '' && read.ok && { sheen: sheenNear(read.value) }) };
}

function numberTo100(text: string): number | null {
  const number = /^\d+([.,]\d+)?$/.test(text) ? Number(text.replace(',', '.')) : Number.NaN;
  return number >= 0 && number <= 100 ? number : null;
}

/** The kind is chosen apart, so the numbers alone are enough; a value typed with its prefix is left as it is. */
function withPrefix({ kind, space, value }: OwnFinishEntry): string {
  const text = value.trim();
  if (HAS_PREFIX.test(text)) return text;
  return `${kind === 'hex' && space === 'display-p3' ? 'p3' : kind}:${text}`;
}

const HAS_PREFIX = /^(lab|lch|xyz|munsell|lrv|hex|p3)\s*(\([^)]*\)\s*)?:/i;

/** The problem in terms of the form: without the prefix that stands for the kind, without the path of a field. */
function inFormWords({ kind, value }: OwnFinishEntry, problem: Problem): Problem {
  const bare = (text: string) =>
    text
      .replace(
        /^color\.(\w+)\[(\d)\]/,
        (_, field: string, i: string) => TYPE_IN.numberNames[field]?.[Number(i)] ?? field,
      )
      .replace(/^color\.lrv/, 'LRV')
      .replaceAll(HAS_PREFIX.test(value) ? '\0' : /\b(?:lab|lch|xyz|munsell|lrv|hex|p3):/g, '');
  const remedy = problem.code === 'not-a-color' ? TYPE_IN.remedies[kind] : bare(problem.remedy);
  return { ...problem, text: bare(problem.text), remedy };
}

/** Typed in for this project; a library may call its own finishes so, too. */
export const isOwn = ({ id, origin }: Finish): boolean => id.startsWith('OWN-') && !origin;

/** An id for a finish of one's own that the library does not have yet. */
export function freeId(library: readonly Finish[]): string {
  const taken = new Set(library.map((finish) => finish.id));
  for (let n = 1; ; n++) {
    const id = `OWN-${String(n).padStart(2, '0')}`;
    if (!taken.has(id)) return id;
  }
}
