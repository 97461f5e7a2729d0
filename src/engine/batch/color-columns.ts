import { decodeSrgb, encodeSrgb, linearSrgbFromXyzD65, xyzD65FromLinearSrgb } from '../color/display';
import { labD65FromXyzD65, xyzD65FromLabD65 } from '../color/lab';
import { ROW, rowsOfTriples } from './rows';

// Many colours at once: three numbers per row in one array, no object per row. The functions for one colour are the kernels:
// they are small enough that the compiler writes them into the loop and never makes their records.

/** Three numbers per row, and per row what became of it (see `ROW`). */
export interface ColorColumns {
  readonly values: Float64Array;
  readonly code: Uint8Array;
}

/** CIELAB under D65, 2 degrees, of tristimulus values with Y = 100 for the perfect diffuser. */
export function labD65ColumnsFromXyzD65(xyz: Float64Array): ColorColumns {
  const count = rowsOfTriples(xyz);
  const columns = emptyColumns(count);
  for (let i = 0; i < 3 * count; i += 3) {
    const { l, a, b } = labD65FromXyzD65({ x: xyz[i]!, y: xyz[i + 1]!, z: xyz[i + 2]! });
    writeRow(columns, i, l, a, b);
  }
  return columns;
}

/** Tristimulus values, Y = 100 for the perfect diffuser, of CIELAB under D65, 2 degrees. */
export function xyzD65ColumnsFromLabD65(lab: Float64Array): ColorColumns {
  const count = rowsOfTriples(lab);
  const columns = emptyColumns(count);
  for (let i = 0; i < 3 * count; i += 3) {
    const { x, y, z } = xyzD65FromLabD65({ l: lab[i]!, a: lab[i + 1]!, b: lab[i + 2]! });
    writeRow(columns, i, x, y, z);
  }
  return columns;
}

/** sRGB code values, 0-1 (times 255 for bytes), of tristimulus values; beyond 0-1 for what a screen cannot show. */
export function srgbColumnsFromXyzD65(xyz: Float64Array): ColorColumns {
  const count = rowsOfTriples(xyz);
  const columns = emptyColumns(count);
  for (let i = 0; i < 3 * count; i += 3) {
    const { r, g, b } = linearSrgbFromXyzD65({ x: xyz[i]!, y: xyz[i + 1]!, z: xyz[i + 2]! });
    writeRow(columns, i, encodeSrgb(r), encodeSrgb(g), encodeSrgb(b));
  }
  return columns;
}

/** Tristimulus values, Y = 100 for white, of sRGB code values (0-1). */
export function xyzD65ColumnsFromSrgb(srgb: Float64Array): ColorColumns {
  const count = rowsOfTriples(srgb);
  const columns = emptyColumns(count);
  for (let i = 0; i < 3 * count; i += 3) {
    const linear = { r: decodeSrgb(srgb[i]!), g: decodeSrgb(srgb[i + 1]!), b: decodeSrgb(srgb[i + 2]!) };
    const { x, y, z } = xyzD65FromLinearSrgb(linear);
    writeRow(columns, i, x, y, z);
  }
  return columns;
}

const emptyColumns = (count: number): ColorColumns => ({
  values: new Float64Array(3 * count),
  code: new Uint8Array(count),
});

function writeRow({ values, code }: ColorColumns, at: number, first: number, second: number, third: number): void {
  const isNumber = Number.isFinite(first + second + third);
  values[at] = isNumber ? first : Number.NaN;
  values[at + 1] = isNumber ? second : Number.NaN;
  values[at + 2] = isNumber ? third : Number.NaN;
  if (!isNumber) code[at / 3] = ROW.notANumber;
}
