import type { GivenColor } from '../engine/finish/given-color';
import type { FinishClass } from '../engine/finish/types';
import type { FinishPattern } from '../engine/pattern/types';
import type { Problem } from '../engine/result';
import { spectrumProblem } from '../engine/spectrum/resample';
import { type Bounds, checkNumber, checkText } from './check-number';
import { checkOrigin, checkTags } from './check-tags';
import { isEmpty } from './empty-surface';
import { checkPrice } from './price';
import type { Finish, Supply } from './project';

/** Sizes of pieces and patterns, mm: from a fine fleck to a slab. */
const SIZE_MM: Bounds = [0.1, 5000, 'mm'];
/** Slabs as they are sold, mm: from a narrow natural one to the largest sintered ones (common practice, no source). */
const SLAB_MM: Bounds = [500, 4000, 'mm'];
/** From a coating or a foil to a block of stone (our judgment). */
export const THICKNESS_MM: Bounds = [0.1, 200, 'mm'];
/** Longer than ten years is a slip of the pen. */
const LEAD_WEEKS: Bounds = [0, 520, 'weeks'];
/** Nothing for a kitchen is sold in packs of more (our judgment); a pack of 0 says nothing of what is in it. */
const PACK: Bounds = [0, 1_000_000, ''];
const PERCENT: Bounds = [0, 100, ''];
const SHARE: Bounds = [0, 1, ''];
/** More than this and a color says nothing. */
const UNCERTAINTY: Bounds = [0, 30, '(CIEDE2000)'];

/** The pattern's weights have four channels. */
const MOST_COMPONENTS = 4;

/** Shares may miss 1 by this much (rounding in a table) and are then scaled; more is a mistake. */
export const SHARE_TOLERANCE = 0.005;

/** Below this a sum of shares counts as exactly 1. */
export const SHARE_EXACT = 1e-9;

/** Sum of the components' area shares. */
export const shareSum = (finish: Finish): number => finish.components.reduce((sum, one) => sum + one.share, 0);

/**
 * What a perfect mirror reads at 60 degrees: 100 units are black glass of index 1.567, which mirrors 0.1001 there (ISO 2813), so that all
 * of the light is 999.
 */
const METAL_MOST_GU = 1000;

/**
 * What other finishes may read, as 100 units are black glass of index 1.567 (ISO 2813): by Fresnel's law a smooth glaze of index 1.8 mirrors
 * 135 units at 60 degrees, and clear glass of index 1.6 with both its faces 190.
 */
const OTHERS_MOST_GU = 200;

/** Gloss units at 60 degrees that a finish of a class may have at most. */
export const mostGloss = (finishClass: FinishClass): number =>
  finishClass === 'metal' ? METAL_MOST_GU : OTHERS_MOST_GU;

const reservedId = (id: string, path: string): Problem => ({
  code: 'reserved-id',
  text: `${path}: "${id}" means that nothing is chosen yet.`,
  at: { path },
  remedy: 'Give the finish another id.',
});

/** What is wrong with the values of a finish. `path` is where it stands in the document, e.g. library[3]. */
export function checkFinish(finish: Finish, path: string): readonly Problem[] {
  const problems: Problem[] = [
    ...checkText(finish.id, `${path}.id`),
    ...(isEmpty({ finish: finish.id }) ? [reservedId(finish.id, `${path}.id`)] : []),
    ...checkText(finish.label, `${path}.label`),
    ...checkNumber(finish.gloss_gu, [0, mostGloss(finish.class), 'gloss units'], `${path}.gloss_gu`),
    ...checkPattern(finish.pattern, `${path}.pattern`),
    ...(finish.uncertainty_de00 === undefined
      ? []
      : checkNumber(finish.uncertainty_de00, UNCERTAINTY, `${path}.uncertainty_de00`)),
    ...(finish.thickness_mm === undefined
      ? []
      : checkNumber(finish.thickness_mm, THICKNESS_MM, `${path}.thickness_mm`)),
    ...checkSupply(finish.supply ?? {}, `${path}.supply`),
    ...(finish.supply?.price ? checkPrice(finish.supply.price, `${path}.supply.price`) : []),
    ...checkTags(finish.tags ?? [], `${path}.tags`),
    ...(finish.origin ? checkOrigin(finish.origin, `${path}.origin`) : []),
  ];
  finish.piece_mm?.forEach((size, i) => {
    problems.push(...checkNumber(size, [5, 5000, 'mm'], `${path}.piece_mm[${i}]`));
  });
  finish.slab_mm?.forEach((size, i) => {
    problems.push(...checkNumber(size, SLAB_MM, `${path}.slab_mm[${i}]`));
  });
  const count = finish.components.length;
  if (count < 1 || count > MOST_COMPONENTS) {
    problems.push({
      code: 'component-count',
      text: `${path}.components: ${finish.id || 'the finish'} has ${count} colors; one to ${MOST_COMPONENTS} can be shown.`,
      at: { path: `${path}.components` },
      remedy: count ? 'Merge the colors that are closest to each other.' : 'Give at least one color.',
    });
  }
  finish.components.forEach((one, i) => {
    const at = `${path}.components[${i}]`;
    problems.push(...checkNumber(one.share, SHARE, `${at}.share`), ...checkGivenColor(one.color, `${at}.color`));
    if (one.lrv !== undefined) problems.push(...checkNumber(one.lrv, PERCENT, `${at}.lrv`));
  });
  if (count && Math.abs(shareSum(finish) - 1) > SHARE_TOLERANCE) {
    problems.push({
      code: 'shares-not-one',
      text: `${path}.components: the area shares of ${finish.id} sum to ${shareSum(finish).toFixed(3)}, not 1.`,
      at: { path: `${path}.components` },
      remedy: 'Change the shares so that they sum to 1.',
    });
  }
  return problems;
}

