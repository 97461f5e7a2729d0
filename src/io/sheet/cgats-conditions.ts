import type { Problem } from '../../engine/result';
import { placeIn } from '../place-problem';
import type { CgatsKeyword } from './cgats-tables';
import { conditionIn, conditionNotice, conditionOfFilter, type MeasurementCondition } from './measurement-condition';
import { mirrorPartIn } from './mirror-part';
import type { SheetConditions } from './types';

const ILLUMINANT = /^(ILLUMINATION_NAME|ILLUMINANT|TARGET_ILLUMINANT)$/;
const OBSERVER = /^(OBSERVER_ANGLE|OBSERVER)$/;
const MEASURED_UNDER = /^(MEASUREMENT_SOURCE|MEASUREMENT_CONDITION|MEASUREMENTCONDITION|FILTER|MEASUREMENT_FILTER)$/;
const GEOMETRY = /^(MEASUREMENT_GEOMETRY|GEOMETRY|INSTRUMENTATION|MEASUREMENT_SOURCE)$/;

/** What the keywords of a table say of its numbers, and what of that deserves to be known. */
export function cgatsConditions(
  keywords: readonly CgatsKeyword[],
  file: string,
): {
  readonly said: SheetConditions;
  readonly condition: MeasurementCondition | null;
  readonly notices: readonly Problem[];
} {
  let said: SheetConditions = {};
  const notices: Problem[] = [];
  for (const { name, value, line } of keywords) {
    const isWeighting = name === 'WEIGHTING_FUNCTION';
    const weighting = isWeighting ? /^\s*(ILLUMINANT|OBSERVER)\s*[,:=\s]\s*(.+)$/i.exec(value) : null;
    const what = weighting?.[1]?.toUpperCase() ?? name;
    const told = (weighting?.[2] ?? value).trim();
    if (ILLUMINANT.test(what)) {
      const illuminant = illuminantIn(told);
      if (illuminant) said = { ...said, illuminant };
    }
    if (OBSERVER.test(what) || (ILLUMINANT.test(what) && /[/\s]\s*(2|10)\b/.test(told))) {
      const degrees = /(?<![\d.])(10|2)(?![\d.])/.exec(OBSERVER.test(what) ? told : told.replace(/^\S*?[/\s]/, ''));
      if (degrees) said = { ...said, observer_deg: degrees[1] === '10' ? 10 : 2 };
    }
    const mirror = GEOMETRY.test(name) ? mirrorPartIn(value) : null;
    if (mirror) said = { ...said, specular: mirror };
    if (name === 'SAMPLE_BACKING' && value) notices.push(backing(value, line, file));
  }
  const source = keywords.find(({ name, value }) => MEASURED_UNDER.test(name) && conditionIn(value));
  // ISO 13655 knows 45:0 and 0:45 only.
  if (source) said = { specular: 'excluded', ...said };
  const filter = source ? null : filterAmong(keywords);
  const condition = (source && conditionIn(source.value)) ?? filter?.condition ?? null;
  if (condition) notices.push(conditionNotice(condition, file, (source ?? filter)?.line));
  return { said, condition, notices };
}

/** What keywords say of a filter: "FILTER UVcut", "POLARIZATION yes", "... Filter=Pol" among what the source is. */
function filterAmong(keywords: readonly CgatsKeyword[]) {
  const found = keywords.flatMap(({ name, value, line }) => {
    const words = /FILTER$/.test(name)
      ? value
      : name === 'MEASUREMENT_SOURCE'
        ? (/filter\s*[=:]\s*([^,;=]+?)(?=\s+\w+\s*[=:]|[,;]|$)/i.exec(value)?.[1] ?? '')
        : '';
    const isPolarized = /^POLARI[SZ]ATION$/.test(name) && /^\s*(?:yes|y|true|1|on)\s*$/i.test(value);
    const condition = isPolarized ? 'M3' : conditionOfFilter(words);
    return condition ? [{ condition, line } as const] : [];
  });
  return found.find(({ condition }) => condition === 'M3') ?? found[0] ?? null;
}

/** Id of a CIE light: 'D50' out of "D50", "CIE D50", "D50/2". */
function illuminantIn(text: string): string | null {
  const named = /\b(D\d{2}|F\d{1,2}|FL\d{1,2}|[ACE])\b/i.exec(text)?.[1]?.toUpperCase();
  if (!named) return null;
  return /^F\d/.test(named) ? `FL${named.slice(1)}` : named;
}

const backing = (value: string, line: number, file: string): Problem => ({
  code: 'sample-backing',
  text: `Measured on a ${value.toLowerCase()} backing.`,
  at: placeIn(file, line),
  remedy: 'Nothing to do for opaque samples; thin or clear ones look lighter on white than on black.',
});
