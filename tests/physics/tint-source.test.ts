import { describe, expect, it } from 'vitest';
import { whiteOf, xyzFromEmission } from '../../src/engine/color/xyz';
import { BAND_COUNT, bandMeansFromReflectance } from '../../src/engine/light/bands';
import { lightShare, lightWhites } from '../../src/engine/light/light-mix';
import { buildNodes } from '../../src/engine/light/nodes';
import { installedLab, irradianceSpectrum } from '../../src/engine/light/reading';
import { solveGroup } from '../../src/engine/light/solve';
import { indirectOn, surfaceLights } from '../../src/engine/light/surface-light';
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
  return finished(tintSources(transport, scheme, lights));
}

function finished<T>(steps: Generator<unknown, T>): T {
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

describe('under lights of two spectra', () => {
  // A lamp under the ceiling burns as D65; a second one, low over a corner, as A.
  const two = roomOf(
    boxRects(3, 3, 2.5, [0, 1, 2, 2, 2, 2]),
    { lamps: [ceilingLamp(1.5, 1.5, 2.5, 0.5, 3000), ceilingLamp(0.6, 0.6, 1.2, 0.3, 3000, 1)] },
    ['floor', 'ceiling', 'wall'],
  );
  const twoTransport = buildTransport(two, { patchSize: 0.5 });
  const twoLights = surfaceLights(two, twoTransport, buildNodes(two, twoTransport, { spacing: 0.5 }));

  function solved(finishes: readonly ReturnType<typeof gray>[]) {
    const reflectance = Float32Array.from(finishes.flatMap((rho) => [...bandMeansFromReflectance(rho)]));
    return {
      reflectance,
      spectra: [spectrum, perLux(lightById('A')!)],
      levels: [1, 1],
      radiosity: twoTransport.direct.map((direct) => solveGroup(twoTransport, reflectance, direct)),
      adoptedWhite: white,
    };
  }
  const finishes = [gray(0.4), gray(0.8), gray(0.6)];

  it('a gray room is tinted by its lights alone: every white there is the lights’ white, and no surface has a share', () => {
    const scheme = solved(finishes);
    const whites = lightWhites(twoTransport, scheme, twoLights);
    twoLights.forEach((light, i) => {
      const indirect = scheme.radiosity.map((b) => indirectOn(light, b));
      const irradiance = irradianceSpectrum(scheme.spectra, scheme.levels, light.direct, indirect);
      const place = installedLab(irradiance, null, white);
      expect(place.b).toBeGreaterThan(3);
      expect(whites[i]!.a).toBeCloseTo(place.a, 3);
      expect(whites[i]!.b).toBeCloseTo(place.b, 3);
      expect(lightShare(place, whites[i]!)).toBeCloseTo(1, 4);
    });
    for (const list of finished(tintSources(twoTransport, scheme, twoLights))) {
      expect(list.reduce((sum, { share }) => sum + share, 0)).toBeLessThan(1e-3);
    }
  });

  it('a warm floor has only its own part of the tint; the rest is the lights’', () => {
    const scheme = solved([warm, gray(0.8), gray(0.6)]);
    const whites = lightWhites(twoTransport, scheme, twoLights);
    finished(tintSources(twoTransport, scheme, twoLights)).forEach((list, i) => {
      const light = twoLights[i]!;
      const indirect = scheme.radiosity.map((b) => indirectOn(light, b));
      const irradiance = irradianceSpectrum(scheme.spectra, scheme.levels, light.direct, indirect);
      const ofLights = lightShare(installedLab(irradiance, null, white), whites[i]!);
      const ofSurfaces = list.reduce((sum, { share }) => sum + share, 0);
      expect(ofLights).toBeGreaterThan(0.3);
      expect(ofSurfaces + ofLights).toBeCloseTo(1, 9);
      expect(list[0]!.surface).toBe(0);
    });
  });
});

it('lights of one spectrum leave every white white, whatever bounces', () => {
  const reflectance = Float32Array.from([warm, warm, warm].flatMap((rho) => [...bandMeansFromReflectance(rho)]));
  const radiosity = [solveGroup(transport, reflectance, transport.direct[0]!)];
  const scheme = { reflectance, spectra: [spectrum], levels: [1], radiosity, adoptedWhite: white };
  for (const { a, b } of lightWhites(transport, scheme, lights)) expect([a, b]).toEqual([0, 0]);
});
