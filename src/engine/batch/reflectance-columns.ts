import { xyzD65FromLabD65 } from '../color/lab';
import { lrvAt } from '../color/lrv';
import { writePlausibleReflectance } from '../finish/plausible-reflectance';
import type { FinishClass } from '../finish/types';
import { GRID_COUNT } from '../spectrum/grid';
import { ROW, rowsOfTriples } from './rows';

/** Curves of many colours, 81 numbers per row (380-780 nm at 5 nm). */
export interface ReflectanceColumns {
  readonly rho: Float64Array;
  /** See `ROW`. */
  readonly code: Uint8Array;
}

/**
 * The curve each CIELAB colour under D65, 2 degrees (three numbers per row) is computed with, as `plausibleReflectance` makes
 * it; `classAt` says what material a row is of.
 */
export function reflectanceColumns(lab: Float64Array, classAt: (row: number) => FinishClass): ReflectanceColumns {
  const count = rowsOfTriples(lab);
  const rho = new Float64Array(GRID_COUNT * count);
  const code = new Uint8Array(count);
  for (let row = 0; row < count; row++) {
    const xyz = xyzD65FromLabD65({ l: lab[3 * row]!, a: lab[3 * row + 1]!, b: lab[3 * row + 2]! });
    if (!writePlausibleReflectance(xyz, classAt(row), rho, GRID_COUNT * row)) {
      rho.fill(Number.NaN, GRID_COUNT * row, GRID_COUNT * (row + 1));
      code[row] = Number.isFinite(xyz.x + xyz.y + xyz.z) ? ROW.outsideSolid : ROW.notANumber;
    }
  }
  return { rho, code };
}

/** Light reflectance values, 0-100, of curves with 81 numbers per row. */
export function lrvColumn(rho: Float64Array): Float64Array {
  if (rho.length % GRID_COUNT !== 0) throw new RangeError(`${rho.length} numbers are no curves of ${GRID_COUNT}`);
  const lrv = new Float64Array(rho.length / GRID_COUNT);
  for (let row = 0; row < lrv.length; row++) lrv[row] = lrvAt(rho, GRID_COUNT * row);
  return lrv;
}
