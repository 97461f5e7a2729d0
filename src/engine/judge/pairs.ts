import { differenceCiede2000 } from '../color/difference';
import type { Lab } from '../color/types';
import type { Basis, PairVerdict } from './assessment';
import { isWithheld } from './cannot-tell';
import { MINOR_SHARE } from './component-record';
import type { InstalledReading, JudgedSurface, JudgeInput } from './input';
import { areApart } from './meets';
import { judgePair, PAIR, type PairJudgment } from './pair';
import { withoutTint } from './place-tint';
import { isNearWhite, luminanceOf, type SampleColor, sampleColor } from './sample-color';
import { atMost } from './severity';
import { mainReading, meanWeights, viewWeights } from './view-weights';

type InstalledBasis = 'raw' | 'mixOff' | 'tintOff';

/** A component on its surface, with what it reads in place. */
export interface PlacedColor {
  readonly surface: JudgedSurface;
  readonly color: SampleColor;
  /**
   * Installed reading as it is, with the mix of lights in its place taken off, and with the whole tint of its place taken
   * off; null before the light is known.
   */
  readonly installed: { readonly [R in InstalledBasis]: Lab<'D65-2'> } | null;
}

export interface JudgedPair {
  readonly a: PlacedColor;
  readonly b: PlacedColor;
  readonly basis: Basis;
  readonly judgment: PairJudgment;
  /** The verdict to show: the judgment's own, or `cannot-tell`. */
  readonly verdict: PairVerdict;
}

export interface InstalledPair {
  readonly a: PlacedColor;
  readonly b: PlacedColor;
  readonly raw: PairJudgment;
  readonly mixOff: PairJudgment;
  readonly tintOff: PairJudgment;
}

/** Every component of every surface. Equal components share one record, so its Munsell look-up happens once. */
export function placedColors(input: JudgeInput): PlacedColor[] {
  const known = new Map<string, SampleColor>();
  return input.surfaces.flatMap((surface) => {
    const reading = mainReading(surface);
    return surface.finish.components.map((_, i) => {
      const fresh = sampleColor(surface.surface, surface.finish, i);
      const identity = `${fresh.key}@${fresh.share}`;
      const color = known.get(identity) ?? fresh;
      known.set(identity, color);
      return placedAs(surface, color, reading && { reading, raw: reading.components[i] });
    });
  });
}

/** A component on its surface, read as `raw` in a place; null before the light is known. */
export function placedAs(
  surface: JudgedSurface,
  color: SampleColor,
  there: { readonly reading: InstalledReading; readonly raw: Lab<'D65-2'> | undefined } | null,
): PlacedColor {
  if (!there?.raw) return { surface, color, installed: null };
  const { raw, reading } = there;
  const mixOff = withoutTint(raw, reading.lightWhite);
  return { surface, color, installed: { raw, mixOff, tintOff: withoutTint(raw, reading.placeWhite) } };
}

/** Components that are more than grout lines or hair veins: only these raise warnings. */
export const isMajor = (placed: PlacedColor): boolean => placed.color.share >= MINOR_SHARE;

/** Same two components, same key, whichever surfaces they meet on. */
export function pairKey(a: SampleColor, b: SampleColor): string {
  return a.key < b.key ? `${a.key}|${b.key}` : `${b.key}|${a.key}`;
}

/** An anchor fills at least this share of the view. Our judgment. */
const ANCHOR_VIEW_SHARE = 0.05;

/** Y (0-100) of the lightest near-white that covers a twentieth of the view; ceilings hang in other light. Null if none. */
export function anchorY(input: JudgeInput, placed: readonly PlacedColor[]): number | null {
  const weights = meanWeights(viewWeights(input));
  let lightest: number | null = null;
  for (const p of placed) {
    if (p.surface.surface === 'ceiling') continue;
    const weight = weights[input.surfaces.indexOf(p.surface)]! * p.color.share;
    if (weight < ANCHOR_VIEW_SHARE || !isNearWhite(p.color)) continue;
    lightest = Math.max(lightest ?? 0, luminanceOf(p.color));
  }
  return lightest;
}

/** Every two components on surfaces of different finishes, once, in the order of the input. */
function* pairings(placed: readonly PlacedColor[]): Generator<readonly [PlacedColor, PlacedColor]> {
  for (let i = 0; i < placed.length; i++) {
    for (let j = i + 1; j < placed.length; j++) {
      const a = placed[i]!;
      const b = placed[j]!;
      // One grout between two tiles is not a pair.
      if (a.surface.surface === b.surface.surface || a.color.key === b.color.key) continue;
      if (a.color.finish !== b.color.finish) yield [a, b];
    }
  }
}

