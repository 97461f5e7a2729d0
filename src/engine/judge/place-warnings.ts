import type { Severity, Warning } from './assessment';
import { BOUNCE, type BounceTint, bounceTints } from './bounce';
import { faultCode } from './claims';
import type { JudgeInput } from './input';
import { byFinish, groupedBy, type PlaceFault, placeFaults } from './installed-faults';
import { type LightShift, lightShifts, SHIFT_MIN } from './light-shift';
import { lowLights, WORKTOP_LX } from './low-light';
import { AS_INSTALLED, aboutShare, oneDecimal } from './number-words';
import type { InstalledPair } from './pairs';
import { inDecisionOrder, joined, sentenceCase, surfaceName, surfacesPhrase } from './surface-words';

/**
 * Tint by bounce: each finish at its worst, finishes that read alike from one source together, with the white pairs that
 * only the place turns into a fault.
 */
export function bounceWarnings(input: JudgeInput, pairs: readonly InstalledPair[]): Warning[] {
  const worst = byFinish(bounceTints(input)).flatMap(atWorst);
  const faults = placeFaults(pairs);
  const tinted = new Set(worst.map((tint) => tint.finish));
  return [
    ...groupedBy(worst, likeness).map((group) => {
      const finishes = new Set(group.map((tint) => tint.finish));
      return tintWarning(
        group,
        faults.filter((f) => finishes.has(f.tinted.color.finish)),
      );
    }),
    ...loneFaults(faults.filter((f) => !tinted.has(f.tinted.color.finish))),
  ];
}

/** Of one finish, the surfaces on which its tint is gravest. */
function atWorst(group: readonly BounceTint[]): BounceTint[] {
  const visible = group.filter((tint) => tint.severity === 'visible');
  return visible.length > 0 ? visible : [...group];
}

/** Visible tints read alike if they change the same name into the same; notes if they come from the same source. */
const likeness = (tint: BounceTint): string =>
  tint.severity === 'visible'
    ? `${tint.sampleName}>${tint.installedName}|${tint.source?.surface}`
    : `note|${tint.source?.surface}`;

/** From this share on a source is most of a tint. */
const MOST = 0.5;

function sourceSentence({ source }: BounceTint): string {
  if (!source) return 'It comes from what stands around.';
  const much = source.share >= MOST ? 'Most' : sentenceCase(aboutShare(source.share));
  return `${much} of it comes from the ${surfaceName(source.surface).toLowerCase()}.`;
}

function tintWarning(group: readonly BounceTint[], faults: readonly PlaceFault[]): Warning {
  const worst = group.reduce((w, t) => (t.chromaPart > w.chromaPart ? t : w));
  const surfaces = inDecisionOrder(group.map((t) => t.surface));
  const who = surfacesPhrase(surfaces);
  const source = ` ${sourceSentence(worst)}`;
  const sample = new Set(group.map((t) => t.finish)).size > 1 ? 'the samples are' : 'the sample is';
  const apart = worst.isMixed ? ', the mix of lights left aside' : '';
  const text =
    worst.severity === 'visible'
      ? `${sentenceCase(who.text)} ${who.plural ? 'read' : 'reads'} ${worst.installedName} here${apart}; ${sample} ${worst.sampleName}.${source}`
      : `${sentenceCase(who.text)} ${who.plural ? 'pick' : 'picks'} up some tint here${apart}.${source}`;
  const beside = inDecisionOrder(faults.map((f) => f.other.surface.surface).filter((s) => !surfaces.includes(s)));
  const pairs =
    beside.length > 0
      ? ` Beside ${surfacesPhrase(beside).text} that shows, and it would with any white there: the place, not the finish.`
      : '';
  const where = surfaces.length > 1 ? `on the ${surfaceName(worst.surface).toLowerCase()}` : 'there';
  return {
    code: 'tinted-by-bounce',
    severity: worst.severity,
    surfaces,
    text,
    why:
      `${worst.isMixed ? 'With the mix of lights taken off, a' : 'A'} perfect white ${where} would read a* ${worst.tint[0].toFixed(1)}, b* ${worst.tint[1].toFixed(1)}; the chroma part of ` +
      `the difference from the sample is ${oneDecimal(worst.chromaPart)} CIEDE2000 (note from ${BOUNCE.note}, ` +
      `the published limit for a whole difference; visible from ` +
      `${BOUNCE.visible} with another name, our judgment), ${AS_INSTALLED}.${pairs}`,
    basis: 'installed',
    holds_in: null,
  };
}

