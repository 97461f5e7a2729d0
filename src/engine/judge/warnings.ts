import { SURFACES } from '../surface';
import type { Severity, Warning, WarningCode } from './assessment';

const SEVERITIES: readonly Severity[] = ['grave', 'visible', 'note'];

/** Within one severity: the whole scheme first, then pairs, patterns, edges, light, and what cannot be told. */
const CODES: readonly WarningCode[] = [
  'lacks-warm',
  'lacks-cool',
  'white-looks-dirty',
  'too-yellow',
  'undertones-pull-apart',
  'patterns-compete',
  'woods-nearly-match',
  'weak-edge',
  'tinted-by-bounce',
  'light-shift',
  'pair-splits',
  'low-light',
  'cannot-tell',
];

/** Gravest first, each once: of findings with one code, basis and set of surfaces the gravest stays. */
export function orderedWarnings(warnings: readonly Warning[]): Warning[] {
  const sorted = [...warnings].sort(
    (x, y) =>
      SEVERITIES.indexOf(x.severity) - SEVERITIES.indexOf(y.severity) ||
      CODES.indexOf(x.code) - CODES.indexOf(y.code) ||
      bySurfaces(x, y) ||
      (x.text < y.text ? -1 : x.text > y.text ? 1 : 0),
  );
  const seen = new Set<string>();
  return sorted.filter((w) => {
    const key = `${w.code}|${w.basis}|${w.surfaces.join(',')}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

function bySurfaces(x: Warning, y: Warning): number {
  for (let i = 0; i < Math.min(x.surfaces.length, y.surfaces.length); i++) {
    const step = SURFACES.indexOf(x.surfaces[i]!) - SURFACES.indexOf(y.surfaces[i]!);
    if (step !== 0) return step;
  }
  return x.surfaces.length - y.surfaces.length;
}
