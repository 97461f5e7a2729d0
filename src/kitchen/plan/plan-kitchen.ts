import type { Kitchen, Opening } from '../../model/kitchen';
import { type LampPlace, lampPlaces } from '../../model/layout/lamp-places';
import { HOOD } from '../../model/layout/measures';
import { PANEL, planRows } from '../../model/layout/plan-rows';
import type { Row, Span } from '../../model/layout/types';
import type { Plan, PlannedLamp, PlannedOpening } from './types';

/** Counter front per seat, mm. Planning guidelines: 610. */
const SEAT_WIDTH = 600;

/**
 * Works out where every part of the kitchen goes. Input in mm, output in m.
 * Expects a kitchen that fits its room (see checkKitchen); throws when not even a cooktop fits the back wall.
 */
export function planKitchen(kitchen: Kitchen): Plan {
  const { room, base, island, door } = kitchen;
  const rows = planRows(kitchen);
  const bottom = base.plinth_height + base.carcass_height;
  const top = bottom + kitchen.counter.thickness;
  const wallBottom = top + kitchen.wall_units.gap_above_counter;
  const { overhang } = kitchen.counter;
  const seats = Math.floor(island.width / SEAT_WIDTH);
  return {
    width: m(room.width),
    depth: m(room.depth),
    height: m(room.height),
    fivePiece: kitchen.fronts === 'five-piece',
    panel: m(PANEL),
    plinth: { top: m(base.plinth_height), recess: m(base.plinth_recess) },
    counter: {
      bottom: m(bottom),
      top: m(top),
      depth: m(kitchen.counter.depth),
      overhang: m(overhang),
      thickness: m(kitchen.counter.thickness),
    },
    baseDepth: m(base.depth),
    left: { ...row(rows.left), end: m(rows.left.end), sink: span(rows.left.sink) },
    back: { ...row(rows.back), to: m(rows.back.to), cooktop: span(rows.back.cooktop) },
    wallUnits: {
      bottom: m(wallBottom),
      top: m(wallBottom + kitchen.wall_units.height),
      depth: m(kitchen.wall_units.depth),
      rows: rows.wall.map((r) => ({ ...row(r), ...span(r) })),
    },
    hood: { ...span(rows.back.cooktop), bottom: m(top + HOOD.clearance) },
    tall: {
      top: m(kitchen.tall_height),
      panel: span(rows.tall.panel),
      oven: span(rows.tall.oven),
      fridge: span(rows.tall.fridge),
    },
    island: {
      counter: { x0: m(island.x), x1: m(island.x + island.width), y0: m(island.y), y1: m(island.y + island.depth) },
      body: {
        x0: m(island.x + overhang),
        x1: m(island.x + island.width - overhang),
        y0: m(island.y + island.seat_overhang),
        y1: m(island.y + island.depth - overhang),
      },
      panel: m(rows.island.panel),
      row: row(rows.island.row),
      stools: Array.from({ length: seats }, (_, i) => m(island.x + (island.width * (i + 0.5)) / seats)),
    },
    openings: kitchen.openings.map(planOpening),
    door: {
      from: m(room.width - door.from_right - door.width),
      to: m(room.width - door.from_right),
      height: m(door.height),
    },
    skirting: m(kitchen.skirting_height),
    upstand: m(kitchen.upstand_height),
    lamps: lampPlaces(kitchen, rows).map(planLamp),
  };
}

const m = (mm: number): number => mm / 1000;

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
