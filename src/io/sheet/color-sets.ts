import { meaningOfHeading } from './field-of-heading';
import { CONDITIONS_BEST_FIRST, conditionIn, type MeasurementCondition } from './measurement-condition';
import { conditionsInWords } from './said-conditions';
import type { Field, SheetConditions } from './types';

/** Colors that hold for one light, one observer and one geometry only. */
const MEASURED = /^(?:lab|lch|xyz|xyy)_|^nm:/;

/** Whether a field holds for the conditions that its heading states. */
export const isMeasured = (field: Field): boolean => MEASURED.test(field);

const WHOLE: readonly (readonly Field[])[] = [
  ['lab_l', 'lab_a', 'lab_b'],
  ['lch_l', 'lch_c', 'lch_h'],
  ['lab_l', 'lch_c', 'lch_h'],
  ['xyz_x', 'xyz_y', 'xyz_z'],
  ['xyy_x', 'xyy_y', 'xyy_lum'],
];
const LEAST_BANDS = 5;

/** What a heading states, as "L* SCE (D65/10°)". */
interface Stated extends SheetConditions {
  readonly condition?: MeasurementCondition;
}

/** Columns of a color whose headings state the same. */
interface ColorSet {
  readonly stated: Stated;
  readonly columns: { readonly at: number; readonly field: Field }[];
}

/** Which of several sets of color columns counts. */
export interface ChosenSet {
  /** Columns of the others. */
  readonly left: readonly number[];
  /** 'D65/10° SCI was taken, ...'; null where there is one set only. */
  readonly words: string | null;
}

/**
 * Where a table gives the color under several conditions that its headings name, the set of columns that counts: whole ones first, then
 * mirror reflection included before not said before excluded, then by light (D65 and 10°, D65 and 2°, what the rows say, D50 and 2°, D50
 * and 10°, others), then by measurement condition, then the first. Columns of the others are left out where they state another thing or
 * give the same field.
 */
export function chosenSet(headings: readonly string[], letters: ReadonlyMap<number, Field>): ChosenSet {
  const sets = new Map<string, ColorSet>();
  let hasLightColumn = false;
  for (const [at, heading] of headings.entries()) {
    const field = letters.get(at) ?? meaningOfHeading(heading)?.field;
    if (field === 'illuminant') hasLightColumn = true;
    if (!field || !isMeasured(field)) continue;
    const stated = statedIn(heading);
    const key = JSON.stringify(stated);
    const set = sets.get(key) ?? { stated, columns: [] };
    set.columns.push({ at, field });
    sets.set(key, set);
  }
  if (sets.size < 2) return { left: [], words: null };
  const ordered = [...sets.values()].sort((a, b) => compare(rankOf(a, hasLightColumn), rankOf(b, hasLightColumn)));
  const [best, ...others] = ordered as [ColorSet, ...ColorSet[]];
  const taken = new Set(best.columns.map(({ field }) => field));
  const leftOf = (set: ColorSet) =>
    set.columns.filter(({ field }) => taken.has(field) || isOther(set.stated, best.stated)).map(({ at }) => at);
  const lost = others.filter((set) => leftOf(set).length > 0);
  if (lost.length === 0) return { left: [], words: null };
  const names = lost.map(({ stated }) => labelOf(stated)).join(', ');
  return {
    left: lost.flatMap(leftOf),
    words: `${labelOf(best.stated)} was taken, ${names} left out. ${reasonOf(ordered)}`,
  };
}

function statedIn(heading: string): Stated {
  const condition = conditionIn(heading);
  return { ...conditionsInWords([heading]), ...(condition && { condition }) };
}

const KEYS = ['illuminant', 'observer_deg', 'specular', 'condition'] as const;

const isOther = (a: Stated, b: Stated): boolean =>
  KEYS.some((key) => a[key] !== undefined && b[key] !== undefined && a[key] !== b[key]);

function isWhole({ columns }: ColorSet): boolean {
  const fields = new Set(columns.map(({ field }) => field));
  const bands = [...fields].filter((field) => field.startsWith('nm:')).length;
  return bands >= LEAST_BANDS || WHOLE.some((set) => set.every((field) => fields.has(field)));
}

/** Less is better, place by place. */
function rankOf(set: ColorSet, hasLightColumn: boolean): readonly number[] {
  const { illuminant, observer_deg, specular, condition } = set.stated;
  return [
    isWhole(set) ? 0 : 1,
    specular === 'included' ? 0 : specular ? 2 : 1,
    lightRank(illuminant, observer_deg, hasLightColumn),
    condition ? CONDITIONS_BEST_FIRST.indexOf(condition) : 1,
  ];
}

/** Paints and other building products are given for D65 and 10°, graphic arts for D50 and 2° (common practice). */
const LIGHTS_BEST_FIRST = ['D65/10', 'D65/2', 'D65/', '', 'D50/2', 'D50/10', 'D50/'];

function lightRank(illuminant = '', observer_deg: number | undefined, hasLightColumn: boolean): number {
  if (illuminant === '' && !hasLightColumn) return LIGHTS_BEST_FIRST.length + 1;
  const rank = LIGHTS_BEST_FIRST.indexOf(illuminant === '' ? '' : `${illuminant}/${observer_deg ?? ''}`);
  return rank < 0 ? LIGHTS_BEST_FIRST.length : rank;
}

function compare(a: readonly number[], b: readonly number[]): number {
  for (const [i, one] of a.entries()) if (one !== b[i]) return one - b[i]!;
  return 0;
}

function labelOf({ illuminant, observer_deg, specular, condition }: Stated): string {
  const degrees = observer_deg ? `${observer_deg}°` : null;
  const light = illuminant && degrees ? `${illuminant}/${degrees}` : (illuminant ?? degrees);
  const mirror = specular ? (specular === 'included' ? 'SCI' : 'SCE') : null;
  return [light, mirror, condition].filter((word) => word).join(' ') || 'the set that says nothing';
}

function reasonOf(sets: readonly ColorSet[]): string {
  const differ = (key: (typeof KEYS)[number]) => new Set(sets.map(({ stated }) => stated[key])).size > 1;
  return [
    ...(differ('specular') ? ['SCI goes before SCE: in a room all reflected light counts.'] : []),
    ...(differ('illuminant') || differ('observer_deg')
      ? ['D65 and 10° goes first, then D65 and 2°, then D50 and 2°.']
      : []),
    ...(differ('condition') ? ['M1 goes first: its light is like daylight, ultraviolet included.'] : []),
  ].join(' ');
}
