import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Rect, Vec3, Viewpoint } from '../../src/engine/light/types';
import { CameraRig } from '../../src/view/camera-rig';
import { eyeOf, LEAST_DISTANCE_M, orbitFromEye, turned } from '../../src/view/orbit';

const limits = { min: [0.15, 0.15, 0.15] as Vec3, max: [4, 3.5, 2.3] as Vec3 };
const inside = fc.tuple(
  fc.double({ min: 0.2, max: 3.9, noNaN: true }),
  fc.double({ min: 0.2, max: 3.4, noNaN: true }),
  fc.double({ min: 0.2, max: 2.2, noNaN: true }),
);

it('stands where it was told to when nothing is in the way', () => {
  fc.assert(
    fc.property(inside, inside, (eye, target) => {
      fc.pre(Math.hypot(...eye.map((c, k) => c - target[k]!)) > LEAST_DISTANCE_M);
      const found = eyeOf(orbitFromEye(eye, target, 50), limits)!;
      for (let k = 0; k < 3; k++) expect(found[k]).toBeCloseTo(eye[k]!, 9);
    }),
  );
});

it('never leaves the limits nor comes nearer than the least distance, wherever it turns', () => {
  const angle = fc.double({ min: -4, max: 4, noNaN: true });
  fc.assert(
    fc.property(inside, inside, angle, angle, (eye, target, azimuth, elevation) => {
      fc.pre(Math.hypot(...eye.map((c, k) => c - target[k]!)) > 0.01);
      const found = eyeOf(turned(orbitFromEye(eye, target, 50), azimuth, elevation), limits);
      if (!found) return;
      for (let k = 0; k < 3; k++) {
        expect(found[k]).toBeGreaterThanOrEqual(limits.min[k]! - 1e-9);
        expect(found[k]).toBeLessThanOrEqual(limits.max[k]! + 1e-9);
      }
      expect(Math.hypot(...found.map((c, k) => c - target[k]!))).toBeGreaterThanOrEqual(LEAST_DISTANCE_M - 1e-9);
    }),
  );
});

const viewpoint = (eye: Vec3): Viewpoint => ({
  id: 'v',
  name: 'v',
  eye,
  target: [2, 1, 1],
  fov_deg: 50,
  overview: true,
});

it('flies to a viewpoint in a fifth of a second, or at once', () => {
  const rig = new CameraRig(viewpoint([1, 1, 1]), [], limits);
  rig.fly(viewpoint([3, 1, 1]), 0, false);
  expect(rig.poseAt(0).eye[0]).toBe(1);
  const halfway = rig.poseAt(100).eye[0];
  // Ease-out: more than half the way in half the time.
  expect(halfway).toBeGreaterThan(2);
  expect(halfway).toBeLessThan(3);
  expect(rig.poseAt(200).eye[0]).toBe(3);
  expect(rig.flying).toBe(false);
  rig.fly(viewpoint([1, 1, 1]), 300, true);
  expect(rig.poseAt(300).eye[0]).toBe(1);
});

it('stops before a face it moves towards', () => {
  // A wall between eye and target, its front towards the eye.
  const wall: Rect = { origin: [1.5, 0, 0], u: [0, 0, 3], v: [0, 3, 0], surface: 0 };
  const rig = new CameraRig(viewpoint([0.5, 1, 1]), [wall], limits);
  for (let i = 0; i < 60; i++) rig.dolly(0.9, i);
  expect(rig.poseAt(100).eye[0]).toBeLessThan(1.5);
  const free = new CameraRig(viewpoint([0.5, 1, 1]), [], limits);
  for (let i = 0; i < 60; i++) free.dolly(0.9, i);
  expect(free.poseAt(100).eye[0]).toBeCloseTo(2 - LEAST_DISTANCE_M, 9);
});
