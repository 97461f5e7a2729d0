import type { Problem } from '../engine/result';
import { type Bounds, checkNumber } from './check-number';
import type { KitchenSite } from './kitchen';
import type { Daylight, Project } from './project';
import { lightOfProject } from './project-lights';

/** The unobstructed horizontal under the brightest overcast skies has some 50 klx (common practice, no source). */
const SKY_LX: Bounds = [0, 100_000, 'lx'];

/** What is wrong with the daylight of a setting. */
export function checkDaylight(daylight: Daylight, path: string, project: Pick<Project, 'lamps'>): readonly Problem[] {
  const { month, day, hour, blind, sky_lx, light } = daylight;
  const problems = [
    ...checkNumber(month, [1, 12, ''], `${path}.month`),
    ...checkNumber(day, [1, 31, ''], `${path}.day`),
    ...checkNumber(hour, [0, 24, 'h'], `${path}.hour`),
    ...checkNumber(blind, [0, 1, ''], `${path}.blind`),
    ...(sky_lx === undefined ? [] : checkNumber(sky_lx, SKY_LX, `${path}.sky_lx`)),
  ];
  if (problems.length === 0 && !isDate(month, day)) {
    problems.push({
      code: 'no-such-day',
      text: `${path}.day: month ${month} has no day ${day}.`,
      at: { path: `${path}.day` },
      remedy: 'Give a day of that month.',
    });
  }
  if (light !== undefined) {
    const found = lightOfProject(project, light);
    const at = `${path}.light`;
    if (!found.ok) problems.push({ ...found.problem, text: `${at}: ${found.problem.text}`, at: { path: at } });
  }
  return problems;
}

const DAYS = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

const isDate = (month: number, day: number): boolean =>
  Number.isInteger(month) && Number.isInteger(day) && day <= DAYS[month - 1]!;

/** What is wrong with the place of a house. */
export const checkSite = (site: KitchenSite, path: string): readonly Problem[] => [
  ...checkNumber(site.latitude_deg, [-90, 90, 'degrees'], `${path}.latitude_deg`),
  ...checkNumber(site.longitude_deg, [-180, 180, 'degrees'], `${path}.longitude_deg`),
  ...checkNumber(site.utc_offset_h, [-14, 14, 'h'], `${path}.utc_offset_h`),
  ...checkNumber(site.bearing_deg, [0, 360, 'degrees'], `${path}.bearing_deg`),
];
