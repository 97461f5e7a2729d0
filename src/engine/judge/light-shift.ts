import { differenceCiede2000 } from '../color/difference';
import { averageComponent } from '../finish/average';
import { undertoneOf } from '../naming/undertone';
import type { SurfaceId } from '../surface';
import type { JudgeInput } from './input';
import { withoutTint } from './place-tint';
import { mainReading } from './view-weights';

/** Twice the acceptable CIEDE2000 limit. Our judgement. */
export const SHIFT_MIN = 3.6;

/** A surface that the lamp, not its place, makes read as another color than its sample. */
export interface LightShift {
  readonly surface: SurfaceId;
  readonly finish: string;
  readonly de00: number;
  readonly sampleName: string;
  readonly installedName: string;
  /** All spectra measured; else the shift rests on plausible curves of the same color. */
  readonly measured: boolean;
}

/** Shifts under the setting's lamps with the tint of the place taken off, where the name changes too. */
export function lightShifts(input: JudgeInput): LightShift[] {
  return input.surfaces.flatMap((s) => {
    const reading = mainReading(s);
    if (!reading) return [];
    const sample = averageComponent(s.finish.components).labD65;
    const lit = withoutTint(reading.average, reading.placeWhite);
    const de00 = differenceCiede2000(sample, lit);
    if (de00 < SHIFT_MIN) return [];
    const sampleName = undertoneOf(sample).name;
    const installedName = undertoneOf(lit).name;
    if (installedName === sampleName) return [];
    const measured = s.finish.components.every((c) => c.spectrumSource === 'measured');
    return [{ surface: s.surface, finish: s.finish.id, de00, sampleName, installedName, measured }];
  });
}
