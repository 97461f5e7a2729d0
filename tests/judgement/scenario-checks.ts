import type { Assessment, ComponentRecord, PairFinding, Warning } from '../../src/engine/judge/assessment';
import type { Expected, WarningWanted } from './scenario';

/** What an assessment does not do as expected, in sentences; empty where it does. */
export function unmet(expected: Expected, { pending, done }: { pending: Assessment; done: Assessment }): string[] {
  return [
    ...done.warnings.flatMap(alwaysWrong),
    ...quietProblems(expected.quiet, pending, done),
    ...(expected.warned ?? []).flatMap((wanted) =>
      done.warnings.some((w) => isWanted(w, wanted)) ? [] : [`missing ${show(wanted)}; has ${listed(done)}`],
    ),
    ...(expected.unwarned ?? []).flatMap((wanted) =>
      // Before errors are drawn only what is grave may not be wrong: the rest is shown as being checked.
      [pending, done].flatMap((assessed) =>
        assessed.warnings
          .filter((w) => isWanted(w, wanted) && (assessed === done || w.severity === 'grave'))
          .map((w) => `${assessed.status}: ${show(wanted)} must not be, but: ${told(w)}`),
      ),
    ),
    ...pairProblems(expected, done),
    ...recordProblems(expected, done),
    ...(expected.balance && expected.balance !== done.balance.verdict
      ? [`balance is ${done.balance.verdict}, expected ${expected.balance}`]
      : []),
    ...(expected.sentence && !done.balance.sentence.includes(expected.sentence)
      ? [`sentence is "${done.balance.sentence}", expected "${expected.sentence}"`]
      : []),
  ];
}

/** What no finding may do, whatever the scheme. */
function alwaysWrong(w: Warning): string[] {
  const isSoft = /\bmay\b|cannot tell|likely/i.test(w.text);
  const share = w.holds_in ?? 1;
  return [
    ...(w.holds_in === null && w.basis === 'sample' ? ['rests on colors, but no one tried how firmly'] : []),
    ...(share < 0.85 && !isSoft ? ['is said flatly'] : []),
    ...(w.code === 'cannot-tell' && !/cannot tell|likely/i.test(w.text) ? ['is no question'] : []),
    ...(w.severity === 'grave' && share < 0.75 ? ['is grave and does not stand'] : []),
    ...(/\b(safe|compliant|exact match|perfect match)\b/i.test(`${w.text} ${w.why}`) ? ['promises too much'] : []),
  ].map((problem) => `${problem}: ${told(w)}`);
}

function quietProblems(quiet: Expected['quiet'], ...assessed: Assessment[]): string[] {
  if (quiet === undefined) return [];
  const allowed = quiet === true ? [] : quiet;
  return assessed.flatMap(({ warnings, status }) =>
    warnings.filter((w) => !allowed.includes(w.code)).map((w) => `${status}: must be quiet, but: ${told(w)}`),
  );
}

function isWanted(w: Warning, wanted: WarningWanted): boolean {
  const { code, on, only_on, severity, basis, holds, says, never_says } = wanted;
  const among = <T>(value: T, of: T | readonly T[] | undefined): boolean =>
    of === undefined || (Array.isArray(of) ? of.includes(value) : of === value);
  return (
    among(w.code, code) &&
    among(w.severity, severity) &&
    among(w.basis, basis) &&
    (on ?? []).every((s) => w.surfaces.includes(s)) &&
    (only_on === undefined || [...only_on].sort().join() === [...w.surfaces].sort().join()) &&
    (holds === undefined || (w.holds_in !== null && w.holds_in >= holds[0] && w.holds_in <= holds[1])) &&
    (says === undefined || `${w.text} ${w.reason ?? ''} ${w.why}`.toLowerCase().includes(says.toLowerCase())) &&
    (never_says === undefined || !w.text.toLowerCase().includes(never_says.toLowerCase()))
  );
}

function pairProblems({ pairs, numbers }: Expected, done: Assessment): string[] {
  const verdicts = Object.entries(pairs ?? {}).flatMap(([key, wanted]) => {
    const verdict = pairOf(key, done)?.verdict ?? 'none';
    const all: readonly string[] = typeof wanted === 'string' ? [wanted] : wanted;
    return all.includes(verdict) ? [] : [`${key} is ${verdict}, expected ${all.join(' or ')}`];
  });
  const figures = Object.entries(numbers ?? {}).flatMap(([key, wanted]) =>
    Object.entries(wanted).flatMap(([name, [is, within]]) => {
      const pair = pairOf(key, done);
      const value = name === 'de00' ? pair?.de00 : pair?.numbers[name];
      return value !== undefined && Math.abs(value - is) <= within
        ? []
        : [`${name} of ${key} is ${value}, expected ${is} within ${within}`];
    }),
  );
  return [...verdicts, ...figures];
}

/** The pair as samples, whichever side comes first. */
function pairOf(key: string, done: Assessment): PairFinding | undefined {
  const [one, other] = key.split('|').map((side) => {
    const [surface, component = 'base'] = side.split('.');
    return `${surface}.${component}`;
  });
  const isSide = (side: PairFinding['a'], name: string | undefined) => `${side.surface}.${side.component}` === name;
  return done.pairs.find(
    (p) =>
      p.basis === 'sample' && ((isSide(p.a, one) && isSide(p.b, other)) || (isSide(p.a, other) && isSide(p.b, one))),
  );
}

function recordProblems({ names, levels, words }: Expected, done: Assessment): string[] {
  const compare = (wanted: Readonly<Record<string, string>> | undefined, of: (part: ComponentRecord) => string) =>
    Object.entries(wanted ?? {}).flatMap(([key, value]) => {
      const part = partOf(key, done);
      const is = part ? of(part) : 'not there';
      return is === value ? [] : [`${key} is ${is}, expected ${value}`];
    });
  return [
    ...compare(names, (part) => part.name),
    ...compare(levels, (part) => part.undertone.level),
    ...compare(words, (part) => part.undertone.word),
  ];
}

function partOf(key: string, done: Assessment): ComponentRecord | undefined {
  const [surface, component = 'base'] = key.split('.');
  const found = done.surfaces.find((s) => s.surface === surface);
  return component === 'average' ? found?.average : found?.components.find((c) => c.role === component);
}

const show = (wanted: WarningWanted): string => JSON.stringify(wanted);
const told = (w: Warning): string => `[${w.code}, ${w.severity}, holds in ${w.holds_in}] ${w.text}`;
const listed = ({ warnings }: Assessment): string => (warnings.length === 0 ? 'none' : warnings.map(told).join(' / '));
