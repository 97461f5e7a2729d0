import { expect, it } from 'vitest';
import { whiteOf, xyzFromEmission } from '../../src/engine/color/xyz';
import { BAND_COUNT, bandMeansFromReflectance } from '../../src/engine/light/bands';
import { buildNodes } from '../../src/engine/light/nodes';
import { installedLab, irradianceSpectrum } from '../../src/engine/light/reading';
import { solveGroup } from '../../src/engine/light/solve';
import { surfaceLights } from '../../src/engine/light/surface-light';
import { type TintSource, tintSources } from '../../src/engine/light/tint-source';
import { buildTransport } from '../../src/engine/light/transport';
import { emissionSpd, reflectanceSpd, wavelengthNm } from '../../src/engine/spectrum/grid';
import { lightById } from '../../src/engine/spectrum/lights';
import { observer2 } from '../../src/engine/spectrum/observers';
import { perLux } from '../../src/engine/spectrum/per-lux';
import { boxRects, ceilingLamp, roomOf } from './box-room';

const room = roomOf(boxRects(3, 3, 2.5, [0, 1, 2, 2, 2, 2]), { lamps: [ceilingLamp(1.5, 1.5, 2.5, 0.5, 3000)] }, [
  'floor',
  'ceiling',
  'wall',
]);
const transport = buildTransport(room, { patchSize: 0.5 });
const lights = surfaceLights(room, transport, buildNodes(room, transport, { spacing: 0.5 }));
const spectrum = perLux(lightById('D65')!);
const white = whiteOf(spectrum, observer2);

const warm = reflectanceSpd(
  Array.from({ length: 81 }, (_, i) => 0.1 + 0.5 / (1 + Math.exp((580 - wavelengthNm(i)) / 30))),
);
const gray = (value: number) => reflectanceSpd(new Float64Array(81).fill(value));

function sources(finishes: readonly ReturnType<typeof gray>[]): TintSource[][] {
  const reflectance = Float32Array.from(finishes.flatMap((rho) => [...bandMeansFromReflectance(rho)]));
  const radiosity = [solveGroup(transport, reflectance, transport.direct[0]!)];
  const scheme = { reflectance, spectra: [spectrum], levels: [1], radiosity, adoptedWhite: white };
  const steps = tintSources(transport, scheme, lights);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

it('in a gray room with a warm floor, the floor is the whole source of every tint, towards red and yellow', () => {
  const found = sources([warm, gray(0.8), gray(0.6)]);
  found.forEach((list) => {
    expect(list[0]!.surface).toBe(0);
    expect(list[0]!.share).toBeGreaterThan(0.99);
    expect(list[0]!.da).toBeGreaterThan(0);
    expect(list[0]!.db).toBeGreaterThan(0);
  });
});

it('shares sum to 1; in a gray room there is no tint and no source', () => {
  for (const list of sources([warm, gray(0.8), warm])) {
    expect(list.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
    expect(list.map(({ surface }) => surface).sort()).toEqual([0, 2]);
  }
  for (const list of sources([gray(0.3), gray(0.8), gray(0.6)])) expect(list).toEqual([]);
});

it('a perfect white in direct light alone reads as the adopted white exactly: L* 100, a* = b* = 0', () => {
  const irradiance = irradianceSpectrum([spectrum], [0.5], [300], [null]);
  expect(xyzFromEmission(irradiance, observer2).y).toBeCloseTo(150, 9);
  const lab = installedLab(irradiance, null, white);
  expect(lab.l).toBeCloseTo(100, 9);
  expect(Math.hypot(lab.a, lab.b)).toBeLessThan(1e-9);
  // Shade does not change an installed colour; a change of spectrum does.
  const dim = installedLab(emissionSpd(irradiance.map((e) => e / 7)), warm, white);
  const full = installedLab(irradiance, warm, white);
  expect(dim.l).toBeCloseTo(full.l, 9);
  const levels = irradianceSpectrum([spectrum, perLux(lightById('A')!)], [1, 1], [100, 100], [null, null]);
  expect(installedLab(levels, null, white).b).toBeGreaterThan(5);
});

it('indirect light enters a reading band by band', () => {
  const flat = irradianceSpectrum([spectrum], [2], [10], [new Float64Array(BAND_COUNT).fill(5)]);
  expect(xyzFromEmission(flat, observer2).y).toBeCloseTo(30, 9);
});
