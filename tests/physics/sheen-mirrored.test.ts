import { expect, it } from 'vitest';
import { lampEmitter } from '../../src/engine/light/emitters';
import { buildRectBvh } from '../../src/engine/light/rect-bvh';
import type { Vec3 } from '../../src/engine/light/types';
import { coatAlbedo } from '../../src/engine/sheen/albedo';
import { fresnelUnpolarized } from '../../src/engine/sheen/fresnel';
import type { Sheen } from '../../src/engine/sheen/sheen';
import { emissionSpd, reflectanceSpd } from '../../src/engine/spectrum/grid';
import { mirroredLight, veilOver } from '../../src/kitchen/study/mirrored';
import type { BrightFace, MirroredRoom } from '../../src/kitchen/study/mirrored-room';
import { veiledReading } from '../../src/kitchen/study/veiled-reading';
import { boxRects } from './box-room';

const flat = (value: number) => reflectanceSpd(new Float64Array(81).fill(value));
const EQUAL = emissionSpd(new Float64Array(81).fill(1));
const setting = { spectra: [EQUAL], levels: [1] };
const rects = boxRects(4, 3, 2.5);
const WHITE = flat(1);

/** A box whose faces are perfect whites under the light that `lux` gives; nothing shines. */
function boxUnder(lux: (rect: number, u: number, v: number) => number, average = WHITE): MirroredRoom {
  return {
    bvh: buildRectBvh(rects),
    surfaceOf: (rect) => rects[rect]!.surface,
    finishOf: (surface) => ({ id: `face ${surface}`, average }),
    directAt: (rect, u, v, out) => {
      out[0] = lux(rect, u, v);
    },
    addIndirect: () => {},
    faceOf: () => null,
    faces: [],
  };
}

const POINT: Vec3 = [1.3, 1.1, 0];
const UP: Vec3 = [0, 0, 1];
const clear: Sheen = { alpha: 0, part: 1, metal: true };
const atAngle = (degrees: number, turn: number): Vec3 => {
  const a = (degrees * Math.PI) / 180;
  const r = 0.9 * Math.sin(a);
  return [POINT[0] + r * Math.cos(turn), POINT[1] + r * Math.sin(turn), 0.9 * Math.cos(a)];
};

it('shows in a perfect mirror exactly what stands where the eye looks', () => {
  // The eye is 1 m to the left and as high as the mirrored spot: light of the right wall, x = 4, at height 2.7 tan(e).
  const eye: Vec3 = [0.3, 1.1, 0.8];
  const room = boxUnder((rect, u, v) => 100 * rect + 10 * u + v);
  const found = mirroredLight(room, setting, { point: POINT, normal: UP, eye }, clear)!;
  // Wall x = a of the box: u up, v along y (box-room.ts). Height of the ray at the wall: 2.7 x 0.8 / 1; ceiling is at 2.5.
  const expected = 300 + 10 * ((2.7 * 0.8) / 2.5) + 1.1 / 3;
  // A ray starts a tenth of a millimetre above the face.
  expect(Math.abs(found.met[40]! - expected)).toBeLessThan(1e-3);
  expect(veilOver(found, WHITE)[40]).toBeCloseTo(found.met[40]!, 9);
  expect(found.from).toEqual([{ source: 'face 3', share: 1 }]);
});

it('veils by R(angle) times the radiance of a room that is everywhere as bright, whatever the direction', () => {
  const room = boxUnder(() => 250, flat(0.4));
  for (const alpha of [0, 0.03, 0.2]) {
    for (const degrees of [0, 30, 60, 80]) {
      const veils = [0, 1.1, 2.9].map((turn) => {
        const view = { point: POINT, normal: UP, eye: atAngle(degrees, turn) };
        return veilOver(mirroredLight(room, setting, view, { alpha, part: 1, metal: false })!, flat(0.5))[10]!;
      });
      const expected = coatAlbedo(alpha, Math.cos((degrees * Math.PI) / 180)) * 0.4 * 250;
      for (const veil of veils) expect(veil / expected).toBeCloseTo(1, 9);
    }
  }
  // And a smooth coat's R is Fresnel's: at 60 degrees to what straight lines in the table leave.
  expect(Math.abs(coatAlbedo(0, 0.5) / fresnelUnpolarized(1.5, 0.5) - 1)).toBeLessThan(0.02);
});

it('keeps the reading of a white under light from all sides at 8 degrees, and lifts that of a dark one at a slant', () => {
  const room = boxUnder(() => 250);
  const irradiance = emissionSpd(EQUAL.map((value) => 250 * value));
  const white = { x: 100, y: 100, z: 100 } as const;
  const coat: Sheen = { alpha: 0.02, part: 1, metal: false };
  const read = (degrees: number, rho: number) => {
    const found = mirroredLight(room, setting, { point: POINT, normal: UP, eye: atAngle(degrees, 0.3) }, coat)!;
    return veiledReading(irradiance, flat(rho), found, white as never);
  };
  for (const rho of [0.06, 0.4, 0.9]) {
    expect(read(8, rho).shift_de00).toBeLessThan(0.01);
    expect(read(8, rho).level).toBe('not-seen');
  }
  const slanting = read(70, 0.06);
  expect(slanting.level).toBe('hides-color');
  // Uniform light, perfect white all round: rho(angle) = R + body (1 - R).
  const r = coatAlbedo(0.02, Math.cos((70 * Math.PI) / 180));
  expect(slanting.veil).toBeCloseTo(r, 6);
  expect(read(60, 0.4).level).toBe('changes-color');
});

