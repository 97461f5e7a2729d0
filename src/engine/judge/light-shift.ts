import { differenceCiede2000 } from '../color/difference';
import type { Lab } from '../color/types';
import { averageComponent } from '../finish/average';
import { undertoneOf } from '../naming/undertone';
import type { SurfaceId } from '../surface';
import type { Holds, ShiftHolds } from './claims';
import { isOpenQuestion } from './firmness';
import type { InstalledReading, JudgedSurface, JudgeInput } from './input';
import { leanWord } from './lean-word';
import { withoutTint } from './place-tint';
import { mainReading } from './view-weights';

/** Twice the acceptable CIEDE2000 limit. Our judgment. */
export const SHIFT_MIN = 3.6;

/** A surface that the lamp, not its place, makes read far from its sample, or may. */
export interface LightShift {
  readonly surface: SurfaceId;
  readonly finish: string;
  /** By the nominal curves. */
  readonly de00: number;
  readonly sampleName: string;
  readonly installedName: string;
  /** How it reads against the sample: 'greener'. */
  readonly lean: string;
  /** All spectra measured; else the shift rests on plausible curves of the same color. */
  readonly measured: boolean;
  readonly holds: ShiftHolds | null;
}

/**
 * Shifts under the setting's lamps with the tint of the place taken off, far enough. Once the curves
 * that a color may have are drawn they decide: a shift that only some of them make is an open question, whether or not the
 * nominal curve is among those.
 */
export function lightShifts(input: JudgeInput, holds: Holds['shift']): LightShift[] {
  const all = input.surfaces.flatMap((s) => shiftOn(s, holds(s.finish.id)));
  return all.filter(({ holds, isShifted, finish }) => {
    if (holds === null) return isShifted;
    if (!isOpenQuestion(holds.shifted)) return false;
    return isShifted || !all.some((other) => other.finish === finish && other.isShifted);
  });
}

function shiftOn(s: JudgedSurface, holds: ShiftHolds | null): (LightShift & { readonly isShifted: boolean })[] {
  const reading = mainReading(s);
  if (!reading) return [];
  const sample = averageComponent(s.finish.components).labD65;
  const { de00, lit, nameIfFar } = litShift(sample, reading.average, reading);
  return [
    {
      surface: s.surface,
      finish: s.finish.id,
      de00,
      sampleName: undertoneOf(sample).name,
      installedName: holds?.name ?? undertoneOf(lit).name,
      measured: s.finish.components.every((c) => c.spectrumSource === 'measured'),
      holds,
      lean: leanWord(sample, lit),
      isShifted: nameIfFar() !== null,
    },
  ];
}

interface LitShift {
  readonly de00: number;
  /** The reading with the tint of its place taken off: what the lamp alone makes of it. */
  readonly lit: Lab<'D65-2'>;
  /** Its name where it shifts far enough, else null. */
  readonly nameIfFar: () => string | null;
}

/** What the lamps of the setting make of a finish of that sample color, read as `average` in its place. */
export function litShift(
  sample: Lab<'D65-2'>,
  average: Lab<'D65-2'>,
  { placeWhite }: Pick<InstalledReading, 'placeWhite'>,
): LitShift {
  const lit = withoutTint(average, placeWhite);
  const de00 = differenceCiede2000(sample, lit);
  const nameIfFar = () => (de00 < SHIFT_MIN ? null : undertoneOf(lit).name);
  return { de00, lit, nameIfFar };
}
