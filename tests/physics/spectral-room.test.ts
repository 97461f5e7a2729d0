import { expect, it } from 'vitest';
import { differenceCiede2000 } from '../../src/engine/color/difference';
import { xyzFromEmission } from '../../src/engine/color/xyz';
import { BAND_COUNT, bandMeansFromReflectance } from '../../src/engine/light/bands';
import { installedLab, irradianceSpectrum } from '../../src/engine/light/reading';
import { solveGroup } from '../../src/engine/light/solve';
import { buildTransport } from '../../src/engine/light/transport';
import { emissionSpd, reflectanceSpd, wavelengthNm } from '../../src/engine/spectrum/grid';
import { lightById } from '../../src/engine/spectrum/lights';
import { observer2 } from '../../src/engine/spectrum/observers';
import { perLux } from '../../src/engine/spectrum/per-lux';
import type { EmissionSpd, ReflectanceSpd } from '../../src/engine/spectrum/types';
import { boxRects, ceilingLamp, roomOf } from './box-room';

// A closed room of one reflectance rho(nm): whatever its shape and lamps, the mean irradiance is the lamps' light over
// the room's area, S(nm) / (1 - rho(nm)). Energy that is not absorbed at a wavelength goes on.

const FLUX = [3000, 2000, 1500] as const;
const room = roomOf(boxRects(4, 3, 2.5), {
  lamps: [
    ceilingLamp(1.2, 1.8, 2.5, 0.6, FLUX[0], 0),
    ceilingLamp(3.5, 0.4, 2.5, 0.2, FLUX[1], 1),
    // A strip on a wall.
    { group: 2, lumens: FLUX[2], rect: { origin: [0, 0.5, 1.4], u: [0, 2, 0], v: [0, 0, 0.05], surface: -1 } },
  ],
});
const AREA = 2 * (4 * 3 + 4 * 2.5 + 3 * 2.5);
const transport = buildTransport(room, { patchSize: 0.5, raysPerPatch: 64 });

const curve = (at: (nm: number) => number): ReflectanceSpd =>
  reflectanceSpd(Array.from({ length: 81 }, (_, i) => at(wavelengthNm(i))));

const FINISHES: readonly (readonly [string, ReflectanceSpd])[] = [
  ['warm', curve((nm) => 0.15 + 0.5 / (1 + Math.exp((560 - nm) / 40)))],
  ['blue', curve((nm) => 0.5 - 0.25 / (1 + Math.exp((520 - nm) / 50)))],
  ['green', curve((nm) => 0.3 + 0.2 * Math.exp(-(((nm - 540) / 70) ** 2)))],
  ['light, a little yellow', curve((nm) => 0.8 - 0.25 / (1 + Math.exp((nm - 450) / 25)))],
];

/** Mean irradiance of the room as the product has it: 24 bands of bounced light, lamps in full. */
function meanIrradiance(rho: ReflectanceSpd, spectra: readonly EmissionSpd[], levels: readonly number[]): EmissionSpd {
  const bands = bandMeansFromReflectance(rho);
  const reflectance = Float32Array.from({ length: 6 * BAND_COUNT }, (_, i) => bands[i % BAND_COUNT]!);
  const { patches, factors } = transport;
  const direct = transport.direct.map((lx) => patches.area.reduce((sum, a, i) => sum + a * lx[i]!, 0) / AREA);
  const indirect = transport.direct.map((lx) => {
    const b = solveGroup(transport, reflectance, lx);
    const mean = new Float64Array(BAND_COUNT);
    for (let i = 0; i < patches.count; i++) {
      for (let e = factors.start[i]!; e < factors.start[i + 1]!; e++) {
        const weight = (patches.area[i]! * factors.value[e]!) / AREA;
        for (let k = 0; k < BAND_COUNT; k++) mean[k]! += weight * b[factors.column[e]! * BAND_COUNT + k]!;
      }
    }
    return mean;
  });
  return irradianceSpectrum(spectra, levels, direct, indirect);
}

const LIGHTS = ['A', 'D65', 'FL11', 'LED-B3'] as const;
const spectrumOf = (id: string): EmissionSpd => perLux(lightById(id)!);

it.each([
  ...LIGHTS.map((id) => [id, [id, id, id], [1, 0, 0]] as const),
  ['FL11 and LED-B3', ['FL11', 'LED-B3', 'A'], [1, 1, 0]] as const,
  ['FL11, LED-B1 and dimmed A', ['FL11', 'LED-B1', 'A'], [1, 0.6, 0.35]] as const,
])('one-colour room under %s: the closed form to 0.05 CIEDE2000, and 0.1 % of the illuminance', (_, lights, levels) => {
  const spectra = lights.map(spectrumOf);
  for (const [, rho] of FINISHES) {
    const got = meanIrradiance(rho, spectra, levels);
    const exact = emissionSpd(
      Array.from(rho, (r, i) =>
        spectra.reduce((sum, s, g) => sum + (levels[g]! * FLUX[g]! * s[i]!) / AREA / (1 - r), 0),
      ),
    );
    const white = { x: 95.04, y: 100, z: 108.88 };
    for (const seen of [rho, null]) {
      expect(differenceCiede2000(installedLab(got, seen, white), installedLab(exact, seen, white))).toBeLessThan(0.05);
    }
    const lx = (spd: EmissionSpd): number => xyzFromEmission(spd, observer2).y;
    expect(Math.abs(lx(got) / lx(exact) - 1)).toBeLessThan(1e-3);
  }
});
