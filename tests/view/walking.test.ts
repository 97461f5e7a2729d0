import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Rect, Vec3, Viewpoint } from '../../src/engine/light/types';
import { CameraRig } from '../../src/view/camera-rig';

const limits = { min: [0.15, 0.15, 0.15] as Vec3, max: [4, 3.5, 2.3] as Vec3 };
const floor: Rect = { origin: [0, 0, 0], u: [5, 0, 0], v: [0, 5, 0], surface: 0 };
/** An island from 2 to 3 in x: its top, and the front towards smaller x. */
const island: readonly Rect[] = [
  { origin: [2, 0, 0.9], u: [1, 0, 0], v: [0, 4, 0], surface: 1 },
  { origin: [2, 0, 0], u: [0, 0, 0.9], v: [0, 4, 0], surface: 1 },
];
const viewpoint = (eye: Vec3, target: Vec3): Viewpoint => ({
  id: 'v',
  name: 'v',
  eye,
  target,
  fov_deg: 60,
  overview: true,
});
const eyeOf = (rig: CameraRig) => rig.poseAt(0).eye;

it('walks as one looks, at the same height, and what is looked at goes along', () => {
  const rig = new CameraRig(viewpoint([1, 1, 1.6], [1, 3, 0.8]), [floor], limits);
  rig.walk(0.5, 0, 0);
  expect(eyeOf(rig)).toEqual([1, 1.5, 1.6]);
  expect(rig.poseAt(0).target).toEqual([1, 3.5, 0.8]);
  // Looking along +y, right is +x.
  rig.walk(0, 0.5, 0);
  expect(eyeOf(rig)[0]).toBeCloseTo(1.5, 12);
});

it('does not walk into furniture, though the eye is higher; it slides along', () => {
  const rig = new CameraRig(viewpoint([1, 1, 1.6], [3, 1, 1]), [floor, ...island], limits);
  for (let i = 0; i < 40; i++) rig.walk(0.15, 0, i);
  expect(eyeOf(rig)[0]).toBeLessThanOrEqual(2);
  const aslant = new CameraRig(viewpoint([1.9, 1, 1.6], [2.9, 2, 1]), [floor, ...island], limits);
  aslant.walk(0.3, 0, 0);
  expect(eyeOf(aslant)[0]).toBe(1.9);
  expect(eyeOf(aslant)[1]).toBeGreaterThan(1.1);
});

it('who sits over a stool gets off it', () => {
  const rig = new CameraRig(viewpoint([2.5, 1, 1.2], [0, 1, 1]), [floor, ...island], limits);
  for (let i = 0; i < 10; i++) rig.walk(0.15, 0, i);
  expect(eyeOf(rig)[0]).toBeLessThan(2);
});

it('never leaves the room, wherever one walks and turns', () => {
  const step = fc.tuple(fc.double({ min: -1, max: 1, noNaN: true }), fc.double({ min: -1, max: 1, noNaN: true }));
  fc.assert(
    fc.property(fc.array(step, { maxLength: 30 }), (steps) => {
      const rig = new CameraRig(viewpoint([1, 1, 1.6], [2, 3, 0.8]), [floor, ...island], limits);
      steps.forEach(([forward, right], i) => {
        if (i % 3 === 2) rig.turn(forward, right / 4, i);
        else rig.walk(forward, right, i);
        const eye = eyeOf(rig);
        for (let k = 0; k < 3; k++) {
          expect(eye[k]).toBeGreaterThanOrEqual(limits.min[k]! - 1e-9);
          expect(eye[k]).toBeLessThanOrEqual(limits.max[k]! + 1e-9);
        }
      });
    }),
  );
});

it('brings the eye to a height between 0.9 and 2 m; one goes on looking at the same point', () => {
  const rig = new CameraRig(viewpoint([1, 1, 1.6], [1, 3, 0.8]), [floor], limits);
  rig.standAt(1.2, 0);
  expect(rig.poseAt(0)).toMatchObject({ eye: [1, 1, 1.2], target: [1, 3, 0.8] });
  rig.standAt(5, 0);
  expect(eyeOf(rig)[2]).toBe(2);
  rig.standAt(0, 0);
  expect(eyeOf(rig)[2]).toBe(0.9);
  rig.lift(0.05, 0);
  expect(rig.poseAt(0).target[2]).toBeCloseTo(0.85, 12);
});

it('knows how far a pixel is at what is looked at', () => {
  const rig = new CameraRig(viewpoint([0, 0, 1], [0, 2, 1]), [floor], limits);
  // 60 degrees at 2 m: 4 tan 30 degrees over the height.
  expect(rig.metersPerPixel(400)).toBeCloseTo((4 * Math.tan(Math.PI / 6)) / 400, 12);
});
