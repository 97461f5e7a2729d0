import type { SurfaceId } from '../surface';

/** Where two surfaces meet: along an edge, in one view, or nowhere that people look. */
export type Meets = 'adjacent' | 'together' | 'apart';

/** The surfaces that one surface meets; those left out it is apart from. */
export type MeetsOthers = Readonly<Partial<Record<SurfaceId, Exclude<Meets, 'apart'>>>>;

interface Meeting {
  readonly surface: SurfaceId;
  /** Absent: nobody has looked, and all count as seen together. */
  readonly meets?: MeetsOthers;
}

/** Nobody sees the two at once. */
export const areApart = ({
  a,
  b,
}: {
  readonly a: { readonly surface: Meeting };
  readonly b: { readonly surface: Meeting };
}): boolean => meetsOf(a.surface, b.surface) === 'apart';

/** Ends the reason of a finding on two surfaces that are apart. */
export const APART_REASON = ' From no place people usually look are the two seen together, so it is a note only.';

const NEAREST: readonly Meets[] = ['adjacent', 'together', 'apart'];

/** Where two surfaces meet; the same from either side. */
export function meetsOf(a: Meeting, b: Meeting): Meets {
  const seenFrom = (one: Meeting, other: Meeting): Meets =>
    one.meets ? (one.meets[other.surface] ?? 'apart') : 'together';
  return nearest([seenFrom(a, b), seenFrom(b, a)]);
}

/** The nearest of several; apart if there are none. */
export const nearest = (all: readonly Meets[]): Meets => NEAREST.find((meets) => all.includes(meets)) ?? 'apart';
