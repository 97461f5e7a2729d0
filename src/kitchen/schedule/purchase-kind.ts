import type { SurfaceId } from '../../engine/surface';
import { isTiled } from '../../model/laying';
import { isBoard } from '../../model/layouts';
import { type FittingStage, STAGE_OF } from '../../model/order/stages';
import { panelSizeOf } from '../../model/panel';
import type { Finish, Laying } from '../../model/project';
import type { PurchaseKind } from '../../model/quantity/usual-waste';
import { slabSizeOf } from '../../model/slab';

const COUNTED: readonly SurfaceId[] = ['hardware', 'sink', 'tap', 'appliance'];
const FRONTS: readonly SurfaceId[] = ['base-fronts', 'wall-fronts', 'tall-fronts', 'island-fronts'];
/** What is cut from slabs where its finish comes in some. */
const CUT: readonly SurfaceId[] = ['counter', 'island-counter', 'upstand', 'backsplash'];

/** How a finish is bought for a surface. */
export function purchaseKind(finish: Finish, laying: Laying, surface: SurfaceId): PurchaseKind {
  if (COUNTED.includes(surface)) return 'count';
  if (finish.class === 'paint') return 'coat';
  if (FRONTS.includes(surface)) return 'fronts';
  if (surface === 'plinth') return 'strip';
  if (isTiled(finish, laying)) return 'tiles';
  if (laying.layout !== 'plain' && isBoard(finish)) return 'boards';
  if (surface === 'frame') return 'count';
  return CUT.includes(surface) && (slabSizeOf(finish) ?? panelSizeOf(finish)) ? 'slab' : 'sheet';
}

/** When it is put in: what is cut from slabs comes with the counter, what is tiled with the backsplash. */
export function stageOfItem(surface: SurfaceId, kind: PurchaseKind): FittingStage {
  if (surface === 'floor') return 'floor';
  if (kind === 'slab') return 'counter';
  return kind === 'tiles' ? 'backsplash' : STAGE_OF[surface];
}
