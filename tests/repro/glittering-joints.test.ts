import { expect, it } from 'vitest';
import scene from '../../scenes/l-island.json';
import { layoutAtlas } from '../../src/engine/light/atlas';
import { SURFACES } from '../../src/engine/surface';
import { buildRoom } from '../../src/kitchen/build-room';
import { FRONT_THICKNESS } from '../../src/kitchen/parts/front';
import type { Kitchen } from '../../src/model/kitchen';
import { propGeometry } from '../../src/view/prop-geometry';
import { surfaceGeometries } from '../../src/view/surface-geometry';

// Bright dashes ran under the wall units and along the joints of doors, and round framed panels: faces a pixel wide that are seen at a
// flat angle mirrored the lit wall.
const { light } = buildRoom(scene as unknown as Kitchen);

it('lets the edges of fronts mirror nothing, their faces the room', () => {
  const surface = SURFACES.indexOf('wall-fronts');
  const fine = light.fine.filter((rect) => rect.surface === surface);
  const atlas = layoutAtlas(fine, () => 1);
  const geometry = surfaceGeometries({ ...light, fine }, atlas, atlas)[surface]!;
  const normals = geometry.getAttribute('normal');
  const narrow = fine.map(({ u, v }) => Math.min(Math.hypot(...u), Math.hypot(...v)) <= FRONT_THICKNESS + 1e-9);
  const mirrors = Array.from({ length: normals.count }, (_, i) => normals.getW(i) > 0.5);
  expect(narrow).toContain(true);
  expect(narrow).toContain(false);
  expect(new Set(mirrors)).toEqual(new Set([true, false]));
  // Faces come one after another, four corners each or more.
  expect(mirrors.filter((one) => !one).length).toBeGreaterThanOrEqual(4 * narrow.filter(Boolean).length);
});

it('lets bevels mirror nothing, and handles the room', () => {
  const fourth = (name: string): number =>
    propGeometry(light.props.find((prop) => prop.name === name)!)
      .getAttribute('normal')
      .getW(0);
  expect(fourth('base-fronts bevels')).toBe(0);
  expect(fourth('hardware handles')).toBe(1);
});