it('darkens a glossy black where a dark part of the room mirrors in it', () => {
  const room = boxUnder((rect) => (rect === 3 ? 2 : 250));
  const irradiance = emissionSpd(EQUAL.map((value) => 250 * value));
  const view = { point: POINT, normal: UP, eye: [0.3, 1.1, 0.8] as Vec3 };
  const found = mirroredLight(room, setting, view, { alpha: 0.005, part: 1, metal: false })!;
  const read = veiledReading(irradiance, flat(0.05), found, { x: 100, y: 100, z: 100 } as never);
  // Without: Y 5, L* 26.7.
  expect(read.lab_d65[0]).toBeLessThan(15);
});

it('counts a beam as a small bright window of the same illuminance', () => {
  const towards: Vec3 = [Math.sin(0.7), 0, Math.cos(0.7)];
  const half = 0.05;
  const luminance = 1e4;
  // Seen in the same direction from everywhere, so no rays can be sent to points of it.
  const distant: BrightFace = {
    area_m2: 1,
    normal: [0, 0, 1],
    samples: new Float64Array(0),
    addLuminance: (direction, weight, out) => {
      const cosine = direction[0] * towards[0] + direction[1] * towards[1] + direction[2] * towards[2];
      if (cosine > Math.cos(half)) out[0]! += weight * luminance;
    },
  };
  const shining: MirroredRoom = {
    ...boxUnder(() => 0),
    surfaceOf: () => -1,
    faceOf: () => distant,
  };
  const lx = luminance * Math.PI * Math.sin(half) ** 2 * towards[2];
  for (const sheen of [
    { alpha: 0.3, part: 1, metal: true },
    { alpha: 0.3, part: 1, metal: false },
  ]) {
    const view = { point: POINT, normal: UP, eye: atAngle(50, Math.PI) };
    const asWindow = mirroredLight(shining, setting, view, sheen, 1 << 16)!;
    const beams = [{ group: 0, towards, lx }];
    const asBeam = mirroredLight(
      boxUnder(() => 0),
      setting,
      { ...view, beams },
      sheen,
      1 << 16,
    )!;
    // 65536 rays, of which some hundreds meet the window; and the lobe is not quite straight over it.
    expect(Math.abs(asBeam.met[40]! / asWindow.met[40]! - 1)).toBeLessThan(0.02);
    expect(asBeam.from).toEqual([{ source: 0, share: 1 }]);
  }
});

it('finds a small lamp by rays sent to it as surely as by very many rays of the lobe', () => {
  // A lamp of 20 x 20 cm under the ceiling instead of the ceiling itself.
  const lamp = { origin: [2.2, 1.3, 2.4], u: [0, 0.2, 0], v: [0.2, 0, 0], surface: -1 } as const;
  const emitter = lampEmitter({ group: 0, rect: lamp, lumens: 1000 });
  const face: BrightFace = {
    area_m2: emitter.area,
    normal: emitter.normal,
    samples: emitter.samples,
    addLuminance: (_direction, weight, out) => {
      out[0]! += (weight * emitter.exitance) / Math.PI;
    },
  };
  const all = [...rects, lamp];
  const room = (faces: readonly BrightFace[]): MirroredRoom => ({
    ...boxUnder(() => 3),
    bvh: buildRectBvh(all),
    surfaceOf: (rect) => all[rect]!.surface,
    faceOf: (rect) => (rect === rects.length ? face : null),
    faces,
  });
  for (const alpha of [0.03, 0.1, 0.3]) {
    for (const turn of [Math.PI, 2.6]) {
      const view = { point: POINT, normal: UP, eye: atAngle(28, turn + 0.22) };
      const sheen = { alpha, part: 1, metal: false };
      const y = (found: { met: ArrayLike<number> }) => found.met[40]!;
      const surely = y(mirroredLight(room([]), setting, view, sheen, 1 << 16)!);
      const quickly = y(mirroredLight(room([face]), setting, view, sheen)!);
      // 512 rays and 32 to the lamp; without those, up to 90 %.
      expect(Math.abs(quickly / surely - 1)).toBeLessThan(0.06);
    }
  }
});

it('mirrors nothing to an eye behind the face', () => {
  expect(
    mirroredLight(
      boxUnder(() => 1),
      setting,
      { point: POINT, normal: UP, eye: [1, 1, -1] },
      clear,
    ),
  ).toBeNull();
  expect(
    mirroredLight(
      boxUnder(() => 1),
      setting,
      { point: POINT, normal: UP, eye: [3, 1.1, 0] },
      clear,
    ),
  ).toBeNull();
});
