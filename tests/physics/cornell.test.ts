import { describe, expect, it } from 'vitest';
import { xyzFromEmission } from '../../src/engine/color/xyz';
import { BAND_CENTER_NM, BAND_COUNT, bandMeansFromReflectance } from '../../src/engine/light/bands';
import { addDirect, directScene } from '../../src/engine/light/direct-scene';
import { finishGather, gatherPoint, startGather } from '../../src/engine/light/gather-rows';
import { gatherNodes } from '../../src/engine/light/nodes';
import { installedLab, irradianceSpectrum } from '../../src/engine/light/reading';
import { solveGroup } from '../../src/engine/light/solve';
import { buildTransport, type Transport } from '../../src/engine/light/transport';
import type { LightRoom, Vec3 } from '../../src/engine/light/types';
import { emissionSpd, wavelengthNm } from '../../src/engine/spectrum/grid';
import { observer2 } from '../../src/engine/spectrum/observers';
import { perLux } from '../../src/engine/spectrum/per-lux';
import { reflectanceOnGrid } from '../../src/engine/spectrum/resample';
import type { EmissionSpd, ReflectanceSpd } from '../../src/engine/spectrum/types';
import { parallel, perpendicular } from './configuration-factors';
import { CORNELL_SIZE, cornellBox, LUMENS, SHORT_TOP } from './cornell-box';
import { CORNELL_GREEN, CORNELL_LAMP, CORNELL_RED, CORNELL_WHITE } from './cornell-box.data';
import { traceIrradiance } from './cornell-path-tracer';

const [W, D, H] = CORNELL_SIZE;
const SAMPLES = [CORNELL_WHITE, CORNELL_GREEN, CORNELL_RED];
const FINISHES: readonly ReflectanceSpd[] = SAMPLES.map((reflectance) => {
  const onGrid = reflectanceOnGrid({ start_nm: 400, step_nm: 4, reflectance });
  if (!onGrid.ok) throw new Error(onGrid.problem.text);
  return onGrid.value;
});
const BANDS = FINISHES.map(bandMeansFromReflectance);
const REFLECTANCE = Float32Array.from(BANDS.flatMap((bands) => [...bands]));

interface Solved {
  readonly room: LightRoom;
  readonly transport: Transport;
  readonly radiosity: Float32Array;
}

function solved(withBlocks: boolean): Solved {
  const { room } = cornellBox(withBlocks);
  const transport = buildTransport(room, { patchSize: 0.6 });
  return { room, transport, radiosity: solveGroup(transport, REFLECTANCE, transport.direct[0]!) };
}

const empty = solved(false);
const furnished = solved(true);

/** Direct light, lx, and what is gathered in each band. */
function lightAt({ room, transport, radiosity }: Solved, point: Vec3, normal: Vec3) {
  const gatherer = startGather(room, transport, 2048, 5);
  gatherPoint(gatherer, ...point, ...normal);
  const direct = new Float64Array(1);
  addDirect(directScene(transport), ...point, ...normal, direct);
  return { direct: direct[0]!, indirect: gatherNodes({ rows: finishGather(gatherer) }, radiosity, BAND_COUNT) };
}

it('76 samples on the 5 nm grid: means over 20 nm stay within 0.005, and so within what was measured', () => {
  FINISHES.forEach((rho, s) => {
    for (let from = 410; from <= 670; from += 20) {
      const mean = (values: number[]): number => values.reduce((sum, x) => sum + x, 0) / values.length;
      // Trapezoids: the ends count half, as they belong to the neighbouring spans as well.
      const grid = [0, 5, 10, 15].map((nm) => (at(rho, from + nm) + at(rho, from + nm + 5)) / 2);
      const measured = [0, 4, 8, 12, 16].map((nm) => (sample(s, from + nm) + sample(s, from + nm + 4)) / 2);
      expect(Math.abs(mean(grid) - mean(measured))).toBeLessThan(0.005);
    }
  });
});

const at = (rho: ReflectanceSpd, nm: number): number => rho[(nm - 380) / 5]!;

/** Straight between two samples. */
function sample(surface: number, nm: number): number {
  const place = (nm - 400) / 4;
  const i = Math.floor(place);
  const values = SAMPLES[surface]!;
  return values[i]! + (values[Math.min(i + 1, 75)]! - values[i]!) * (place - i);
}

it('open towards the viewer: every wall loses what the closed forms C-11 and C-14 say, and nothing else is lost', () => {
  const { room } = cornellBox(false, false);
  const { leakByRect } = buildTransport(room, { patchSize: 0.6, raysPerPatch: 256 });
  for (const [wall, expected] of [
    [0, perpendicular(D, H, W)],
    [1, perpendicular(D, W, H)],
    [2, perpendicular(D, W, H)],
    [3, parallel(W, H, D)],
  ] as const) {
    expect(Math.abs(leakByRect[wall]! / expected - 1)).toBeLessThan(0.01);
  }
  for (const { transport } of [empty, furnished]) expect(transport.leak).toBeLessThan(1e-4);
});