/** Two whites far apart in lightness and otherwise unrelated: a step that people mean or do not, but always see. */
const isWhiteStep = (judgment: PairJudgment, a: SampleColor, b: SampleColor): boolean =>
  judgment.numbers['d_l']! >= PAIR.clearStep && isNearWhite(a) && isNearWhite(b);

/** Sample basis: all pairs that say something, and whites a clear lightness step apart. Equal pairs of components are judged once. */
export function samplePairs(placed: readonly PlacedColor[], anchor: number | null): JudgedPair[] {
  return allSamplePairs(placed, anchor).filter(
    ({ judgment, a, b }) => judgment.verdict !== 'none' || isWhiteStep(judgment, a.color, b.color),
  );
}

/** The same with those that say nothing. */
export function allSamplePairs(placed: readonly PlacedColor[], anchor: number | null): JudgedPair[] {
  const judged = new Map<string, PairJudgment>();
  const pairs: JudgedPair[] = [];
  for (const [a, b] of pairings(placed)) {
    // Keyed with the order, since the judgment names a side.
    const key = `${a.color.key}|${b.color.key}`;
    const sideA = { color: a.color, lab: a.color.lab };
    const sideB = { color: b.color, lab: b.color.lab };
    let judgment = judged.get(key);
    if (!judgment) {
      judgment = judgePair(sideA, sideB, { anchorY: anchor });
      judged.set(key, judgment);
    }
    const verdict = isWithheld(judgment, sideA, sideB) ? 'cannot-tell' : judgment.verdict;
    pairs.push({ a, b, basis: 'sample', judgment: inItsPlace(judgment, a, b), verdict });
  }
  return pairs;
}

/** Below this share a component is a figure on a ground; below the second its undertone is hardly seen. */
const FIGURE_SHARE = 0.25;
const FAINT_FIGURE_SHARE = 0.15;

/**
 * A ceiling hangs in other light than what it is held against, and what is never seen together is beside nothing: notes at
 * most. Grout is seen as lines, which nobody holds against a wall, and trim is often whiter than the rest on purpose (common
 * practice, no source): notes, too. Trim that is itself the worse white is narrow, and what covers less than a quarter of
 * its surface is a figure on a ground: visible at most; the undertone of less than 15 % is a note. Our judgment.
 */
function inItsPlace(judgment: PairJudgment, a: PlacedColor, b: PlacedColor): PairJudgment {
  if (!judgment.severity) return judgment;
  const sides = [a.surface.surface, b.surface.surface];
  const colors = [a.color, b.color];
  const better = judgment.faulty === null ? null : judgment.faulty === 'a' ? b : a;
  const isNote =
    sides.includes('ceiling') ||
    better?.surface.surface === 'frame' ||
    areApart({ a, b }) ||
    colors.some((c) => c.role === 'grout') ||
    (judgment.verdict === 'pulls-apart' && colors.some((c) => c.share < FAINT_FIGURE_SHARE));
  if (isNote) return { ...judgment, severity: 'note' };
  const isNarrow = sides.includes('frame') || colors.some((c) => c.share < FIGURE_SHARE);
  return isNarrow ? { ...judgment, severity: atMost('visible', judgment.severity) } : judgment;
}

/** Installed basis, each pair read as it is, with the mix of lights taken off, and with the tint of each place taken off. */
export function installedPairs(placed: readonly PlacedColor[]): InstalledPair[] {
  const pairs: InstalledPair[] = [];
  for (const [a, b] of pairings(placed)) {
    const pair = installedPair(a, b);
    const says = pair && [pair.raw, pair.mixOff, pair.tintOff].some(({ verdict }) => verdict !== 'none');
    // A match by day may part in this light.
    const matches = differenceCiede2000(a.color.lab, b.color.lab) <= PAIR.acceptable;
    if (pair && (says || matches)) pairs.push(pair);
  }
  return pairs;
}

/** Two components judged in their places; null before the light is known. */
export function installedPair(a: PlacedColor, b: PlacedColor): InstalledPair | null {
  if (!a.installed || !b.installed) return null;
  const here = a.installed;
  const there = b.installed;
  const read = (which: InstalledBasis) => {
    const judgment = judgePair(
      { color: a.color, lab: here[which] },
      { color: b.color, lab: there[which] },
      { anchorY: null },
    );
    return inItsPlace(judgment, a, b);
  };
  const raw = read('raw');
  const isMixed = here.mixOff !== here.raw || there.mixOff !== there.raw;
  const mixOff = isMixed ? read('mixOff') : raw;
  return { a, b, raw, mixOff, tintOff: read('tintOff') };
}

/** Same two components on the same two surfaces, same key. */
export const placedPairKey = ({ a, b }: InstalledPair): string =>
  [a, b].map((p) => `${p.surface.surface}:${p.color.key}`).join('|');
