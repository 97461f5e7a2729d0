import type { SurfaceId } from '../surface';
import type { Assessment, Warning, WarningCode } from './assessment';
import { faultCode } from './claims';
import { EDGES } from './edges';
import { inDecisionOrder } from './surface-words';

/** A settled surface that a change of another one works against, and what is found. */
export interface Unsettled {
  readonly surface: SurfaceId;
  readonly warnings: readonly Warning[];
}

/** What the changes of an option's early decisions have unsettled. */
export interface Unsettling {
  readonly option: string;
  readonly changed: readonly SurfaceId[];
  readonly found: readonly Unsettled[];
}

/** Findings between two surfaces that ask for a change. */
const FAULTS: readonly WarningCode[] = [
  'white-looks-dirty',
  'too-yellow',
  'undertones-pull-apart',
  'patterns-compete',
  'woods-nearly-match',
  'weak-edge',
];

/** Of these each finding is about all the surfaces it names, whichever colors they have. */
const OF_SURFACES: readonly WarningCode[] = ['patterns-compete', 'woods-nearly-match'];

/**
 * What changing some surfaces unsettles: of the settled ones those that a new warning, more than a note, sets against a changed
 * one. What was found between the two before is not told again. In decision order.
 */
export function unsettled(
  before: Assessment,
  after: Assessment,
  changed: readonly SurfaceId[],
  settled: readonly SurfaceId[],
): readonly Unsettled[] {
  const known = new Set(faultsBetween(before, changed, settled).map(({ key }) => key));
  const fresh = faultsBetween(after, changed, settled).filter(({ key }) => !known.has(key));
  return inDecisionOrder(fresh.map(({ surface }) => surface)).map((surface) => ({
    surface,
    warnings: [...new Set(fresh.filter((one) => one.surface === surface).map(({ warning }) => warning))],
  }));
}

interface Fault {
  readonly key: string;
  readonly surface: SurfaceId;
  readonly warning: Warning;
}

function faultsBetween(assessment: Assessment, changed: readonly SurfaceId[], settled: readonly SurfaceId[]): Fault[] {
  return assessment.warnings.flatMap((warning) => {
    const { code, severity, surfaces } = warning;
    if (severity === 'note' || !FAULTS.includes(code)) return [];
    return surfaces.flatMap((surface) => {
      if (!settled.includes(surface)) return [];
      const others = surfaces.filter((one) => changed.includes(one) && isBetween(assessment, code, one, surface));
      return others.map((other) => ({ key: `${code}|${other}|${surface}`, surface, warning }));
    });
  });
}

/** One finding may name several surfaces: those of one side are nothing to each other. */
function isBetween({ pairs }: Assessment, code: WarningCode, one: SurfaceId, other: SurfaceId): boolean {
  const isThese = (a: SurfaceId, b: SurfaceId) => (a === one && b === other) || (a === other && b === one);
  if (OF_SURFACES.includes(code)) return true;
  if (code === 'weak-edge') return EDGES.some(([a, b]) => isThese(a, b));
  return pairs.some(({ a, b, verdict }) => faultCode(verdict) === code && isThese(a.surface, b.surface));
}
