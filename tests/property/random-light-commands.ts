import fc from 'fast-check';
import type { Command } from '../../src/model/commands';
import type { Fixture } from '../../src/model/fixture';
import type { Opening } from '../../src/model/kitchen';
import type { BeamRecord, Daylight } from '../../src/model/project';
import { demoProject } from '../io/demo';

const [usualOpening] = demoProject().kitchen.openings;
export const beam: BeamRecord = {
  id: 'narrow',
  label: 'Narrow',
  // The integral of the intensities below.
  lumens: 1363,
  vertical_deg: [0, 20, 90],
  horizontal_deg: [0],
  candela: [[2000, 400, 0]],
};

/** A number that is mostly fine, at times just outside, at times no number. */
const about = (min: number, max: number) =>
  fc.oneof(
    { weight: 6, arbitrary: fc.integer({ min, max }) },
    { weight: 1, arbitrary: fc.constantFrom(min - 1, max + 1, Number.NaN, Number.POSITIVE_INFINITY) },
  );
const daylight: fc.Arbitrary<Daylight | null> = fc.oneof(
  fc.constant(null),
  fc.record(
    {
      sky: fc.constantFrom('overcast' as const, 'clear' as const),
      month: about(1, 12),
      day: about(1, 31),
      hour: about(0, 24),
      blind: fc.constantFrom(0, 0.5, 1, 1.5, Number.NaN),
      sky_lx: about(0, 100_000),
      light: fc.constantFrom('D65', 'D75', 'LED-Z9'),
    },
    { requiredKeys: ['sky', 'month', 'day', 'hour', 'blind'] },
  ),
);
const id = fc.constantFrom('day', 'evening', 'noon', 'late', '');
const openings: fc.Arbitrary<readonly Opening[]> = fc.array(
  fc
    .record({ width: about(600, 1500), facing_deg: about(0, 80), panes: fc.constantFrom(1, 2, 3, 4, 1.5) })
    .map((part) => ({
      ...usualOpening!,
      ...part,
    })),
  { maxLength: 2 },
);
const fixtures: fc.Arbitrary<readonly Fixture[]> = fc.array(
  fc
    .record({
      id: fc.constantFrom('one', 'two', ''),
      beam: fc.oneof(
        fc.constant({ kind: 'wide' as const }),
        about(4, 170).map((angle_deg) => ({ kind: 'spread' as const, angle_deg })),
        fc.constantFrom('narrow', 'no-such').map((name) => ({ kind: 'file' as const, beam: name, turn_deg: 0 })),
      ),
      count: fc.constantFrom(1, 4, 0, 2.5),
      lumens_each: about(0, 20_000),
    })
    .map((part): Fixture => ({ kind: 'downlight', group: 'ceiling', diameter: 80, ...part })),
  { maxLength: 3 },
);
/** A command about daylight, windows and lamps, right or wrong. */
export const randomLightCommand: fc.Arbitrary<Command> = fc.oneof(
  fc.record({ kind: fc.constant('set-daylight' as const), setting: id, daylight }),
  fc.record({ kind: fc.constant('copy-setting' as const), setting: id, id, name: fc.constantFrom('Late', '', ' ') }),
  fc.record({ kind: fc.constant('remove-setting' as const), setting: id }),
  fc
    .record({
      latitude_deg: about(-90, 90),
      longitude_deg: about(-180, 180),
      utc_offset_h: about(-14, 14),
      bearing_deg: about(0, 360),
      ground: fc.constantFrom('snow' as const, 'greenery' as const),
      facing: fc.constantFrom('brick' as const, 'unknown' as const),
    })
    .map((site) => ({ kind: 'set-site' as const, site })),
  fc.record({ kind: fc.constant('set-openings' as const), openings }),
  fc.record({ kind: fc.constant('set-fixtures' as const), fixtures }),
  fc.constantFrom(beam, { ...beam, candela: [[1]] }, { ...beam, id: ' ' }).map((one) => ({
    kind: 'add-beam' as const,
    beam: one,
  })),
);