it.each([
  ['empty', empty],
  ['with blocks', furnished],
] as const)('energy in every band, %s: walls, opening and lamp face absorb what the lamp sends (0.1 %)', (_, box) => {
  const { patches, factors, direct } = box.transport;
  for (let k = 0; k < BAND_COUNT; k++) {
    let absorbed = 0;
    for (let i = 0; i < patches.count; i++) {
      let lx = direct[0]![i]!;
      for (let e = factors.start[i]!; e < factors.start[i + 1]!; e++) {
        lx += factors.value[e]! * box.radiosity[factors.column[e]! * BAND_COUNT + k]!;
      }
      const s = patches.surface[i]!;
      absorbed += patches.area[i]! * lx * (s < 0 ? 1 : 1 - BANDS[s]![k]!);
    }
    expect(Math.abs(absorbed / LUMENS - 1)).toBeLessThan(1e-3);
  }
});

const UP: Vec3 = [0, 0, 1];
const PLACES: readonly (readonly [string, Solved, boolean, Vec3, Vec3])[] = [
  ['floor, middle', empty, false, [W / 2, D / 2, 0], UP],
  ['floor by the green wall', empty, false, [0.4, D / 2, 0], UP],
  ['floor by the red wall', empty, false, [W - 0.4, D / 2, 0], UP],
  ['green wall', empty, false, [0, 2.8, 2], [1, 0, 0]],
  ['back wall', empty, false, [W / 2, D, 2.5], [0, -1, 0]],
  ['floor behind the short block', furnished, true, [1.9, 3.4, 0], UP],
  ['top of the short block', furnished, true, SHORT_TOP, UP],
  ['red wall', furnished, true, [W, 2.4, 1.5], [-1, 0, 0]],
];

describe('irradiance against a path tracer that shares nothing with the engine', () => {
  // Bands of blue, green, orange and red light.
  const bands = [450, 530, 600, 660].map((nm) =>
    BAND_CENTER_NM.reduce((best, c, k) => (Math.abs(c - nm) < Math.abs(BAND_CENTER_NM[best]! - nm) ? k : best), 0),
  );
  it.each(PLACES)('%s', (_, box, withBlocks, point, normal) => {
    const { whole, lamp } = cornellBox(withBlocks);
    const area = Math.hypot(...lamp.u) * Math.hypot(...lamp.v);
    const reflectance = BANDS.map((all) => bands.map((k) => all[k]!));
    const scene = { rects: whole, lamp, exitance: LUMENS / area, reflectance };
    const { mean, standardError } = traceIrradiance(scene, point, normal, 12_000, 11);
    const { direct, indirect } = lightAt(box, point, normal);
    bands.forEach((k, i) => {
      expect(standardError[i]! / mean[i]!).toBeLessThan(0.01);
      // 3.5 standard errors hold for all 32 values at once; 0.5 % is for our own patches and rays.
      expect(Math.abs(direct + indirect[k]! - mean[i]!)).toBeLessThan(3.5 * standardError[i]! + 0.005 * mean[i]!);
    });
  });
});

it('color bleeds: white is redder by the red wall, greener by the green wall, than by the lamp alone', () => {
  const lampPower = (nm: number): number => {
    const i = CORNELL_LAMP.findIndex(([to]) => nm < to);
    if (i === 0) return 0;
    if (i < 0) return CORNELL_LAMP.at(-1)![1];
    const [[a, low], [b, high]] = [CORNELL_LAMP[i - 1]!, CORNELL_LAMP[i]!];
    return low + ((high - low) * (nm - a)) / (b - a);
  };
  const spectrum: EmissionSpd = perLux(emissionSpd(Array.from({ length: 81 }, (_, i) => lampPower(wavelengthNm(i)))));
  const white = xyzFromEmission(spectrum, observer2);
  const redness = (box: Solved, x: number): number => {
    const { direct, indirect } = lightAt(box, [x, D / 2, 0], UP);
    return installedLab(irradianceSpectrum([spectrum], [1], [direct], [indirect]), null, white).a;
  };
  for (const box of [empty, furnished]) {
    expect(redness(box, W - 0.2)).toBeGreaterThan(2);
    expect(redness(box, 0.2)).toBeLessThan(-2);
  }
  // The tall block's shade stands a metre from the red wall.
  expect(redness(empty, W - 0.2)).toBeGreaterThan(redness(empty, W - 1));
  expect(redness(empty, 0.2)).toBeLessThan(redness(empty, 1));
});
