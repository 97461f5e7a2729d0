import { checkKitchen } from '../../src/model/check-kitchen';
import type { Project } from '../../src/model/project';
import { demoProject } from '../io/demo';

const demo = demoProject();
const { kitchen } = demo;

/** The demo's finishes in a kitchen that is quick to light: small, with flat fronts, one small window and one ceiling lamp. */
export const smallProject: Project = {
  ...demo,
  kitchen: {
    ...kitchen,
    fronts: { ...kitchen.fronts, style: 'flat' },
    room: { width: 3100, depth: 2400, height: 2200 },
    wall_units: { depth: 300, height: 300, gap_above_counter: 500 },
    tall_height: 1800,
    runs: kitchen.runs.map((run) => (run.wall === 'left' ? { ...run, from: 560, to: 2400 } : { ...run, to: 3100 })),
    sink: { ...kitchen.sink, center: 1000 },
    cooktop: { ...kitchen.cooktop, center: 1250, width: 600 },
    island: { ...kitchen.island!, x: 1300, y: 650, width: 500, depth: 400, seat_overhang: 0, stools: 0 },
    openings: kitchen.openings.map((opening) => ({ ...opening, center: 1000, width: 500, height: 400, leaves: 1 })),
    door: { ...kitchen.door, width: 700, height: 2000 },
    fixtures: kitchen.fixtures.flatMap((fixture) => (fixture.kind === 'panel' ? { ...fixture, count: 1 } : [])),
  },
};
const [misfit] = checkKitchen(smallProject.kitchen, 'kitchen');
if (misfit) throw new Error(`${misfit.text} ${misfit.remedy}`);
