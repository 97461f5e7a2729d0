import { expect, it } from 'vitest';
import { differenceCiede2000 } from '../../src/engine/color/difference';
import { whiteOf, xyzFromEmission } from '../../src/engine/color/xyz';
import {
  BAND_CENTER_NM,
  BAND_COUNT,
  bandColorMatrix,
  bandMeansFromReflectance,
  directColor,
  expandBands,
} from '../../src/engine/light/bands';
import { installedLab, irradianceSpectrum } from '../../src/engine/light/reading';
import { solveGroup } from '../../src/engine/light/solve';
import { buildTransport } from '../../src/engine/light/transport';
import { emissionSpd, reflectanceSpd, wavelengthNm } from '../../src/engine/spectrum/grid';
import { lightById } from '../../src/engine/spectrum/lights';
import { observer2 } from '../../src/engine/spectrum/observers';
import { perLux } from '../../src/engine/spectrum/per-lux';
import { checkRoom } from './light-check-room';

const rises = (low: number, high: number, nm: number, width: number): number[] =>
  Array.from({ length: 81 }, (_, i) => low + (high - low) / (1 + Math.exp((nm - wavelengthNm(i)) / width)));
const peaks = (base: number, top: number, nm: number, width: number): number[] =>
  Array.from({ length: 81 }, (_, i) => base + top * Math.exp(-(((wavelengthNm(i) - nm) / width) ** 2)));

/** Plausible finishes, one per surface of the check room: smooth, as paints, woods and stones are. */
const FINISHES = [
  rises(0.45, 0.86, 405, 10),
  rises(0.4, 0.75, 430, 25),
  rises(0.55, 0.3, 520, 40),
  peaks(0.2, 0.22, 530, 60),
  rises(0.45, 0.56, 500, 60),
  rises(0.07, 0.35, 600, 40),
  rises(0.5, 0.8, 430, 20),
  rises(0.1, 0.5, 570, 35),
].map(reflectanceSpd);

it('24 bands give the colours of 81 samples within 0.2 CIEDE2000, every surface, under smooth and spiky lamps', () => {
  const { room } = checkRoom();
  const transport = buildTransport(room, { patchSize: 0.6 });
  const direct = transport.direct[0]!;
  const few = Float32Array.from(FINISHES.flatMap((rho) => [...bandMeansFromReflectance(rho)]));
  const all = Float32Array.from(FINISHES.flatMap((rho) => [...rho]));
  const b24 = solveGroup(transport, few, direct);
  const b81 = solveGroup(transport, all, direct, { bands: 81 });
  let worst = 0;
  for (const id of ['A', 'D65', 'FL2', 'FL11', 'LED-B3', 'LED-RGB1']) {
    const spectrum = perLux(lightById(id)!);
    const white = whiteOf(spectrum, observer2);
    for (let patch = 0; patch < transport.patches.count; patch += 5) {
      const surface = transport.patches.surface[patch]!;
      if (surface < 0) continue;
      const t24 = indirectAt(transport.factors, patch, b24, BAND_COUNT);
      const t81 = indirectAt(transport.factors, patch, b81, 81);
      const got = irradianceSpectrum([spectrum], [1], [direct[patch]!], [t24]);
      const exact = emissionSpd(spectrum.map((s, i) => s * (direct[patch]! + t81[i]!)));
      for (const rho of [null, FINISHES[surface]!]) {
        worst = Math.max(worst, differenceCiede2000(installedLab(got, rho, white), installedLab(exact, rho, white)));
      }
    }
  }
  expect(worst).toBeLessThan(0.2);
});

function indirectAt(
  rows: { start: Uint32Array; column: Uint32Array; value: Float32Array },
  row: number,
  radiosity: Float32Array,
  bands: number,
): Float64Array {
  const sum = new Float64Array(bands);
  for (let e = rows.start[row]!; e < rows.start[row + 1]!; e++) {
    for (let k = 0; k < bands; k++) sum[k]! += rows.value[e]! * radiosity[rows.column[e]! * bands + k]!;
  }
  return sum;
}

it('band centres rise from 380 to 780 nm, and equal bands stay equal on 81 samples', () => {
  for (let k = 1; k < BAND_COUNT; k++) expect(BAND_CENTER_NM[k]!).toBeGreaterThan(BAND_CENTER_NM[k - 1]!);
  for (const value of expandBands(new Float64Array(BAND_COUNT).fill(0.7))) expect(value).toBeCloseTo(0.7, 12);
});

it('the cubic passes through the centres and keeps straight lines straight between them', () => {
  const line = expandBands(BAND_CENTER_NM);
  for (let i = 0; i < 81; i++) {
    const nm = wavelengthNm(i);
    if (nm < BAND_CENTER_NM[0]! || nm > BAND_CENTER_NM[BAND_COUNT - 1]!) continue;
    expect(line[i]!).toBeCloseTo(nm, 9);
  }
});

it('the colour matrix is the tristimulus sum over the expanded spectrum', () => {
  const spectrum = perLux(lightById('FL11')!);
  const rho = FINISHES[7]!;
  const t = Array.from({ length: BAND_COUNT }, (_, k) => 40 + 10 * Math.sin(k));
  const matrix = bandColorMatrix(spectrum, rho, observer2);
  const expanded = expandBands(t);
  const xyz = xyzFromEmission(emissionSpd(spectrum.map((s, i) => s * rho[i]! * expanded[i]!)), observer2);
  [xyz.x, xyz.y, xyz.z].forEach((expected, c) => {
    expect(t.reduce((sum, value, k) => sum + value * matrix[3 * k + c]!, 0)).toBeCloseTo(expected, 9);
  });
  expect(directColor(spectrum, null, observer2)[1]!).toBeCloseTo(1, 12);
});
