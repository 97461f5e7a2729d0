import { expect, it } from 'vitest';
import { lampRecord } from '../../src/engine/lamp/lamp-record';
import { TEST_COLOR_SAMPLES } from '../../src/engine/lamp/test-color-samples.data';
import { emissionSpd, GRID_COUNT, reflectanceSpd, wavelengthNm } from '../../src/engine/spectrum/grid';
import { lightById } from '../../src/engine/spectrum/lights';

it('holds the published figures of D65 and FL2 (CIE 15)', () => {
  const d65 = lampRecord(lightById('D65')!);
  expect(d65.xy[0]).toBeCloseTo(0.3127, 4);
  expect(d65.xy[1]).toBeCloseTo(0.329, 4);
  // u', v' of D65: CIE 15:2018, table 5.
  expect(d65.uv[0]).toBeCloseTo(0.1978, 4);
  expect(d65.uv[1]).toBeCloseTo(0.4683, 4);
  expect(Math.abs(d65.cct_k! - 6504)).toBeLessThan(2);
  // Daylight lies above the Planckian locus, by 0.0032 at 6500 K (computed with colour-science 0.4.6).
  expect(d65.duv).toBeCloseTo(0.0032, 4);

  const fl2 = lampRecord(lightById('FL2')!);
  expect(Math.abs(fl2.ra! - 64)).toBeLessThan(0.7);
  expect(fl2.r).toHaveLength(14);
  expect(Math.abs(fl2.r![8]! + 84)).toBeLessThan(1);
  expect('rf' in fl2 || 'rg' in fl2).toBe(false);
});

it('has u prime and v prime as CIE 1976 defines them: 4x and 9y over -2x + 12y + 3', () => {
  const { xy, uv } = lampRecord(lightById('LED-B1')!);
  const [x, y] = xy;
  expect(uv[0]).toBeCloseTo((4 * x) / (-2 * x + 12 * y + 3), 12);
  expect(uv[1]).toBeCloseTo((9 * y) / (-2 * x + 12 * y + 3), 12);
});

it('leaves open what a colored light does not have', () => {
  const green = emissionSpd(Array.from({ length: GRID_COUNT }, (_, i) => (wavelengthNm(i) === 530 ? 1 : 0)));
  const samples = TEST_COLOR_SAMPLES.map(reflectanceSpd);
  const record = lampRecord(green, samples);
  expect(record).toMatchObject({ cct_k: null, duv: null, ra: null, r: null });
  expect('rf' in record || 'rg' in record).toBe(false);
});

it('has the fidelity with samples, and the gamut only where they fill every sector of hue', () => {
  const record = lampRecord(lightById('FL2')!, TEST_COLOR_SAMPLES.map(reflectanceSpd));
  expect(record.rf).toBeGreaterThan(50);
  expect(record.rf).toBeLessThan(90);
  expect('rg' in record).toBe(false);
});
