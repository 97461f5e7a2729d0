import { Group, PerspectiveCamera, Scene, type WebGLRenderer } from 'three';
import { expect, it } from 'vitest';
import type { MirrorFaces } from '../../src/view/mirror-planes';
import { PlaneMirrors } from '../../src/view/plane-mirrors';

const WALL: MirrorFaces = {
  normal: [0, -1, 0],
  offset: -3,
  rects: [{ origin: [0, 3, 0], u: [3, 0, 0], v: [0, 0, 2], surface: 0 }],
};

it('draws mirrors again only where they show something else', () => {
  let drawn = 0;
  const count = () => drawn++;
  const renderer = { setRenderTarget: () => undefined, render: count } as unknown as WebGLRenderer;
  const camera = new PerspectiveCamera(60, 1.6, 0.03, 60);
  camera.position.set(1.5, 0.5, 1.5);
  camera.up.set(0, 0, 1);
  camera.lookAt(1.5, 3, 1.2);
  camera.updateMatrixWorld();
  const view = {
    renderer,
    scene: new Scene(),
    camera,
    shown: new Group(),
    area: { left: 0, bottom: 0, width: 64, height: 40 },
  };
  const mirrors = new PlaneMirrors();
  const drawnBy = (change: () => void): number => {
    drawn = 0;
    change();
    mirrors.draw(view);
    return drawn;
  };
  expect(drawnBy(() => mirrors.setFaces([WALL]))).toBe(1);
  expect(drawnBy(() => undefined)).toBe(0);
  // What it shows, how large, from where, in which light.
  expect(mirrors.uniforms.planes.value[0]!.toArray()).toEqual([0, -1, 0, -3]);
  expect(drawnBy(() => Object.assign(view, { area: { ...view.area, width: 65 } }))).toBe(1);
  expect(
    drawnBy(() => {
      camera.position.x += 0.01;
      camera.updateMatrixWorld();
    }),
  ).toBe(1);
  expect(drawnBy(() => mirrors.expire())).toBe(1);
  expect(drawnBy(() => mirrors.clear())).toBe(1);
  expect(drawnBy(() => mirrors.setFaces([]))).toBe(0);
  expect(mirrors.uniforms.planes.value[0]!.toArray()).toEqual([0, 0, 0, 0]);
});
