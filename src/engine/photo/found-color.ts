import { labD65FromXyzD65 } from '../color/lab';
import type { Lab } from '../color/types';

/** The blocks of a sample with their colors under D65: three numbers each. */
export interface SampleBlocks {
  /** 1 where a block is to be looked at. */
  readonly use: Uint8Array;
  readonly xyz: Float64Array;
  readonly lab: Float64Array;
  /** Usual CIELAB difference of neighbors within one color. */
  readonly restless: number;
}

/** A color that was found: its mean in linear light. */
export interface FoundColor {
  readonly xyz: readonly [number, number, number];
  readonly lab: Lab<'D65-2'>;
}

/** Mean in linear light of the blocks that `use` marks; there must be one. */
export function meanOf(use: Uint8Array, xyz: Float64Array): FoundColor {
  const sum: [number, number, number] = [0, 0, 0];
  let count = 0;
  for (let at = 0; at < use.length; at++) {
    if (!use[at]) continue;
    for (let c = 0; c < 3; c++) sum[c]! += xyz[3 * at + c]!;
    count++;
  }
  const [x, y, z] = sum.map((value) => value / count) as [number, number, number];
  return { xyz: [x, y, z], lab: labD65FromXyzD65({ x, y, z }) };
}
