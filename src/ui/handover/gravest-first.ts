import type { Warning } from '../../engine/judge/assessment';
import { SEVERITY_RANK } from '../../engine/judge/severity';

/** Gravest first; within a grade in the order the engine gave. */
export const gravestFirst = (warnings: readonly Warning[]): readonly Warning[] =>
  [...warnings].sort((a, b) => SEVERITY_RANK[b.severity] - SEVERITY_RANK[a.severity]);