/** Pairs of whites that only the place turns into a fault, where no surface has a tint of its own to report. */
function loneFaults(faults: readonly PlaceFault[]): Warning[] {
  return byFinish(faults.map((f) => ({ ...f, finish: f.tinted.color.finish }))).map((group) => {
    const tinted = inDecisionOrder(group.map((f) => f.tinted.surface.surface));
    const others = inDecisionOrder(group.map((f) => f.other.surface.surface));
    const who = surfacesPhrase(tinted);
    const look = faultCode(group[0]!.mixOff.verdict) === 'white-looks-dirty' ? 'dull' : 'yellow';
    const most = Math.max(...group.map((f) => Math.abs(f.mixOff.numbers['d_wid'] ?? 0)));
    const least = Math.max(...group.map((f) => Math.abs(f.tintOff.numbers['d_wid'] ?? 0)));
    return {
      code: 'tinted-by-bounce',
      severity: 'visible',
      surfaces: inDecisionOrder([...tinted, ...others]),
      text: `${sentenceCase(who.text)} may look ${look} beside ${surfacesPhrase(others).text} here, from light thrown by what stands around; the finishes themselves agree.`,
      why: `Whiteness index WID ${oneDecimal(most)} apart in place, ${oneDecimal(least)} with the tint of the places taken off, ${AS_INSTALLED}.`,
      basis: 'installed',
      holds_in: null,
    };
  });
}

/** Finishes that read as another color under the lamps of the setting. */
export const lightShiftWarnings = (input: JudgeInput): Warning[] =>
  byFinish(lightShifts(input)).map((group) => {
    const worst = group.reduce((w: LightShift, s: LightShift) => (s.de00 > w.de00 ? s : w));
    const surfaces = inDecisionOrder(group.map((s) => s.surface));
    const who = surfacesPhrase(surfaces);
    const read = worst.measured ? (who.plural ? 'read' : 'reads') : 'may read';
    const rests = worst.measured
      ? ''
      : ' The spectrum is a plausible one of the same color, so expect 2 units either way.';
    return {
      code: 'light-shift',
      severity: 'note',
      surfaces,
      text: `${sentenceCase(who.text)} ${read} ${worst.installedName} in this light; the sample is ${worst.sampleName}.`,
      why:
        `${oneDecimal(worst.de00)} CIEDE2000 from the sample with the tint of the place taken off (limit ${SHIFT_MIN}, our judgment), ` +
        `${AS_INSTALLED}.${rests}`,
      basis: 'installed',
      holds_in: null,
    };
  });

/** Worktops with little light for preparing food. */
export function lowLightWarnings(input: JudgeInput): Warning[] {
  const found = lowLights(input);
  if (found.length === 0) return [];
  const severity: Severity = found.some((f) => f.severity === 'visible') ? 'visible' : 'note';
  const surfaces = inDecisionOrder(found.map((f) => f.surface));
  const who = surfacesPhrase(surfaces);
  const levels = found.map((f) => `${Math.round(f.illuminance_lx / 10) * 10} lx`);
  return [
    {
      code: 'low-light',
      severity,
      surfaces,
      text:
        `${sentenceCase(who.text)} ${who.plural ? 'get' : 'gets'} about ${joined(levels)} in this light; ` +
        `${WORKTOP_LX.usual} to ${WORKTOP_LX.usualTo} lx is usual for preparing food.`,
      why: `Mean illuminance on the counter; the usual range is common practice for homes, the lower limit of ${WORKTOP_LX.least} lx our judgment.`,
      basis: 'installed',
      holds_in: null,
    },
  ];
}
