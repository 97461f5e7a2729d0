import type { SurfaceId } from '../../surface';
import { faultCode } from '../claims';
import { isOwnFault } from '../hold-pairs';
import type { JudgeInput } from '../input';
import { type InstalledPair, installedPair, isMajor, type PlacedColor, placedColors } from '../pairs';
import { SEVERITY_RANK } from '../severity';
import { faultFirmness, mainOf, spokenOf } from './relations';

/** A fault that a candidate shows in its place in one light, and its sample does not. */
export interface InPlaceFault {
  /** Side `a` is the candidate's. */
  readonly pair: InstalledPair;
  /** Settled surfaces it shows beside. */
  readonly surfaces: readonly SurfaceId[];
  /** Beyond doubt the finishes' own: it turns the candidate down. Else it may be. */
  readonly isFirm: boolean;
}

/** What a candidate shows in its place in one setting. */
export interface InPlace {
  readonly setting: string;
  readonly settingName: string;
  readonly faults: readonly InPlaceFault[];
}

/**
 * Faults between the main colors of what lies on `surfaces` and of what is settled, in one light: those of the finishes themselves, which
 * stay when the tint of each place is taken off. What the room alone makes is no reason against a finish.
 * @param input the scheme with the candidate laid, as it reads in that light
 */
export function inPlaceFaults(
  input: JudgeInput,
  surfaces: readonly SurfaceId[],
  settled: readonly SurfaceId[],
): InPlaceFault[] {
  const placed = placedColors(input);
  const own = mainColors(placed, surfaces);
  const others = mainColors(placed, settled);
  const found = new Map<string, InPlaceFault & { readonly surfaces: SurfaceId[] }>();
  for (const a of own) {
    for (const b of others) {
      if (a.color.finish === b.color.finish) continue;
      const pair = installedPair(a, b);
      if (!pair || !isOwnFault(pair) || pair.tintOff.severity === 'note') continue;
      const key = `${b.color.key}|${faultCode(pair.tintOff.verdict)}`;
      const before = found.get(key);
      if (before && !before.surfaces.includes(b.surface.surface)) before.surfaces.push(b.surface.surface);
      const fault = {
        pair,
        own: 'a' as const,
        surfaces: before?.surfaces ?? [b.surface.surface],
        isFirm: isFirm(pair),
      };
      if (!before || weight(fault) > weight(before)) found.set(key, fault);
    }
  }
  return [...found.values()].map((fault) => ({ ...fault, surfaces: spokenOf(fault.surfaces) }));
}

const weight = ({ isFirm, pair }: InPlaceFault): number =>
  (isFirm ? 10 : 0) + SEVERITY_RANK[pair.tintOff.severity ?? 'note'];

function mainColors(placed: readonly PlacedColor[], surfaces: readonly SurfaceId[]): PlacedColor[] {
  return surfaces.flatMap((surface) => {
    const parts = placed.filter((one) => one.surface.surface === surface && isMajor(one));
    return parts.length === 0 ? [] : [parts[mainOf(parts.map(({ color }) => color))]!];
  });
}

/** Only measured spectra say how two finishes behave under a lamp; a curve made up for a color says what may be. */
function isFirm({ a, b, raw, tintOff }: InstalledPair): boolean {
  const areMeasured = [a, b].every(({ surface }) =>
    surface.finish.components.every(({ spectrumSource }) => spectrumSource === 'measured'),
  );
  return (
    areMeasured &&
    [
      faultFirmness(raw, sideOf(a, 'raw'), sideOf(b, 'raw')),
      faultFirmness(tintOff, sideOf(a, 'tintOff'), sideOf(b, 'tintOff')),
    ].every((firmness) => firmness === 'firm')
  );
}

const sideOf = ({ color, installed }: PlacedColor, basis: 'raw' | 'tintOff') => ({ color, lab: installed![basis] });
