import { differenceCiede2000 } from '../color/difference';
import { meanLab, type WeighedLab } from '../color/mixed-lab';
import type { LaidFinish } from '../finish/types';
import type { SurfaceId } from '../surface';
import { MINOR_SHARE } from './component-record';
import type { JudgedSurface } from './input';
import { isLarge } from './large-surfaces';
import { areApart, type Meets, meetsOf, nearest } from './meets';
import type { PlacedColor } from './pairs';
import { isWoodOrPrint } from './sample-color';
import { inDecisionOrder } from './surface-words';

/**
 * When a pattern is busy. All our judgment: the trade says only that one pattern leads and others are quieter, and that two
 * busy ones are a mistake (common practice, no source).
 */
export const BUSY = {
  /**
   * Root mean square by which the colors of a surface stray from its mean, by their shares, CIEDE2000. Of invented ones a
   * speckled granite has 12, a terrazzo of large flecks 11, a marble with soft veins 5, small white tile with gray joints 5.
   */
  spread: 8,
  /** Finer figures read as one even tone from where one stands, mm: 4 are 9 minutes of arc from 1.5 m. */
  figureMm: 4,
  /** From this many times the size on two figures are of different kinds to the eye: large veins over fine specks. */
  sizesApart: 10,
} as const;

/** How far colors stray from their mean (mixed as light), root mean square by shares, CIEDE2000. Lines are left out. */
function colorSpread(all: readonly WeighedLab[]): number {
  const colors = all.filter(({ share }) => share >= MINOR_SHARE);
  const total = colors.reduce((sum, { share }) => sum + share, 0);
  const mean = meanLab(colors);
  return Math.sqrt(
    colors.reduce((sum, { lab, share }) => sum + (share / total) * differenceCiede2000(lab, mean) ** 2, 0),
  );
}

/**
 * Whether a finish with these colors has a busy pattern. Wood and its prints never have: their grain is a quiet ground for
 * others (common practice, no source).
 */
export const isBusy = (finish: LaidFinish, colors: readonly WeighedLab[]): boolean =>
  (finish.figureMm ?? 0) >= BUSY.figureMm &&
  finish.class !== 'metal' &&
  !isWoodOrPrint(finish) &&
  colorSpread(colors) >= BUSY.spread;

/** Two finishes whose figures are near enough in size to compete. */
export const areSizesAlike = (a: LaidFinish, b: LaidFinish): boolean =>
  Math.max(a.figureMm!, b.figureMm!) < BUSY.sizesApart * Math.min(a.figureMm!, b.figureMm!);

/** A surface with a busy pattern. */
export interface BusySurface {
  readonly judged: JudgedSurface;
  readonly spread: number;
}

/** Busy patterns of several finishes that meet. */
export interface BusyGroup {
  readonly members: readonly BusySurface[];
  readonly surfaces: readonly SurfaceId[];
  /** How the two nearest of them meet. */
  readonly meets: Exclude<Meets, 'apart'>;
}

/** Same surfaces, same key. */
export const groupKey = ({ surfaces }: Pick<BusyGroup, 'surfaces'>): string => surfaces.join('|');

/** Large surfaces with a busy pattern. */
function busySurfaces(placed: readonly PlacedColor[]): BusySurface[] {
  const bySurface = new Map<JudgedSurface, PlacedColor[]>();
  for (const one of placed) {
    if (!isLarge(one.surface.surface)) continue;
    bySurface.set(one.surface, [...(bySurface.get(one.surface) ?? []), one]);
  }
  return [...bySurface].flatMap(([judged, own]) => {
    const colors = own.map(({ color }) => color);
    return isBusy(judged.finish, colors) ? [{ judged, spread: colorSpread(colors) }] : [];
  });
}

/** The busy surfaces in groups that compete: of different finishes, seen together, of figures alike in size. */
export function busyGroups(placed: readonly PlacedColor[]): BusyGroup[] {
  let groups: (readonly BusySurface[])[] = [];
  for (const one of busySurfaces(placed)) {
    const met = groups.filter((group) => group.some((other) => compete(one, other)));
    groups = [...groups.filter((group) => !met.includes(group)), [...met.flat(), one]];
  }
  return groups.flatMap((group) => {
    const members = group.filter((one) => group.some((other) => compete(one, other)));
    if (members.length < 2) return [];
    const meets = nearest(
      members.flatMap((one) =>
        members.flatMap((other) => (compete(one, other) ? [meetsOf(one.judged, other.judged)] : [])),
      ),
    );
    const surfaces = inDecisionOrder(members.map(({ judged }) => judged.surface));
    return [{ members, surfaces, meets: meets === 'adjacent' ? ('adjacent' as const) : ('together' as const) }];
  });
}

const compete = ({ judged: a }: BusySurface, { judged: b }: BusySurface): boolean =>
  a.finish.id !== b.finish.id &&
  !areApart({ a: { surface: a }, b: { surface: b } }) &&
  areSizesAlike(a.finish, b.finish);
