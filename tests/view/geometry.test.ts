import { PerspectiveCamera, Vector3 } from 'three';
import { expect, it } from 'vitest';
import type { Rect, Vec3 } from '../../src/engine/light/types';
import { cornersOf } from '../../src/view/edge-lines';
import { pickRect } from '../../src/view/pick';
import { placeCamera } from '../../src/view/place-camera';
import { rayThrough, verticalFovDeg } from '../../src/view/projection';
import { surfaceGeometries } from '../../src/view/surface-geometry';
import { smallLight, smallRoom } from './small-room';

const floorRect = (x: number, y: number, width: number, depth: number): Rect => ({
  origin: [x, y, 0],
  u: [width, 0, 0],
  v: [0, depth, 0],
  surface: 0,
});
it('covers every rectangle once and bends edges at all corners of neighbours', () => {
  const room = smallRoom();
  const light = smallLight(room);
  const geometries = surfaceGeometries(room.light, light.directAtlas, light.nodeAtlas);
  let area = 0;
  const corners = room.light.fine.flatMap((rect) => cornersOf(rect).map((corner) => corner.map(Math.fround)));
  for (const geometry of geometries) {
    if (!geometry) continue;
    const position = geometry.getAttribute('position');
    const index = geometry.getIndex()!;
    const [a, b, c] = [new Vector3(), new Vector3(), new Vector3()];
    for (let i = 0; i < index.count; i += 3) {
      const vertices = [a, b, c].map((v, k) => v.fromBufferAttribute(position, index.getX(i + k)));
      area += vertices[1]!.clone().sub(a).cross(vertices[2]!.clone().sub(a)).length() / 2;
    }
  }
  const exact = room.light.fine.reduce((sum, { u, v }) => sum + Math.hypot(...u) * Math.hypot(...v), 0);
  expect(area).toBeCloseTo(exact, 4);

  // No corner of a rectangle lies inside an outline edge of another's triangles.
  for (const geometry of geometries) {
    if (!geometry) continue;
    const position = geometry.getAttribute('position');
    const index = geometry.getIndex()!;
    const edges = Array.from({ length: index.count }, (_, i) => [
      index.getX(i),
      index.getX(i % 3 === 2 ? i - 2 : i + 1),
    ]);
    const key = (edge: number[]) => [...edge].sort((a, b) => a - b).join();
    const uses = new Map<string, number>();
    for (const edge of edges) uses.set(key(edge), (uses.get(key(edge)) ?? 0) + 1);
    for (const edge of edges) {
      // Inside a rectangle, two triangles share an edge.
      if (uses.get(key(edge))! > 1) continue;
      const p = new Vector3().fromBufferAttribute(position, edge[0]!).toArray();
      const q = new Vector3().fromBufferAttribute(position, edge[1]!).toArray();
      const along = [0, 1, 2].filter((k) => Math.abs(p[k]! - q[k]!) > 1e-6);
      if (along.length !== 1) continue;
      const axis = along[0]!;
      for (const place of corners) {
        const onLine = [0, 1, 2].every((k) => k === axis || Math.abs(place[k]! - p[k]!) < 1e-6);
        const inside =
          place[axis]! > Math.min(p[axis]!, q[axis]!) + 1e-6 && place[axis]! < Math.max(p[axis]!, q[axis]!) - 1e-6;
        expect(onLine && inside).toBe(false);
      }
    }
  }
});

it('sends rays where the camera of the renderer draws', () => {
  const pose = { eye: [0.4, 0.3, 1.6] as Vec3, target: [2.4, 2.4, 0.9] as Vec3, fov_deg: 55 };
  for (const aspect of [1.6, 0.8]) {
    const camera = new PerspectiveCamera(50, 1, 0.03, 50);
    placeCamera(camera, pose, aspect);
    for (const [x, y] of [
      [0, 0],
      [0.7, -0.4],
      [-0.9, 0.8],
    ] as const) {
      const seen = new Vector3(...rayThrough(pose, aspect, x, y)).add(camera.position).project(camera);
      expect(seen.x).toBeCloseTo(x, 9);
      expect(seen.y).toBeCloseTo(y, 9);
    }
  }
});

it('keeps the angle of a viewpoint on the shorter side', () => {
  expect(verticalFovDeg(50, 1.6)).toBe(50);
  // tan(25 deg) / 0.8 by hand: 0.466308 / 0.8 = 0.582885, atan = 30.2377 deg, twice that.
  expect(verticalFovDeg(50, 0.8)).toBeCloseTo(60.475, 2);
});

it('picks the nearest front and never a back', () => {
  const near: Rect = floorRect(0, 0, 1, 1);
  const far: Rect = { ...floorRect(0, 0, 1, 1), origin: [0, 0, -1] };
  const hit = pickRect([far, near], [0.25, 0.5, 2], [0, 0, -1])!;
  expect(hit).toMatchObject({ rect: 1, distance: 2, u: 0.25, v: 0.5 });
  expect(pickRect([far, near], [0.25, 0.5, -2], [0, 0, 1])).toBeNull();
  expect(pickRect([far, near], [1.25, 0.5, 2], [0, 0, -1])).toBeNull();
});
