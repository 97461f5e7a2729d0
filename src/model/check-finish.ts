import type { GivenColor } from '../engine/finish/given-color';
import type { FinishPattern } from '../engine/pattern/types';
import type { Problem } from '../engine/result';
import { type Bounds, checkNumber, checkText } from './check-number';
import type { Finish } from './project';

/** Sizes of pieces and patterns, mm: from a fine fleck to a slab. */
const SIZE_MM: Bounds = [0.1, 5000, 'mm'];
const PERCENT: Bounds = [0, 100, ''];
const SHARE: Bounds = [0, 1, ''];

/** The pattern's weights have four channels. */
const MOST_COMPONENTS = 4;

/** Shares may miss 1 by this much (rounding in a table) and are then scaled; more is a mistake. */
export const SHARE_TOLERANCE = 0.005;

/** Below this a sum of shares counts as exactly 1. */
export const SHARE_EXACT = 1e-9;

/** Sum of the components' area shares. */
export const shareSum = (finish: Finish): number => finish.components.reduce((sum, one) => sum + one.share, 0);

/** What is wrong with the values of a finish. `path` is where it stands in the document, e.g. library[3]. */
export function checkFinish(finish: Finish, path: string): readonly Problem[] {
  const problems: Problem[] = [
    ...checkText(finish.id, `${path}.id`),
    ...checkText(finish.label, `${path}.label`),
    ...checkNumber(finish.gloss_gu, [0, 100, 'gloss units'], `${path}.gloss_gu`),
    ...checkPattern(finish.pattern, `${path}.pattern`),
  ];
  finish.piece_mm?.forEach((size, i) => {
    problems.push(...checkNumber(size, [5, 5000, 'mm'], `${path}.piece_mm[${i}]`));
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

/** What is wrong with the numbers of a color, before any color science. */
export function checkGivenColor(color: GivenColor, path: string): readonly Problem[] {
  switch (color.kind) {
    case 'lab':
      return [
        ...checkNumber(color.lab[0], [0, 100, '(CIELAB L*)'], `${path}.lab[0]`),
        ...checkNumber(color.lab[1], [-128, 128, '(CIELAB a*)'], `${path}.lab[1]`),
        ...checkNumber(color.lab[2], [-128, 128, '(CIELAB b*)'], `${path}.lab[2]`),
      ];
    case 'lrv':
      return [...checkNumber(color.lrv, PERCENT, `${path}.lrv`), ...checkText(color.hue, `${path}.hue`)];
    case 'spectrum':
      return checkSpectrum(color, path);
    case 'munsell':
      return checkText(color.munsell, `${path}.munsell`);
    case 'lch':
    case 'xyz':
      return [];
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
  const problems = [
    ...checkNumber(color.start_nm, [300, 400, 'nm'], `${path}.start_nm`),
    ...checkNumber(color.step_nm, [1, 20, 'nm'], `${path}.step_nm`),
  ];
  const end_nm = color.start_nm + (color.reflectance.length - 1) * color.step_nm;
  if (!(end_nm >= 700)) {
    problems.push({
      code: 'spectrum-too-short',
      text: `${path}.reflectance ends at ${end_nm} nm.`,
      at: { path: `${path}.reflectance` },
      remedy: 'Give values from 400 to 700 nm at least.',
    });
  }
  const bad = color.reflectance.findIndex((value) => !(value >= 0 && value <= 1));
  if (bad >= 0) problems.push(...checkNumber(color.reflectance[bad]!, SHARE, `${path}.reflectance[${bad}]`));
  return problems;
}

function checkPattern(pattern: FinishPattern, path: string): readonly Problem[] {
  switch (pattern.kind) {
    case 'plain':
      return [];
    case 'veined':
      return [
        ...checkNumber(pattern.spacing_mm, [5, 5000, 'mm'], `${path}.spacing_mm`),
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
