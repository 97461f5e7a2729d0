import type { Kitchen, Wall } from '../../model/kitchen';
import type { ScheduleRow } from '../schedule/types';
import { elevationOf } from './elevation-of';
import { islandsOf } from './island-of';
import { laidPieces } from './laid-pieces';
import { planOf } from './plan-of';
import type { Drawing } from './types';

/** The walls in the order one looks round from the back wall, to the right. */
const ROUND: readonly Wall[] = ['back', 'right', 'front', 'left'];

/** The drawings of a kitchen whose parts fit its room, laid as its schedule says: plan, walls, island. */
export function drawingsOf(kitchen: Kitchen, rows: readonly ScheduleRow[]): readonly Drawing[] {
  const laid = laidPieces(rows);
  return [planOf(kitchen, rows, laid), ...ROUND.map((wall) => elevationOf(kitchen, wall, laid)), ...islandsOf(kitchen)];
}
