import type { Solid } from '../../engine/light/types';
import type { SurfaceId } from '../../engine/surface';
import type { Plan } from '../plan/types';
import { cooktopExtent, cooktopSide } from './cooktop';
import { boxAt } from './side';
import { bowlExtents, cutOut, sinkSide } from './sink';

/** A place in the top of the counter that another finish takes up, as a box of no height. */
interface CoarseField {
  readonly surface: SurfaceId;
  readonly box: Solid;
}

/** Sink and cooktop as fields in the top of the counter; a sink with an apron reaches to its front. */
export function coarseFields(plan: Plan): readonly CoarseField[] {
  const { top, depth } = plan.counter;
  const bowls = bowlExtents(plan);
  const [first, last] = [bowls[0]!, bowls[bowls.length - 1]!];
  const d = plan.sink.fit === 'apron' ? ([cutOut(plan).d[0], depth] as const) : first.d;
  const sink = boxAt(sinkSide(plan), { a: [first.a[0], last.a[1]], d, z: [top, top] });
  const cooktop = boxAt(cooktopSide(plan), { ...cooktopExtent(plan), z: [top, top] });
  return [
    { surface: 'appliance', box: { min: cooktop[0], max: cooktop[1] } },
    { surface: 'sink', box: { min: sink[0], max: sink[1] } },
  ];
}
