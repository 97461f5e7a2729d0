import type { Severity, Warning } from './assessment';
import { type Holds, isAlike } from './claims';
import { compareWords } from './compare-words';
import { type Firmness, firmnessOf, isOpenQuestion } from './firmness';
import { isOwnFault } from './hold-pairs';
import { leanWord } from './lean-word';
import { SHIFT_MIN } from './light-shift';
import { AS_INSTALLED, oneDecimal } from './number-words';
import { PAIR } from './pair';
import { groupPairs, type PairGroup } from './pair-groups';
import { shownVerdict } from './pair-warnings';
import { type InstalledPair, installedPair, isMajor, type JudgedPair, pairKey, placedPairKey } from './pairs';
import { atMost } from './severity';
import { componentPhrase, inDecisionOrder, sentenceCase } from './surface-words';

/** A pair that matches as samples, judged in its places. */
interface Parting extends InstalledPair {
  readonly sampleDe00: number;
  /** Share of plausible errors and curves under which it is no match here; null while not drawn. */
  readonly parts: number | null;
  readonly firmness: Firmness;
}

/**
 * Finishes that match by day and part in this light, the tint of each place taken off: metamers. Also those of which the
 * curves that their colors may have leave it open. What is a fault of its own in this light is left to its own finding.
 */
export function splitWarnings(samples: readonly JudgedPair[], holds: Holds): Warning[] {
  const parting = samples.flatMap((pair) => partingOf(pair, holds) ?? []);
  return groupPairs(
    parting,
    ({ firmness }) => firmness,
    ({ tintOff }) => tintOff.de00,
  ).map(splitWarning);
}

function partingOf(pair: JudgedPair, holds: Holds): Parting | null {
  if (!isMajor(pair.a) || !isMajor(pair.b)) return null;
  if (!isAlike(shownVerdict(pair, holds.pair(pairKey(pair.a.color, pair.b.color))))) return null;
  const there = installedPair(pair.a, pair.b);
  if (!there || isOwnFault(there)) return null;
  const standing = holds.installed(placedPairKey(there));
  const parts = standing && 1 - standing.alike;
  if (parts === null ? there.tintOff.de00 < PAIR.acceptable : !isOpenQuestion(parts)) return null;
  const firmness = parts === null && !areMeasured(there) ? 'may' : firmnessOf(parts);
  return { ...there, sampleDe00: pair.judgment.de00, parts, firmness };
}

function splitWarning({ worst, aSurfaces, bSurfaces }: PairGroup<Parting>): Warning {
  const { a, b, tintOff, sampleDe00, firmness } = worst;
  const [one, other] = [componentPhrase(a.color.role, aSurfaces), componentPhrase(b.color.role, bSurfaces)];
  const both = `${one.text} and ${other.text}`;
  const look = firmness === 'may' ? 'may look' : other.plural ? 'look' : 'looks';
  const lean = leanWord(a.installed!.tintOff, b.installed!.tintOff);
  const severity: Severity = tintOff.de00 >= SHIFT_MIN ? 'visible' : 'note';
  return {
    code: firmness === 'open' ? 'cannot-tell' : 'pair-splits',
    severity: firmness === 'open' ? atMost('note', severity) : severity,
    surfaces: inDecisionOrder([...aSurfaces, ...bSurfaces]),
    text:
      firmness === 'open'
        ? `Cannot tell whether ${both}, a match by day, stay one in this light: ${reasonOf(worst)}. ${compareWords('in this light', aSurfaces, bSurfaces)}`
        : `${sentenceCase(both)} match by day but ${firmness === 'may' ? 'may' : 'do'} not in this light: ${other.text} ${look} ${lean}.`,
    why:
      `${oneDecimal(sampleDe00)} CIEDE2000 apart as samples, ${oneDecimal(tintOff.de00)} in this light with the tint of each place ` +
      `taken off (acceptable ${PAIR.acceptable}, Paravina et al. 2015), ${AS_INSTALLED}.` +
      (areMeasured(worst)
        ? ' Both spectra were measured.'
        : ' Not all spectra were measured: curves of the same color were tried.'),
    basis: 'installed',
    holds_in: worst.parts,
  };
}

const areMeasured = ({ a, b }: InstalledPair): boolean =>
  [a, b].every(({ surface }) => surface.finish.components.every((c) => c.spectrumSource === 'measured'));

const reasonOf = (pair: InstalledPair): string =>
  areMeasured(pair) ? 'they stand too close to the limit' : 'their numbers do not say how they behave under this lamp';
