import { differenceCiede2000 } from '../color/difference';
import { averageComponent } from '../finish/average';
import { lightShare } from '../light/light-mix';
import { undertoneOf } from '../naming/undertone';
import type { AssessedSurface, InstalledRecord } from './assessment';
import { averageRecord, componentRecord, labTriple } from './component-record';
import type { InstalledReading, JudgedSurface } from './input';
import { meanViewShare } from './view-weights';

/** One surface as the assessment shows it: as a sample and as installed. */
export const surfaceRecord = (s: JudgedSurface): AssessedSurface => ({
  surface: s.surface,
  finish: s.finish.id,
  label: s.finish.label,
  state: s.state,
  components: s.finish.components.map(componentRecord),
  average: averageRecord(s.finish.components),
  installed: s.installed.map((reading) => installedRecord(s, reading)),
});

const installedRecord = (s: JudgedSurface, reading: InstalledReading): InstalledRecord => {
  const { name, word, strength, level } = undertoneOf(reading.average);
  return {
    facing: reading.facing,
    lab_d65: labTriple(reading.average),
    name,
    undertone: { word, strength, level },
    illuminance_lx: reading.illuminanceLx,
    lux_min: reading.luxMin,
    light_from: reading.lightFrom,
    lightness_in_room: reading.lightnessInRoom,
    shift_de00: differenceCiede2000(averageComponent(s.finish.components).labD65, reading.average),
    place_white_lab_d65: labTriple(reading.placeWhite),
    light_white_lab_d65: labTriple(reading.lightWhite),
    tint_from_light: lightShare(reading.placeWhite, reading.lightWhite),
    tint_from: reading.tintFrom ?? [],
    view_share: meanViewShare(reading),
  };
};
