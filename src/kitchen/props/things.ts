import type { Solid, Vec3 } from '../../engine/light/types';
import type { SurfaceId } from '../../engine/surface';
import { lathe, type Turned } from './lathe';
import { append, cross, dot, emptyMesh, type Mesh, normalized, plus } from './mesh';
import { tube } from './tube';

// Things one finds in kitchens, neutral: white or steel. Sizes common practice, no source, m.

/** A thing in its place, with the box that cuts off light for what stands beside it. */
export interface Thing {
  readonly surface: SurfaceId;
  readonly mesh: Mesh;
  readonly shade: Solid;
}

/** A place to stand things: along, out from the wall, up from where they stand. */
export type Stand = (along: number, out: number, up: number) => Vec3;

const SIDES = 24;
/** A square of the area of a circle has this share of its radius as half its side. */
const SAME_AREA = Math.sqrt(Math.PI) / 2;

export function bowl(at: Stand): Thing {
  const facets: readonly Turned[][] = [
    [
      [0, 0],
      [0.045, 0],
    ],
    [
      [0.045, 0],
      [0.05, 0.006],
      [0.085, 0.024],
      [0.113, 0.05],
      [0.128, 0.08],
      [0.1255, 0.0815],
      [0.109, 0.053],
      [0.081, 0.028],
      [0.045, 0.0125],
      [0, 0.009],
    ],
  ];
  const foot = at(0, 0, 0);
  return { surface: 'frame', mesh: lathe(foot, facets, SIDES + 4), shade: upright(foot, 0.085, 0, 0.07) };
}

export function vase(at: Stand): Thing {
  const facets: readonly Turned[][] = [
    [
      [0, 0],
      [0.04, 0],
    ],
    [
      [0.04, 0],
      [0.046, 0.006],
      [0.062, 0.05],
      [0.066, 0.09],
      [0.056, 0.14],
      [0.034, 0.18],
      [0.024, 0.205],
      [0.026, 0.228],
      [0.031, 0.24],
      [0.028, 0.241],
      [0.0225, 0.228],
      [0.02, 0.205],
      [0.028, 0.18],
      [0, 0.12],
    ],
  ];
  const foot = at(0, 0, 0);
  return { surface: 'frame', mesh: lathe(foot, facets, SIDES), shade: upright(foot, 0.055, 0, 0.2) };
}

export function cup(at: Stand, handle: 1 | -1): Thing {
  const facets: readonly Turned[][] = [
    [
      [0, 0],
      [0.03, 0],
    ],
    [
      [0.03, 0],
      [0.034, 0.005],
      [0.04, 0.04],
      [0.0415, 0.082],
      [0.0395, 0.083],
      [0.0375, 0.045],
      [0.031, 0.012],
      [0, 0.008],
    ],
  ];
  const foot = at(0, 0, 0);
  const mesh = lathe(foot, facets, 20);
  const path = [0.068, 0.066, 0.05, 0.032, 0.022].map((up, i) =>
    at(handle * [0.038, 0.058, 0.068, 0.058, 0.036][i]!, 0, up),
  );
  append(mesh, tube(path, [0.0045, 0.0045, 0.0045, 0.0045, 0.0045], 6));
  return { surface: 'frame', mesh, shade: upright(foot, 0.037, 0, 0.08) };
}

/** A jar of spoons: two things, as the spoons are of steel. */
export function jar(at: Stand): Thing[] {
  const facets: readonly Turned[][] = [
    [
      [0, 0],
      [0.05, 0],
    ],
    [
      [0.05, 0],
      [0.055, 0.005],
      [0.055, 0.08],
      [0.055, 0.152],
      [0.053, 0.157],
      [0.05, 0.153],
      [0.05, 0.1],
      [0.048, 0.06],
      [0, 0.058],
    ],
  ];
  const foot = at(0, 0, 0);
  const spoons = emptyMesh();
  for (const [a, d, up] of [
    [0.036, 0.01, 0.3],
    [-0.03, 0.022, 0.285],
    [-0.004, -0.034, 0.31],
  ] as const) {
    const along = (share: number): Vec3 =>
      at(a * (1.9 * share - 0.75), d * (1.9 * share - 0.75), 0.062 + (up - 0.062) * share);
    append(spoons, tube([0, 0.5, 0.8, 0.87, 0.95, 1].map(along), [0.004, 0.0045, 0.005, 0.013, 0.014, 0.006], 8));
  }
  return [
    { surface: 'frame', mesh: lathe(foot, facets, SIDES), shade: upright(foot, 0.055, 0, 0.15) },
    { surface: 'appliance', mesh: spoons, shade: upright(at(0, 0, 0.15), 0.012, 0, 0.1) },
  ];
}

