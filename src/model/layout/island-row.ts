import type { Island, Kitchen } from '../kitchen';
import { CORNER_FILLER, PANEL, WALL_FILLER } from './measures';
import { longestRow } from './module-widths';
import { meetsPeninsula } from './run-ends';
import { WIDEST_DOOR } from './stand-units';
import type { IslandRows, Span, Unit } from './types';

/** Footprint of an island's units with their panels, mm from the front left corner: the counter overhangs free sides and seats. */
export interface IslandBody {
  readonly x: Span;
  readonly y: Span;
}

export function islandBody({ counter }: Pick<Kitchen, 'counter'>, island: Island): IslandBody {
  const { x, y, width, depth, joined } = island;
  return {
    x: {
      from: x + (joined === 'left' ? 0 : endInset(counter, island, 'left')),
      to: x + width - (joined === 'right' ? 0 : endInset(counter, island, 'right')),
    },
    y: { from: y + island.seat_overhang, to: y + depth - counter.overhang },
  };
}

/** From the end of the counter to the end panel; behind a waterfall end the panel stands against the slab. */
function endInset({ overhang, thickness }: Kitchen['counter'], { waterfall }: Island, end: 'left' | 'right'): number {
  return waterfall === end || waterfall === 'both' ? Math.max(overhang, thickness) : overhang;
}

/**
 * Units of the island's working side, towards the back wall; its end panels share what modules leave, or the filler at the
 * wall a peninsula joins takes it. Null when no unit fits.
 */
export function islandRow(kitchen: Kitchen, island: Island): IslandRows | null {
  const { region, base } = kitchen;
  const { from, to } = islandBody(kitchen, island).x;
  const { joined } = island;
  if (!joined) {
    const inner = to - from;
    const widths = longestRow(region, inner - 2 * PANEL);
    if (widths.length === 0) return null;
    const panel = (inner - sum(widths)) / 2;
    return { row: { units: stand(from + panel, widths), fillers: [] }, panel };
  }
  // In the corner with the run on that wall nothing opens.
  const [dead, filler] = meetsPeninsula(kitchen) ? [base.depth, CORNER_FILLER] : [0, WALL_FILLER];
  const inner = to - from - dead - PANEL;
  const widths = longestRow(region, inner - filler);
  if (widths.length === 0) return null;
  const left = inner - sum(widths);
  const isLeft = joined === 'left';
  const start = isLeft ? from + dead : to - dead;
  const first = isLeft ? start + left : from + PANEL;
  const closes = isLeft ? { from: start, to: start + left } : { from: start - left, to: start };
  return { row: { units: stand(first, widths), fillers: [closes] }, panel: PANEL };
}

/** Drawers and doors by turns. */
function stand(from: number, widths: readonly number[]): Unit[] {
  let at = from;
  return widths.map((width, i): Unit => {
    const kind = i % 2 === 0 ? 'drawers' : width > WIDEST_DOOR ? 'pair' : 'door';
    const unit: Unit = { kind, from: at, to: at + width, handle: 'high' };
    at += width;
    return unit;
  });
}

const sum = (widths: readonly number[]): number => widths.reduce((total, width) => total + width, 0);
