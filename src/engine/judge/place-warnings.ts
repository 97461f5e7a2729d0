import type { Warning } from './assessment';
import { BOUNCE, type BounceTint, bounceTints } from './bounce';
import { isLooseFinish } from './cannot-tell';
import { faultCode, type Holds } from './claims';
import { type Firmness, firmnessOf } from './firmness';
import type { JudgeInput } from './input';
import { byFinish, groupedBy, type PlaceFault, placeFaults } from './installed-faults';
import { AS_INSTALLED, aboutShare, oneDecimal, timesAcceptable } from './number-words';
import type { InstalledPair } from './pairs';
import { inDecisionOrder, joined, sentenceCase, surfaceName, surfacesPhrase } from './surface-words';
import { tintWord } from './tint-words';

/**
 * Tint by bounce: each finish at its worst, those that one source tints alike in one finding, all notes in one, with the white pairs that
 * only the place turns into a fault. Whether there is a slight tint is not worth a question.
 */
export function bounceWarnings(input: JudgeInput, pairs: readonly InstalledPair[], holds: Holds): Warning[] {
  const rough = new Set(input.surfaces.filter((s) => isLooseFinish(s.finish)).map((s) => s.surface));
  const told = bounceTints(input).map((tint) => asFirmAs(tint, rough.has(tint.surface), holds));
  const worst = byFinish(told)
    .flatMap(atWorst)
    .filter(({ firmness }) => firmness !== 'open');
  const faults = placeFaults(pairs, holds);
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

interface ToldTint extends BounceTint {
  /** Share of plausible errors under which it is at least that grave; null while not drawn. */
  readonly holdsIn: number | null;
  readonly firmness: Firmness;
}

/** A visible tint that does not stand as such is told as the note it still is. */
function asFirmAs(tint: BounceTint, isRough: boolean, holds: Holds): ToldTint {
  const standing = holds.tint(tint.surface);
  if (!standing) return { ...tint, holdsIn: null, firmness: firmnessOf(null, isRough) };
  const isVisible = tint.severity === 'visible' && firmnessOf(standing.visible) !== 'open';
  const [severity, holdsIn] = isVisible ? (['visible', standing.visible] as const) : (['note', standing.note] as const);
  return { ...tint, severity, holdsIn, firmness: firmnessOf(holdsIn) };
}

/** The finding is as firm as its weakest part. */
function leastOf(shares: readonly (number | null)[]): number | null {
  const known = shares.filter((share) => share !== null);
  return known.length < shares.length ? null : Math.min(...known);
}

/** Of one finish, the surfaces on which its tint is gravest. */
function atWorst(group: readonly ToldTint[]): ToldTint[] {
  const visible = group.filter((tint) => tint.severity === 'visible');
  return visible.length > 0 ? visible : [...group];
}

/** Visible tints are alike if one source lends one color; notes all are: what nobody has to change is said in one line. */
const likeness = (tint: ToldTint): string =>
  tint.severity === 'visible' ? `${tint.source?.surface}|${hueOf(tint)}` : 'note';

/** A long list says no more than its strongest. */
const NAMED_READINGS = 2;

/** "The wall reads yellowish white here; the sample is white." Several readings in one sentence, the strongest first. */
function readsSentence(group: readonly ToldTint[], isMay: boolean, apart: string): string {
  const readings = groupedBy(
    [...group].sort((x, y) => y.chromaPart - x.chromaPart),
    ({ sampleName, installedName }) => `${sampleName}>${installedName}`,
  );
  const named = readings.slice(0, NAMED_READINGS);
  const clauses = named.map((same) => {
    const who = surfacesPhrase(inDecisionOrder(same.map(({ surface }) => surface)));
    return `${who.text} ${isMay ? 'may read' : who.plural ? 'read' : 'reads'} ${same[0]!.installedName}`;
  });
  const samples = [...new Set(named.map(([one]) => one!.sampleName))];
  const are = new Set(named.flat().map(({ finish }) => finish)).size > 1 ? 'the samples are' : 'the sample is';
  const others = readings.slice(NAMED_READINGS).flat();
  const more = surfacesPhrase(inDecisionOrder(others.map(({ surface }) => surface)));
  const alike = others.length > 0 ? ` ${sentenceCase(more.text)} ${more.plural ? 'are' : 'is'} tinted alike.` : '';
  return `${sentenceCase(joined(clauses))} here${apart}; ${are} ${joined(samples)}.${alike}`;
}

/** From this share on a source is most of a tint. */
const MOST = 0.5;

function sourceSentence(group: readonly BounceTint[], worst: BounceTint): string {
  const named = new Set(group.map(({ source }) => source?.surface));
  // Different sources: which brings how much depends on the place.
  if (named.size > 1) {
    const sources = inDecisionOrder([...named].flatMap((surface) => surface ?? []));
    return `Part of the tint comes from ${surfacesPhrase(sources).text}.`;
  }
  const { source } = worst;
  if (!source) return 'The tint comes from what stands around.';
  const much = source.share >= MOST ? 'Most' : sentenceCase(aboutShare(source.share));
  return `${much} of the tint comes from the ${surfaceName(source.surface).toLowerCase()}.`;
}

/** Its color, softened where a white would hardly show it. */
const tintOf = ({ tint }: BounceTint): string => tintWord(...tint) ?? 'slight';

/** The same without how strong it is. */
const hueOf = (tint: BounceTint): string => tintOf(tint).split(' ').pop()!;

function tintWarning(group: readonly ToldTint[], faults: readonly PlaceFault[]): Warning {
  const worst = group.reduce((w, t) => (t.chromaPart > w.chromaPart ? t : w));
  const surfaces = inDecisionOrder(group.map((t) => t.surface));
  const who = surfacesPhrase(surfaces);
  const source = ` ${sourceSentence(group, worst)}`;
  const apart = group.some((t) => t.isMixed) ? ', the mix of lights left aside' : '';
  const holdsIn = leastOf(group.map((t) => t.holdsIn));
  const isOneHue = new Set(group.map(hueOf)).size === 1;
  const tint = isOneHue ? `a ${tintOf(worst)} tint`.replace(/^a (?=[aeiou])/, 'an ') : 'some tint';
  const firmness = group.some((t) => t.firmness === 'may') && holdsIn === null ? 'may' : firmnessOf(holdsIn);
  const picks = firmness === 'may' ? 'may pick' : who.plural ? 'pick' : 'picks';
  const text =
    worst.severity === 'visible'
      ? `${readsSentence(group, firmness === 'may', apart)}${source}`
      : `${sentenceCase(who.text)} ${picks} up ${tint} here${apart}.${source}`;
  const beside = inDecisionOrder(faults.map((f) => f.other.surface.surface).filter((s) => !surfaces.includes(s)));
  const pairs =
    beside.length > 0
      ? ` Beside ${surfacesPhrase(beside).text} that shows, and it would with any white there: the place, not the finish.`
      : '';
  const beyond = timesAcceptable(worst.chromaPart, BOUNCE.note);
  const where = surfaces.length > 1 ? `on the ${surfaceName(worst.surface).toLowerCase()}` : 'there';
  return {
    code: 'tinted-by-bounce',
    severity: worst.severity,
    surfaces,
    text,
    reason: `A white ${where} would look ${tintWord(...worst.tint) ?? 'a little tinted'}; the color departs from its sample by ${beyond}.${pairs}`,
    why:
      `${worst.isMixed ? 'With the mix of lights taken off, a' : 'A'} perfect white ${where} would read a* ${worst.tint[0].toFixed(1)}, b* ${worst.tint[1].toFixed(1)}; the chroma part of ` +
      `the difference from the sample is ${oneDecimal(worst.chromaPart)} CIEDE2000 (note from ${BOUNCE.note}, ` +
      `the published limit for a whole difference; visible from ` +
      `${BOUNCE.visible} with another name, our judgment), ${AS_INSTALLED}.`,
    basis: 'installed',
    holds_in: holdsIn,
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
    const holdsIn = leastOf(group.map((f) => f.holdsIn));
    const open = firmnessOf(holdsIn) === 'open';
    const beside = `${look} beside ${surfacesPhrase(others).text} here`;
    return {
      code: open ? 'cannot-tell' : 'tinted-by-bounce',
      severity: open ? 'note' : 'visible',
      surfaces: inDecisionOrder([...tinted, ...others]),
      text: open
        ? `Cannot tell whether ${who.text} ${who.plural ? 'look' : 'looks'} ${beside}, from light thrown by what stands around. Hold the samples there.`
        : `${sentenceCase(who.text)} may look ${beside}, from light thrown by what stands around; the finishes themselves agree.`,
      reason: 'It goes when the tint that the place lends to any white is taken off: the place, not the finish.',
      why: `Whiteness index WID ${oneDecimal(most)} apart in place, ${oneDecimal(least)} with the tint of the places taken off, ${AS_INSTALLED}.`,
      basis: 'installed',
      holds_in: holdsIn,
    };
  });
}
