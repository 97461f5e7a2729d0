import { expect, it } from 'vitest';
import {
  labD65ColumnsFromXyzD65,
  srgbColumnsFromXyzD65,
  xyzD65ColumnsFromLabD65,
  xyzD65ColumnsFromSrgb,
} from '../../src/engine/batch/color-columns';
import { colorRecordColumns } from '../../src/engine/batch/component-columns';
import { namingColumns } from '../../src/engine/batch/naming-columns';
import { lrvColumn, reflectanceColumns } from '../../src/engine/batch/reflectance-columns';
import { ROW } from '../../src/engine/batch/rows';
import { encodeSrgb, linearSrgbFromXyzD65, xyzD65FromLinearSrgb } from '../../src/engine/color/display';
import { labD65FromXyzD65, xyzD65FromLabD65 } from '../../src/engine/color/lab';
import { lrvFromReflectance } from '../../src/engine/color/lrv';
import { plausibleReflectance } from '../../src/engine/finish/plausible-reflectance';
import { isccNbsName } from '../../src/engine/naming/iscc-nbs';
import { UNDERTONE_LEVELS, undertoneOf } from '../../src/engine/naming/undertone';
import { mulberry32 } from '../../src/engine/random';

const ROWS = 400;
const random = mulberry32(31);
const LAB = Float64Array.from({ length: 3 * ROWS }, (_, i) => (i % 3 ? 30 * (2 * random() - 1) : 10 + 85 * random()));
const labAt = (row: number) => ({ l: LAB[3 * row]!, a: LAB[3 * row + 1]!, b: LAB[3 * row + 2]! });
const classAt = (row: number) => (row % 3 ? 'stone' : 'wood');

it('converts columns as it converts one colour, to the last digit', () => {
  const xyz = xyzD65ColumnsFromLabD65(LAB).values;
  const lab = labD65ColumnsFromXyzD65(xyz).values;
  const srgb = srgbColumnsFromXyzD65(xyz).values;
  const back = xyzD65ColumnsFromSrgb(srgb).values;
  for (let row = 0; row < ROWS; row++) {
    const one = xyzD65FromLabD65(labAt(row));
    const [at, end] = [3 * row, 3 * row + 3];
    expect([...xyz.slice(at, end)]).toEqual([one.x, one.y, one.z]);
    const again = labD65FromXyzD65(one);
    expect([...lab.slice(at, end)]).toEqual([again.l, again.a, again.b]);
    const linear = linearSrgbFromXyzD65(one);
    expect([...srgb.slice(at, end)]).toEqual([encodeSrgb(linear.r), encodeSrgb(linear.g), encodeSrgb(linear.b)]);
    const shown = xyzD65FromLinearSrgb(linear);
    // The transfer curve there and back costs some digits.
    expect(Math.abs(back[at]! - shown.x)).toBeLessThan(1e-10);
    expect(Math.abs(back[at + 2]! - shown.z)).toBeLessThan(1e-10);
  }
});

it('fits the same curves, and reads the same LRV from them', () => {
  const { rho, code } = reflectanceColumns(LAB, classAt);
  const lrv = lrvColumn(rho);
  for (let row = 0; row < ROWS; row++) {
    const alone = plausibleReflectance(xyzD65FromLabD65(labAt(row)), classAt(row));
    expect(code[row] === ROW.ok).toBe(alone.ok);
    if (!alone.ok) continue;
    expect([...rho.slice(81 * row, 81 * row + 81)]).toEqual([...alone.value.rho]);
    expect(lrv[row]).toBe(lrvFromReflectance(alone.value.rho));
  }
});

it('names as undertoneOf does', () => {
  const { munsell, block, strength, level, code } = namingColumns(LAB);
  for (let row = 0; row < ROWS; row++) {
    const alone = undertoneOf(labAt(row));
    expect(code[row]).toBe(ROW.ok);
    expect([...munsell.slice(3 * row, 3 * row + 3)]).toEqual([
      alone.munsell.hue100,
      alone.munsell.value,
      alone.munsell.chroma,
    ]);
    expect(block[row]).toBe(isccNbsName(alone.munsell).block);
    expect([strength[row], UNDERTONE_LEVELS[level[row]!]]).toEqual([alone.strength, alone.level]);
  }
});

it('marks rows that are no numbers or no surface, and leaves their neighbours alone', () => {
  // biome-ignore format: a row each
  const lab = Float64Array.of(
    50, 1, 2,
    Number.NaN, 0, 0,
    60, Number.POSITIVE_INFINITY, 0,
    97, 0, 130,
    50, 1, 2,
    1e300, 0, 0,
  );
  const { code, rho, lrv, names } = colorRecordColumns(lab, () => 'stone');
  expect([...code]).toEqual([ROW.ok, ROW.notANumber, ROW.notANumber, ROW.outsideSolid, ROW.ok, ROW.notANumber]);
  expect([...lrv].map(Number.isFinite)).toEqual([true, false, false, false, true, false]);
  expect(rho.slice(0, 81)).toEqual(rho.slice(4 * 81, 5 * 81));
  expect([...names.block].map((block) => block > 0)).toEqual([true, false, false, false, true, false]);
  expect([...xyzD65ColumnsFromLabD65(lab).code]).toEqual([0, 1, 1, 0, 0, 1]);
});

it('throws when columns are cut short', () => {
  expect(() => namingColumns(new Float64Array(4))).toThrow(RangeError);
  expect(() => labD65ColumnsFromXyzD65(new Float64Array(5))).toThrow(RangeError);
  expect(() => lrvColumn(new Float64Array(80))).toThrow(RangeError);
});
