import type { Problem } from '../engine/result';
import { checkGivenColor } from './check-finish';
import { type Bounds, checkNumber, checkText } from './check-number';
import type { CopiedLook, LookSurface } from './look';

/** No share of nothing, which would be no color of the surface. */
const SHARE: Bounds = [0.001, 1, ''];
const SIZE_MM: Bounds = [0.1, 5000, 'mm'];
/** The pattern's weights have four channels. */
const MOST_COLORS = 4;

/** What is wrong with the values of a look. `path` is where it stands, e.g. looks[0]; '' for a file of its own. */
export function checkLook(look: CopiedLook, path: string): readonly Problem[] {
  const at = (field: string) => (path === '' ? field : `${path}.${field}`);
  const problems: Problem[] = [...checkText(look.id, at('id')), ...checkText(look.name, at('name'))];
  if (look.surfaces.length === 0) {
    problems.push({
      code: 'empty-list',
      text: `${at('surfaces')} is empty.`,
      at: { path: at('surfaces') },
      remedy: 'Give at least one surface with a color.',
    });
  }
  const first = new Map<string, number>();
  look.surfaces.forEach((one, i) => {
    const here = at(`surfaces[${i}]`);
    const before = first.get(one.surface);
    if (before === undefined) first.set(one.surface, i);
    else {
      problems.push({
        code: 'duplicate-surface',
        text: `${here}.surface: "${one.surface}" stands already at ${at(`surfaces[${before}]`)}.`,
        at: { path: `${here}.surface` },
        remedy: 'Put its colors together.',
      });
    }
    problems.push(...checkLookSurface(one, here));
  });
  return problems;
}

function checkLookSurface(one: LookSurface, path: string): readonly Problem[] {
  const problems: Problem[] = [];
  const count = one.colors.length;
  if (count < 1 || count > MOST_COLORS) {
    problems.push({
      code: 'component-count',
      text: `${path}.colors: the ${one.surface} has ${count} colors; it takes one to ${MOST_COLORS}.`,
      at: { path: `${path}.colors` },
      remedy: count ? 'Merge the colors that are closest to each other.' : 'Give it a color, or leave the surface out.',
    });
  }
  one.colors.forEach((color, i) => {
    const here = `${path}.colors[${i}]`;
    problems.push(
      ...checkNumber(color.share, SHARE, `${here}.share`),
      ...checkGivenColor(color.color, `${here}.color`),
    );
  });
  if (one.gloss_gu !== undefined)
    problems.push(...checkNumber(one.gloss_gu, [0, 1000, 'gloss units'], `${path}.gloss_gu`));
  if (one.pattern_mm !== undefined) problems.push(...checkNumber(one.pattern_mm, SIZE_MM, `${path}.pattern_mm`));
  return problems;
}
