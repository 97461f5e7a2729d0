import type { Problem } from '../engine/result';
import { type Bounds, checkNumber, checkText, checkUnique } from './check-number';
import { checkWhole } from './check-openings';
import type { Fixture } from './fixture';

const mm = (least: number, most: number): Bounds => [least, most, 'mm'];

/** Widest values lamps of a kitchen have, with ample margin (no source). */
const COUNT: Bounds = [1, 24, 'lamps'];
const SIZE = mm(20, 1500);
const LUMENS: Bounds = [0, 20_000, 'lm'];
const LUMENS_PER_M: Bounds = [0, 5000, 'lm/m'];
const STRIP_WIDTH = mm(5, 100);
const BEAM_DEG: Bounds = [4, 170, 'degrees'];
const MOST_FIXTURES = 40;

/** What is wrong with the values of the lamps of a kitchen, each alone. */
export const checkFixtures = (fixtures: readonly Fixture[], path: string): readonly Problem[] => [
  ...checkNumber(fixtures.length, [0, MOST_FIXTURES, 'kinds of lamps'], path),
  ...checkUnique(
    fixtures.map(({ id }) => id),
    path,
  ),
  ...fixtures.flatMap((fixture, i) => checkFixture(fixture, `${path}[${i}]`)),
];

function checkFixture(fixture: Fixture, path: string): readonly Problem[] {
  const problems = [...checkText(fixture.id, `${path}.id`), ...checkBeamChoice(fixture, path)];
  const number = (name: string, value: number, bounds: Bounds) =>
    problems.push(...checkNumber(value, bounds, `${path}.${name}`));
  if ('count' in fixture) problems.push(...checkWhole(fixture.count, COUNT, `${path}.count`));
  if ('lumens_each' in fixture) number('lumens_each', fixture.lumens_each, LUMENS);
  if ('lumens_per_m' in fixture) {
    number('lumens_per_m', fixture.lumens_per_m, LUMENS_PER_M);
    number('width', fixture.width, STRIP_WIDTH);
  }
  if ('diameter' in fixture) number('diameter', fixture.diameter, SIZE);
  if (fixture.kind === 'panel') {
    number('width', fixture.width, SIZE);
    number('length', fixture.length, mm(20, 3000));
  }
  if (fixture.kind === 'pendant') number('height', fixture.height, mm(1200, 4000));
  if ('at' in fixture && fixture.at) {
    if (fixture.at.length !== fixture.count) {
      problems.push({
        code: 'lamp-places',
        text: `${path}.at: ${fixture.at.length} places for ${fixture.count} lamps.`,
        at: { path: `${path}.at` },
        remedy: 'Give one place for each lamp, or none to spread them evenly.',
      });
    }
    fixture.at.forEach(([x, y], i) => {
      number(`at[${i}][0]`, x, mm(0, 12000));
      number(`at[${i}][1]`, y, mm(0, 12000));
    });
  }
  return problems;
}

function checkBeamChoice({ beam }: Fixture, path: string): readonly Problem[] {
  if (beam.kind === 'spread') return checkNumber(beam.angle_deg, BEAM_DEG, `${path}.beam.angle_deg`);
  return beam.kind === 'file' ? checkNumber(beam.turn_deg, [0, 360, 'degrees'], `${path}.beam.turn_deg`) : [];
}