const checkSupply = ({ pack, lead_time_weeks }: Supply, path: string): readonly Problem[] => [
  ...(pack === undefined ? [] : checkNumber(pack, PACK, `${path}.pack`)),
  ...(lead_time_weeks === undefined ? [] : checkNumber(lead_time_weeks, LEAD_WEEKS, `${path}.lead_time_weeks`)),
];

const LIGHTNESS: Bounds = [0, 100, '(CIELAB L*)'];
/** No surface has more chroma under any CIE light. */
const MOST_CHROMA = 200;

/** What is wrong with the numbers of a color, before any color science: whether a surface can have it is not asked. */
export function checkGivenColor(color: GivenColor, path: string): readonly Problem[] {
  switch (color.kind) {
    case 'lab':
      return [
        ...checkNumber(color.lab[0], LIGHTNESS, `${path}.lab[0]`),
        ...checkNumber(color.lab[1], [-MOST_CHROMA, MOST_CHROMA, '(CIELAB a*)'], `${path}.lab[1]`),
        ...checkNumber(color.lab[2], [-MOST_CHROMA, MOST_CHROMA, '(CIELAB b*)'], `${path}.lab[2]`),
        ...checkText(color.illuminant, `${path}.illuminant`),
      ];
    case 'lch':
      return [
        ...checkNumber(color.lch[0], LIGHTNESS, `${path}.lch[0]`),
        ...checkNumber(color.lch[1], [0, MOST_CHROMA, '(CIELAB C*)'], `${path}.lch[1]`),
        ...checkNumber(color.lch[2], [-360, 360, 'degrees'], `${path}.lch[2]`),
        ...checkText(color.illuminant, `${path}.illuminant`),
      ];
    case 'xyz':
      return [
        ...checkNumber(color.xyz[0], [0, 130, ''], `${path}.xyz[0]`),
        ...checkNumber(color.xyz[1], PERCENT, `${path}.xyz[1]`),
        ...checkNumber(color.xyz[2], [0, 130, ''], `${path}.xyz[2]`),
        ...checkText(color.illuminant, `${path}.illuminant`),
      ];
    case 'lrv':
      return [...checkNumber(color.lrv, PERCENT, `${path}.lrv`), ...checkText(color.hue, `${path}.hue`)];
    case 'spectrum':
      return checkSpectrum(color, path);
    case 'munsell':
      return checkText(color.munsell, `${path}.munsell`);
    case 'hex':
      if (/^#[0-9a-f]{6}$/i.test(color.hex)) return [];
      return [
        {
          code: 'bad-hex',
          text: `${path}.hex is "${color.hex}", not six hexadecimal digits after #.`,
          at: { path: `${path}.hex` },
          remedy: 'Write it like #a1b2c3.',
        },
      ];
  }
}

function checkSpectrum(color: GivenColor & { kind: 'spectrum' }, path: string): readonly Problem[] {
  const problem = spectrumProblem(color);
  if (!problem) return [];
  const place = problem.at?.path ? `${path}.${problem.at.path}` : path;
  return [{ ...problem, text: `${place}: ${problem.text}`, at: { path: place } }];
}

function checkPattern(pattern: FinishPattern, path: string): readonly Problem[] {
  switch (pattern.kind) {
    case 'plain':
    case 'brushed':
      return [];
    case 'veined':
      return [
        ...checkNumber(pattern.spacing_mm, [5, 5000, 'mm'], `${path}.spacing_mm`),
        ...checkNumber(pattern.direction_deg, [-180, 180, 'degrees'], `${path}.direction_deg`),
      ];
    case 'linear':
      return [
        ...checkNumber(pattern.size_mm, SIZE_MM, `${path}.size_mm`),
        ...checkNumber(pattern.direction_deg, [-180, 180, 'degrees'], `${path}.direction_deg`),
      ];
    case 'grain':
      return (pattern.board_mm ?? []).flatMap((size, i) =>
        checkNumber(size, [5, 5000, 'mm'], `${path}.board_mm[${i}]`),
      );
    default:
      return checkNumber(pattern.size_mm, SIZE_MM, `${path}.size_mm`);
  }
}
