import { averageComponent } from '../finish/average';
import { bounceTints, tintSeverity } from './bounce';
import type { ShiftHolds, TintHolds } from './claims';
import type { Tally } from './hold-pairs';
import type { InstalledReading, JudgedSurface, JudgeInput } from './input';
import { litShift } from './light-shift';
import { mainReading } from './view-weights';

/** How often a surface that a place tints is tinted as gravely. */
export function tallyTints(input: JudgeInput): Tally<TintHolds> {
  const bySurface = new Map(input.surfaces.map((s) => [s.surface, s]));
  const counts = new Map<string, { s: JudgedSurface; reading: InstalledReading; visible: number; note: number }>();
  for (const { surface } of bounceTints(input)) {
    const s = bySurface.get(surface)!;
    counts.set(surface, { s, reading: mainReading(s)!, visible: 0, note: 0 });
  }
  return {
    count(draw) {
      for (const counted of counts.values()) {
        const { sample, average } = draw.read(counted.s, counted.reading);
        const severity = tintSeverity(sample, average, counted.reading);
        if (severity) counted.note++;
        if (severity === 'visible') counted.visible++;
      }
    },
    held: (draws) => (surface) => {
      const counted = counts.get(surface);
      return counted ? { visible: counted.visible / draws, note: counted.note / draws } : null;
    },
  };
}

interface ShiftCount {
  readonly s: JudgedSurface;
  readonly reading: InstalledReading;
  readonly nominal: number;
  readonly shifts: number[];
  shifted: number;
  readonly names: Map<string, number>;
}

/** How far the lamps shift each finish, read where they shift it most by its nominal curve. */
export function tallyShifts(input: JudgeInput): Tally<ShiftHolds> {
  const counts = new Map<string, ShiftCount>();
  for (const s of input.surfaces) {
    const reading = mainReading(s);
    if (!reading) continue;
    const { de00 } = litShift(averageComponent(s.finish.components).labD65, reading.average, reading);
    const known = counts.get(s.finish.id);
    if (!known || de00 > known.nominal) {
      counts.set(s.finish.id, { s, reading, nominal: de00, shifts: [], shifted: 0, names: new Map() });
    }
  }
  return {
    count(draw) {
      for (const counted of counts.values()) {
        const { sample, average } = draw.read(counted.s, counted.reading);
        const shift = litShift(sample, average, counted.reading);
        counted.shifts.push(shift.de00);
        const name = shift.nameIfFar();
        if (name === null) continue;
        counted.shifted++;
        counted.names.set(name, (counted.names.get(name) ?? 0) + 1);
      }
    },
    held: (draws) => (finish) => {
      const counted = counts.get(finish);
      if (!counted || draws === 0) return null;
      const shifts = [...counted.shifts].sort((x, y) => x - y);
      const at = (share: number) => shifts[Math.round(share * (shifts.length - 1))]!;
      const [commonest] = [...counted.names].sort((x, y) => y[1] - x[1]);
      return { shifted: counted.shifted / draws, p05: at(0.05), p95: at(0.95), name: commonest?.[0] ?? null };
    },
  };
}
