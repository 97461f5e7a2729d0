import type { ItemRecord } from '../../model/order/records';
import { panelSizeOf } from '../../model/panel';
import type { Finish } from '../../model/project';
import { orderOf } from '../../model/quantity/order';
import { layOnSlabs } from '../../model/quantity/slab/lay-on-slabs';
import { type Pack, packOf } from '../../model/quantity/supply-pack';
import { slabSizeOf } from '../../model/slab';
import type { SurfaceTakeoff } from '../takeoff/types';
import { RESTS_ON } from './quantity-words';
import { cutRules, slabPieces } from './slab-pieces';
import type { Counted, ScheduleItem } from './types';

/** What is cut from whole slabs: as many as the pieces ask for when they are laid on them. */
export function cutFromSlabs(
  item: ScheduleItem,
  finish: Finish,
  record: ItemRecord | undefined,
  surfaces: readonly SurfaceTakeoff[],
  measured: Parameters<typeof slabPieces>[3],
): Counted {
  const { assumptions } = measured;
  const panel = panelSizeOf(finish);
  const size = panel ? { size_mm: panel, isUsual: false } : slabSizeOf(finish)!;
  const noun = panel ? 'panel' : 'slab';
  const area_m2 = surfaces.reduce((sum, one) => sum + one.area_m2, 0);
  const laid = layOnSlabs(slabPieces(item, finish, surfaces, measured), cutRules(finish, item.laying, assumptions));
  if (!laid.ok) {
    return {
      quantity: null,
      problems: [{ code: 'slab-too-small', text: `${laid.problem.text} ${laid.problem.remedy}` }],
    };
  }
  const slabs = laid.value;
  const slab_m2 = (size.size_mm[0] * size.size_mm[1]) / 1e6;
  const spare_packs = record?.spare_packs ?? 0;
  const holes = surfaces.reduce(
    (sum, { parts }) => sum + parts.reduce((all, { cutouts_mm = [], count }) => all + count * cutouts_mm.length, 0),
    0,
  );
  const corners = surfaces.reduce((sum, one) => sum + (one.corner_joints ?? 0), 0);
  const order = orderOf(
    { net: slabs.slabs.length, measure: noun, waste_percent: 0, spare_packs },
    (panel ? null : soldBySlab(finish)) ?? { container: null, quantity: 1, measure: noun },
    { slab_m2 },
  );
  return {
    quantity: {
      area_m2,
      net: slabs.slabs.length,
      net_measure: noun,
      waste_percent: 0,
      order,
      rests_on: [
        ...(panel
          ? [RESTS_ON.panel(panel), RESTS_ON.panelCut(assumptions.kerf_mm)]
          : [RESTS_ON.slab(size.size_mm, size.isUsual), RESTS_ON.cut(assumptions.slab_trim_mm, assumptions.kerf_mm)]),
        RESTS_ON.seams(slabs.seams.length, corners, noun),
        ...(slabs.seams.length > 0 ? [RESTS_ON.seamClear(assumptions.seam_clear_mm)] : []),
        ...(slabs.matching?.isKept ? [RESTS_ON.matched(slabs.matching)] : []),
        RESTS_ON.yield(slabs.yield, slabs.slabs.length, slabs.lower_bound, noun),
        ...edgeWords(surfaces),
        ...(holes > 0 ? [RESTS_ON.cutouts(holes)] : []),
      ],
      parts: surfaces.flatMap(({ parts }) => parts),
      slabs: { ...slabs, slab_mm: size.size_mm, noun },
    },
    problems: [
      ...(laid.notices ?? []).map(({ text, remedy }) => ({ code: 'seam-place', text: `${text} ${remedy}` }) as const),
      ...(slabs.matching && !slabs.matching.isKept
        ? [{ code: 'seams-unmatched', text: RESTS_ON.unmatched(slabs.matching) } as const]
        : []),
    ],
  };
}

/** However its price is told, a slab is bought whole. */
function soldBySlab({ supply = {} }: Finish): Pack | null {
  const pack = packOf(supply);
  return pack?.measure === 'slab' ? pack : null;
}

/** Edges that are finished, of the counters alone: an upstand is told by its strips. */
function edgeWords(surfaces: readonly SurfaceTakeoff[]): readonly string[] {
  const counters = surfaces.filter(({ surface }) => surface === 'counter' || surface === 'island-counter');
  const edge_m = counters.reduce((sum, { length_m = 0 }) => sum + length_m, 0);
  return edge_m > 0 ? [RESTS_ON.edges(edge_m)] : [];
}
