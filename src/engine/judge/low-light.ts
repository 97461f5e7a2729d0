import type { SurfaceId } from '../surface';
import type { Severity } from './assessment';
import type { InstalledReading, JudgeInput } from './input';

/** Illuminance on a worktop in homes, lx: 300 to 500 is common practice, no source. The lower limit is our judgement. */
export const WORKTOP_LX = { usual: 300, usualTo: 500, least: 200 } as const;

export interface LowLight {
  readonly surface: SurfaceId;
  readonly illuminance_lx: number;
  readonly severity: Severity;
}

const WORKTOPS: readonly SurfaceId[] = ['counter', 'island-counter'];

/** Worktops that the setting lights less than people usually prepare food by. */
export function lowLights(input: JudgeInput): LowLight[] {
  return input.surfaces.flatMap((s) => {
    if (!WORKTOPS.includes(s.surface)) return [];
    const reading: InstalledReading | undefined = s.installed.find((r) => r.facing === 'up');
    if (!reading || reading.illuminanceLx >= WORKTOP_LX.usual) return [];
    // An island may be for sitting at; only the main worktop has to be lit for work.
    const severity = s.surface === 'counter' && reading.illuminanceLx < WORKTOP_LX.least ? 'visible' : 'note';
    return [{ surface: s.surface, illuminance_lx: reading.illuminanceLx, severity }];
  });
}
