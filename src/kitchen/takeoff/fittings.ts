import { HOOD } from '../../model/layout/measures';
import { cooktopExtent } from '../parts/cooktop';
import { frontFields } from '../parts/front-fields';
import { shelfBoards } from '../parts/shelves';
import type { Plan } from '../plan/types';
import { bracketPlaces } from '../props/shelf-brackets';
import { type Drawn, furniture } from './drawn';
import { grouped, type Part } from './measured-parts';
import type { SurfaceTakeoff } from './types';

/**
 * Handles, counted; where fronts have none, grip rails, counted and by their length. Levers of doors and brackets of shelves, drawn
 * in the same finish, are among the parts but not in the count: it is 0 where fronts are neither pulled nor gripped.
 */
export function measureHardware(drawn: Drawn): SurfaceTakeoff {
  const handles = furniture(drawn)
    .flatMap(({ bars }) => bars)
    .filter(({ surface }) => surface === 'hardware')
    .map(({ from, to }): Part => ({ kind: 'handle', length: Math.hypot(...from.map((c, k) => c - to[k]!)), width: 0 }));
  const rails = furniture(drawn)
    .flatMap(({ made }) => made)
    .filter(({ surface }) => surface === 'hardware');
  const length = rails.reduce((sum, rail) => sum + rail.length, 0);
  return {
    ...counted('hardware', handles.length + rails.length),
    parts: grouped([...handles, ...rails, ...levers(drawn.plan), ...brackets(drawn.plan)]),
    ...(rails.length > 0 && { length_m: length }),
  };
}

const things = (kind: Part['kind'], count: number): Part[] =>
  Array.from({ length: count }, () => ({ kind, length: 0, width: 0 }));

/** One on the door of the room, one on each glazed door. */
const levers = ({ openings }: Plan): Part[] =>
  things('lever', 1 + openings.filter(({ kind }) => kind === 'glazed-door').length);

const brackets = (plan: Plan): Part[] =>
  things(
    'bracket',
    shelfBoards(plan).reduce((sum, { extent }) => sum + bracketPlaces(extent).length, 0),
  );

/** The sink, whatever bowls it has, and its tap. */
export const measureSink = (): SurfaceTakeoff[] => [counted('sink', 1), counted('tap', 1)];

/** Appliances that show; one behind a front is none of this finish. */
export function measureAppliances(plan: Plan): SurfaceTakeoff {
  const { a, d } = cooktopExtent(plan);
  const shown: Part[] = [{ kind: 'cooktop', length: a[1] - a[0], width: d[1] - d[0] }];
  for (const field of plan.runs.flatMap((run) => frontFields(plan, run))) {
    if (field.kind === 'apron') continue;
    shown.push({ kind: field.kind, length: field.a[1] - field.a[0], width: field.z[1] - field.z[0] });
  }
  const { hood } = plan;
  if (hood) {
    const high = hood.kind === 'canopy' ? HOOD.canopy.height / 1000 : 0;
    shown.push({ kind: 'hood', length: hood.to - hood.from, width: high });
  }
  return { ...counted('appliance', shown.length), parts: grouped(shown) };
}

const counted = (surface: SurfaceTakeoff['surface'], count: number): SurfaceTakeoff => ({
  surface,
  area_m2: 0,
  gross_m2: 0,
  deductions: [],
  parts: [],
  count,
});
