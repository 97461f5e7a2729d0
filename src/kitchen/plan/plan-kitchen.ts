import type { Kitchen, Opening, OpenSide } from '../../model/kitchen';
import { hoodPlace } from '../../model/layout/hood-place';
import { islandBody } from '../../model/layout/island-row';
import { type LampPlace, lampPlaces } from '../../model/layout/lamp-places';
import { PANEL } from '../../model/layout/measures';
import { planRows } from '../../model/layout/plan-rows';
import type { IslandRows, Row, Rows, RunRows, Span } from '../../model/layout/types';
import type { Footprint, Plan, PlannedIsland, PlannedLamp, PlannedOpening } from './types';

/**
 * Works out where every part of the kitchen goes. Input in mm, output in m; the run on the back wall comes first.
 * Expects a kitchen that fits its room (see checkKitchen); throws when its modules do not fit its runs.
 */
export function planKitchen(kitchen: Kitchen): Plan {
  const { room, base, door, sink, cooktop } = kitchen;
  const rows = planRows(kitchen);
  const bottom = base.plinth_height + base.carcass_height;
  const top = bottom + kitchen.counter.thickness;
  const wallBottom = top + kitchen.wall_units.gap_above_counter;
  const hood = hoodPlace(kitchen, rows);
  return {
    width: m(room.width),
    depth: m(room.depth),
    height: m(room.height),
    fronts: kitchen.fronts,
    panel: m(PANEL),
    plinth: { top: m(base.plinth_height), recess: m(base.plinth_recess) },
    counter: {
      bottom: m(bottom),
      top: m(top),
      depth: m(kitchen.counter.depth),
      overhang: m(kitchen.counter.overhang),
      thickness: m(kitchen.counter.thickness),
      edge: kitchen.counter.edge,
    },
    baseDepth: m(base.depth),
    runs: [...rows.runs].sort(backFirst).map(runInMeters),
    wallUnits: {
      bottom: m(wallBottom),
      top: m(wallBottom + kitchen.wall_units.height),
      depth: m(kitchen.wall_units.depth),
    },
    tallTop: m(kitchen.tall_height),
    sink: {
      run: sink.run,
      bowls: sink.bowls,
      fit: sink.fit,
      tap: sink.tap,
      module: span(moduleOn(rows, sink.run, 'sink')),
    },
    cooktop: {
      run: cooktop.run,
      kind: cooktop.kind,
      oven_below: cooktop.oven_below,
      module: span(moduleOn(rows, cooktop.run, 'cooktop')),
    },
    hood: hood && { ...span(hood), run: hood.run, kind: hood.kind, bottom: m(hood.bottom) },
    dishwasher: kitchen.dishwasher,
    fridge: kitchen.fridge,
    island: planIsland(kitchen, rows.island),
    openings: kitchen.openings.map(planOpening),
    openSide: kitchen.open_side && planOpenSide(kitchen.open_side),
    door: {
      from: m(room.width - door.from_right - door.width),
      to: m(room.width - door.from_right),
      height: m(door.height),
    },
    skirting: m(kitchen.skirting_height),
    upstand: m(kitchen.upstand_height),
    lamps: lampPlaces(kitchen, rows).map(planLamp),
    objects: kitchen.objects,
  };
}

const m = (mm: number): number => mm / 1000;

/** Numbers of pieces, and with them the cut of each front from its sheet, start at the back wall. */
const backFirst = (a: RunRows, b: RunRows): number => Number(b.wall === 'back') - Number(a.wall === 'back');

/** The module that carries the sink or the cooktop. */
function moduleOn({ runs }: Rows, wall: RunRows['wall'], what: 'sink' | 'cooktop'): Span {
  const module = runs.find((run) => run.wall === wall)?.[what];
  if (!module) throw new Error(`no module for the ${what} on the ${wall} wall`);
  return module;
}

const runInMeters = (run: RunRows): RunRows => ({
  wall: run.wall,
  ends: run.ends,
  counter: span(run.counter),
  base: { ...span(run.base), ...row(run.base) },
  panels: run.panels.map(span),
  tall: run.tall.map((block) => ({
    ...span(block),
    end: block.end,
    panels: block.panels.map(span),
    units: block.units.map((unit) => ({ ...span(unit), kind: unit.kind })),
    fillers: block.fillers.map(span),
  })),
  over: run.over.map((over) => ({ ...span(over), ...row(over) })),
  shelves: run.shelves.map(span),
  splash: { ...span(run.splash), kind: run.splash.kind },
  sink: run.sink && span(run.sink),
  cooktop: run.cooktop && span(run.cooktop),
});

function planIsland(kitchen: Kitchen, rows: IslandRows | null): PlannedIsland | null {
  const { island } = kitchen;
  if (!island || !rows) return null;
  const { x, y, width, depth, stools } = island;
  const body = islandBody(kitchen, island);
  return {
    joined: island.joined,
    waterfall: island.waterfall,
    counter: footprint({ from: x, to: x + width }, { from: y, to: y + depth }),
    body: footprint(body.x, body.y),
    panel: m(rows.panel),
    row: row(rows.row),
    stools: Array.from({ length: stools }, (_, i) => m(x + (width * (i + 0.5)) / stools)),
  };
}

const footprint = (x: Span, y: Span): Footprint => ({ x0: m(x.from), x1: m(x.to), y0: m(y.from), y1: m(y.to) });

const planOpenSide = ({ wall, from, to, height, next_depth }: OpenSide): Plan['openSide'] => ({
  ...span({ from, to }),
  wall,
  height: m(height),
  nextDepth: m(next_depth),
});

const planOpening = ({ center, width, sill, height, reveal, ...opening }: Opening): PlannedOpening => ({
  ...opening,
  from: m(center - width / 2),
  to: m(center + width / 2),
  sill: m(sill),
  head: m(sill + height),
  reveal: m(reveal),
});

const planLamp = ({ fixture, x, y, face }: LampPlace): PlannedLamp => ({
  fixture,
  face: {
    x0: m(x - face.width / 2),
    x1: m(x + face.width / 2),
    y0: m(y - face.depth / 2),
    y1: m(y + face.depth / 2),
  },
  z: m(face.z),
  looks: face.looks,
});

const span = (s: Span): Span => ({ from: m(s.from), to: m(s.to) });

const row = (r: Row): Row => ({
  units: r.units.map((u) => ({ ...u, from: m(u.from), to: m(u.to) })),
  fillers: r.fillers.map(span),
});
