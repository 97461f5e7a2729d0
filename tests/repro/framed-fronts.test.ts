import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { finishGather, gatherPoint, startGather } from '../../src/engine/light/gather-rows';
import { buildNodes } from '../../src/engine/light/nodes';
import { rectNormal } from '../../src/engine/light/rect-bvh';
import { meanLight } from '../../src/engine/light/surface-light';
import { buildTransport } from '../../src/engine/light/transport';
import { mulberry32 } from '../../src/engine/random';
import { buildRoom } from '../../src/kitchen/build-room';

// Nodes at the edge of a recessed panel stood in the corner of its frame, saw half of the room, and carried half of the
// panel's mean: it came out a fifth too dark. The mean over random points of the panels is the check.
it('reads the panels of framed doors as the mean of their points', () => {
  const room = buildRoom(JSON.parse(readFileSync('scenes/l-island.json', 'utf8'))).light;
  const transport = buildTransport(room);
  const base = room.surfaces.indexOf('base-fronts');
  const panels = [...room.fine.entries()].filter(
    ([, rect]) =>
      rect.surface === base &&
      rectNormal(rect).axis !== 2 &&
      Math.min(Math.hypot(...rect.u), Math.hypot(...rect.v)) > 0.2,
  );
  expect(panels.length).toBeGreaterThan(6);
  const nodes = buildNodes(room, transport, { rays: 128 });
  const mean = meanLight(
    room,
    transport,
    nodes,
    panels.map(([index]) => index),
  ).gather;
  const found = mean.reduce((sum, share) => sum + share, 0);

  const random = mulberry32(4);
  const gatherer = startGather(room, transport, 128, 9);
  const areas = panels.map(([, rect]) => Math.hypot(...rect.u) * Math.hypot(...rect.v));
  const total = areas.reduce((sum, area) => sum + area, 0);
  const points = 1500;
  for (let n = 0; n < points; n++) {
    let place = random() * total;
    let k = 0;
    while (k < areas.length - 1 && place > areas[k]!) place -= areas[k++]!;
    const rect = panels[k]![1];
    const [fu, fv] = [random(), random()];
    const at = (axis: 0 | 1 | 2) => rect.origin[axis] + fu * rect.u[axis] + fv * rect.v[axis];
    const { axis, sign } = rectNormal(rect);
    const normal = [0, 1, 2].map((one) => (one === axis ? sign : 0)) as [number, number, number];
    gatherPoint(gatherer, at(0), at(1), at(2), ...normal);
  }
  const rows = finishGather(gatherer);
  const bright = (columns: ArrayLike<number>, values: ArrayLike<number>, light: (patch: number) => number) => {
    let sum = 0;
    for (let e = 0; e < values.length; e++) sum += values[e]! * light(columns[e]!);
    return sum;
  };
  // What counts is light from far away, not from the door's own frame.
  const fromFar = (patch: number) => (transport.patches.surface[patch] === base ? 0 : 1);
  const expected = bright(rows.column, rows.value, fromFar) / points;
  const own = bright(Array.from(mean.keys()), mean, fromFar);
  expect(found).toBeGreaterThan(0.9);
  expect(Math.abs(own / expected - 1)).toBeLessThan(0.04);
});
