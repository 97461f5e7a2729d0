import type { Warning } from '../../engine/judge/assessment';
import { SEVERITY_RANK } from '../../engine/judge/severity';

/** What of two assessments is one finding: code, basis and a surface in common. */
const isSameFinding = (a: Warning, b: Warning): boolean =>
  a.code === b.code &&
  a.basis === b.basis &&
  (a.surfaces.length === 0 || a.surfaces.some((s) => b.surfaces.includes(s)));

/** What `after` asks for that `before` does not, or not as gravely, or not of all these surfaces. */
export const gainedWarnings = (before: readonly Warning[], after: readonly Warning[]): readonly Warning[] =>
  after.filter(
    (one) =>
      !before.some(
        (known) =>
          isSameFinding(known, one) &&
          SEVERITY_RANK[known.severity] >= SEVERITY_RANK[one.severity] &&
          one.surfaces.every((surface) => known.surfaces.includes(surface)),
      ),
  );

/** What `before` asks for that `after` does not of any of these surfaces. */
export const lostWarnings = (before: readonly Warning[], after: readonly Warning[]): readonly Warning[] =>
  before.filter((one) => !after.some((left) => isSameFinding(left, one)));