/** A lidded pot with two handles. */
export function pot(at: Stand): Thing {
  const facets: readonly Turned[][] = [
    [
      [0, 0],
      [0.1, 0],
    ],
    [
      [0.1, 0],
      [0.106, 0.006],
      [0.107, 0.06],
      [0.107, 0.115],
    ],
    [
      [0.107, 0.115],
      [0.111, 0.116],
      [0.111, 0.121],
    ],
    [
      [0.111, 0.121],
      [0.104, 0.126],
      [0.06, 0.138],
      [0.02, 0.142],
      [0, 0.1425],
    ],
  ];
  const foot = at(0, 0, 0);
  const mesh = lathe(foot, facets, SIDES + 4);
  append(
    mesh,
    tube(
      [0.141, 0.152, 0.157, 0.165, 0.168].map((up) => at(0, 0, up)),
      [0.006, 0.006, 0.017, 0.018, 0.013],
      14,
    ),
  );
  for (const way of [1, -1]) {
    const path = [-0.042, -0.036, 0, 0.036, 0.042].map((out, i) =>
      at(way * [0.1, 0.126, 0.134, 0.126, 0.1][i]!, out, 0.092),
    );
    append(mesh, tube(path, [0.005, 0.005, 0.0055, 0.005, 0.005], 8));
  }
  return { surface: 'appliance', mesh, shade: upright(foot, 0.107, 0, 0.13) };
}

/** Of a board that leans on the wall: width, height, thickness, its top's distance from the wall, its angle. */
const BOARD = { width: 0.26, height: 0.37, thickness: 0.018, top: 0.0095, angle: (10 * Math.PI) / 180 };

/** A cutting board that leans on the wall; `at` measures from the wall itself. */
export function board(at: Stand): Thing {
  const { width, height, thickness, top, angle } = BOARD;
  const foot = top + height * Math.sin(angle);
  const half = width / 2;
  const corner = (a: number, up: number, thick: number): Vec3 =>
    at(a, foot - up * Math.sin(angle) + thick * Math.cos(angle), up * Math.cos(angle) + thick * Math.sin(angle));
  const corners = [0, thickness].flatMap((thick) =>
    [0, height].flatMap((up) => [-half, half].map((a) => corner(a, up, thick))),
  );
  const [p, q] = [at(-half, 0.3 * foot, 0), at(half, foot, 0.9 * height)];
  return { surface: 'frame', mesh: block(corners), shade: between(p, q) };
}

/** A block of eight corners, numbered by three bits; its faces' corners are its own. */
function block(corners: readonly Vec3[]): Mesh {
  const mesh = emptyMesh();
  const middle = corners.reduce<Vec3>((sum, p) => plus(sum, p, 1 / corners.length), [0, 0, 0]);
  for (const bit of [1, 2, 4]) {
    const [u, v] = [1, 2, 4].filter((other) => other !== bit) as [number, number];
    for (const side of [0, bit]) {
      const ring = [side, side | u, side | u | v, side | v].map((k) => corners[k]!);
      const normal = normalized(cross(plus(ring[1]!, ring[0]!, -1), plus(ring[3]!, ring[0]!, -1)));
      const isOut = dot(normal, plus(ring[0]!, middle, -1)) > 0;
      const first = mesh.positions.length / 3;
      for (const p of ring) {
        mesh.positions.push(...p);
        mesh.normals.push(...plus([0, 0, 0], normal, isOut ? 1 : -1));
      }
      for (const k of isOut ? [0, 1, 2, 0, 2, 3] : [0, 2, 1, 0, 3, 2]) mesh.indices.push(first + k);
    }
  }
  return mesh;
}

/** A box with the footprint of a circle. */
function upright([x, y, z]: Vec3, radius: number, low: number, high: number): Solid {
  const half = SAME_AREA * radius;
  return { min: [x - half, y - half, z + low], max: [x + half, y + half, z + high] };
}

const between = (p: Vec3, q: Vec3): Solid => ({
  min: [Math.min(p[0], q[0]), Math.min(p[1], q[1]), Math.min(p[2], q[2])],
  max: [Math.max(p[0], q[0]), Math.max(p[1], q[1]), Math.max(p[2], q[2])],
});
