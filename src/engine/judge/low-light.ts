import type { SurfaceId } from '../surface';
import type { Severity } from './assessment';
import type { JudgeInput } from './input';

/**
 * Illuminance one works by in a kitchen at home, lx: 500 where food is prepared, 300 at sink and cooktop. IES RP-11, the
 * practice for homes, as quoted second-hand (50 and 30 footcandles); EN 12464-1 asks 500 of kitchens where people work for pay
 * (from memory). A recommendation, not a rule for homes.
 */
export const WORKTOP_LX = { preparing: 500, least: 300 } as const;

export interface LowLight {
  readonly surface: SurfaceId;
  readonly illuminance_lx: number;
  readonly lux_min: number;
  readonly severity: Severity;
}

const WORKTOPS: readonly SurfaceId[] = ['counter', 'island-counter'];

/** Worktops with less light on average than food is best prepared by; below what sink and cooktop need it is felt. */
export function lowLights(input: JudgeInput): LowLight[] {
  return input.surfaces.flatMap((s) => {
    if (!WORKTOPS.includes(s.surface)) return [];
    const reading = s.installed.find((r) => r.facing === 'up');
    if (!reading || reading.illuminanceLx >= WORKTOP_LX.preparing) return [];
    const severity = reading.illuminanceLx < WORKTOP_LX.least ? 'visible' : 'note';
    return [{ surface: s.surface, illuminance_lx: reading.illuminanceLx, lux_min: reading.luxMin, severity }];
  });
}

/** Whether there is no light to read anything by. */
export const isDark = (input: JudgeInput): boolean => input.surfaces.every((s) => s.installed.length === 0);
