import type { SurfaceId } from '../../surface';
import type { Warning, WarningCode } from '../assessment';
import { SEVERITY_RANK } from '../severity';

/** What a change of finishes makes of the findings. */
export interface FindingsChange {
  /** Grave and visible warnings that are gone, notes of the same included. */
  readonly cleared: readonly Warning[];
  /** Grave and visible ones of which a note stays. */
  readonly softened: readonly Warning[];
  /** Grave and visible ones that were not there before, or not as grave. */
  readonly added: readonly Warning[];
  /** New notes, open questions among them. */
  readonly addedNotes: readonly Warning[];
}

/** Findings of the whole scheme: the surfaces they list only say who carries them. */
const OF_SCHEME: readonly WarningCode[] = ['lacks-warm', 'lacks-cool'];
/** Findings of each surface by itself; all others are of what two surfaces do to each other. */
const OF_SURFACES: readonly WarningCode[] = ['tinted-by-bounce', 'light-shift', 'low-light'];

const isSubset = (some: readonly SurfaceId[], all: readonly SurfaceId[]): boolean => some.every((s) => all.includes(s));
const shared = (some: readonly SurfaceId[], others: readonly SurfaceId[]): number =>
  some.filter((s) => others.includes(s)).length;

/** The finding, or more of it, was there already: one that lists fewer surfaces is not new. */
function isCovered(warning: Warning, before: readonly Warning[]): boolean {
  const alike = before.filter(
    (b) => b.code === warning.code && SEVERITY_RANK[b.severity] >= SEVERITY_RANK[warning.severity],
  );
  if (OF_SCHEME.includes(warning.code)) return alike.length > 0;
  const groups = OF_SURFACES.includes(warning.code)
    ? [alike.flatMap(({ surfaces }) => surfaces)]
    : alike.map(({ surfaces }) => surfaces);
  return groups.some((surfaces) => isSubset(warning.surfaces, surfaces));
}

/** Compares the findings of a scheme with those after a change, by code and surfaces; the order of either does not matter. */
export function compareFindings(before: readonly Warning[], after: readonly Warning[]): FindingsChange {
  const told = before.filter(isTold);
  const left = new Map(told.map((warning) => [warning, whatIsLeft(warning, before, after)]));
  const fresh = after.filter((warning) => !isCovered(warning, before));
  return {
    cleared: told.filter((warning) => left.get(warning)!.length === 0),
    softened: told.filter((warning) => {
      const rest = left.get(warning)!;
      return rest.length > 0 && rest.every(({ severity, code }) => severity === 'note' && code !== 'cannot-tell');
    }),
    added: fresh.filter(isTold),
    addedNotes: fresh.filter((warning) => !isTold(warning)),
  };
}

/** Grave or visible: what a repair is for, and what it must not raise. */
export const isTold = ({ severity }: Warning): boolean => severity !== 'note';

/** The findings after a change that go on saying what a warning says, or leave it open. */
function whatIsLeft(warning: Warning, before: readonly Warning[], after: readonly Warning[]): Warning[] {
  const others = before.filter((other) => other !== warning);
  return after.filter((x) => {
    if (x.code === 'cannot-tell' && warning.code !== 'cannot-tell') {
      return !isCovered(x, before) && isAbout(x, warning);
    }
    if (x.code !== warning.code) return false;
    if (OF_SCHEME.includes(x.code) || isSubset(x.surfaces, warning.surfaces)) return true;
    return isAbout(x, warning) && !isCovered(x, others);
  });
}

/** About the same surface, or the same two. */
function isAbout({ surfaces }: Warning, { code, surfaces: meant }: Warning): boolean {
  if (OF_SCHEME.includes(code)) return false;
  return shared(surfaces, meant) >= Math.min(OF_SURFACES.includes(code) ? 1 : 2, meant.length);
}
