import { skyLuminance } from '../../src/engine/daylight/sky-kinds';
import type { AtlasLayout, FineRect, PropMesh, Rect, Vec3 } from '../../src/engine/light/types';
import { bakePattern } from '../../src/engine/pattern/bake';
import type { PatternSpec, PatternTexture } from '../../src/engine/pattern/types';
import type { SurfaceId } from '../../src/engine/surface';
import type { Look, RoomLight, SurfaceLook } from '../../src/kitchen/look';
import type { Room } from '../../src/kitchen/types';
import { GROUPS } from '../../src/model/project';
import { halvesFromFloats } from '../../src/view/half-floats';

/** A small room whose light is given by formulas, to check the picture against them. Not a kitchen anybody would build. */

const SURFACE_IDS: readonly SurfaceId[] = ['floor', 'wall', 'ceiling', 'counter', 'base-fronts', 'backsplash', 'tap'];
const SIZE: Vec3 = [3.6, 3, 2.4];

const rect = (surface: number, origin: Vec3, u: Vec3, v: Vec3, s0 = 0.13, t0 = 0.07): FineRect => {
  const length = (a: Vec3) => Math.hypot(...a);
  return {
    origin,
    u,
    v,
    surface,
    piece: 0,
    pattern: { s0, t0, su: length(u), tu: 0, sv: 0, tv: length(v) },
  };
};

function box(surfaces: { top: number; sides: number }, min: Vec3, max: Vec3): FineRect[] {
  const [dx, dy, dz] = [max[0] - min[0], max[1] - min[1], max[2] - min[2]];
  return [
    rect(surfaces.top, [min[0], min[1], max[2]], [dx, 0, 0], [0, dy, 0]),
    rect(surfaces.sides, min, [dx, 0, 0], [0, 0, dz]),
    rect(surfaces.sides, [max[0], min[1], min[2]], [0, dy, 0], [0, 0, dz]),
    rect(surfaces.sides, [max[0], max[1], min[2]], [-dx, 0, 0], [0, 0, dz]),
    rect(surfaces.sides, [min[0], max[1], min[2]], [0, -dy, 0], [0, 0, dz]),
  ];
}

function sphere(center: Vec3, radius: number, surface: number): PropMesh {
  const [rings, sectors] = [12, 24];
  const positions: number[] = [];
  const normals: number[] = [];
  const indices: number[] = [];
  for (let i = 0; i <= rings; i++) {
    for (let j = 0; j <= sectors; j++) {
      const [a, b] = [(Math.PI * i) / rings, (2 * Math.PI * j) / sectors];
      const n = [Math.sin(a) * Math.cos(b), Math.sin(a) * Math.sin(b), Math.cos(a)];
      normals.push(...n);
      positions.push(...n.map((c, k) => center[k]! + radius * c));
      if (i === rings || j === sectors) continue;
      const [p, q] = [i * (sectors + 1) + j, (i + 1) * (sectors + 1) + j];
      indices.push(p, q, p + 1, p + 1, q, q + 1);
    }
  }
  return {
    surface,
    name: 'tap',
    positions: new Float32Array(positions),
    normals: new Float32Array(normals),
    indices: new Uint32Array(indices),
  };
}

/** A strip of its counter's pattern that leans over the front edge of the island, in two triangles, veins running on from the top. */
function bevel(surface: number): PropMesh {
  const slope = Math.SQRT1_2;
  return {
    surface,
    name: 'edge',
    positions: new Float32Array([1, 0.9, 0.9, 2.2, 0.9, 0.9, 2.2, 0.82, 0.82, 1, 0.82, 0.82]),
    normals: new Float32Array(Array.from({ length: 4 }, () => [0, -slope, slope]).flat()),
    // Counter-clockwise from outside.
    indices: new Uint32Array([0, 2, 1, 0, 3, 2]),
    pattern: new Float32Array([0.13, 0.07, 1.33, 0.07, 1.33, -0.043, 0.13, -0.043]),
  };
}

export function smallRoom(): Room {
  const [w, d, h] = SIZE;
  const window: Rect = { origin: [0, 0.7, 1], u: [0, 1.2, 0], v: [0, 0, 1], surface: -1 };
  const lamp: Rect = { origin: [1.5, 1.2, 2.38], u: [0, 0.4, 0], v: [0.4, 0, 0], surface: -1 };
  const fine: FineRect[] = [
    rect(0, [0, 0, 0], [w, 0, 0], [0, d, 0]),
    rect(2, [0, 0, h], [0, d, 0], [w, 0, 0]),
    // Back wall: below, beside, above and behind the backsplash.
    rect(1, [0, d, 0], [w, 0, 0], [0, 0, 0.94]),
    rect(1, [0, d, 0.94], [1.2, 0, 0], [0, 0, 0.6]),
    rect(5, [1.2, d, 0.94], [w - 1.2, 0, 0], [0, 0, 0.6]),
    rect(1, [0, d, 1.54], [w, 0, 0], [0, 0, h - 1.54]),
    rect(1, [w, 0, 0], [-w, 0, 0], [0, 0, h]),
    rect(1, [w, d, 0], [0, -d, 0], [0, 0, h]),
    // Left wall round the window.
    rect(1, [0, 0, 0], [0, d, 0], [0, 0, 1]),
    rect(1, [0, 0, 2], [0, d, 0], [0, 0, h - 2]),
    rect(1, [0, 0, 1], [0, 0.7, 0], [0, 0, 1]),
    rect(1, [0, 1.9, 1], [0, d - 1.9, 0], [0, 0, 1]),
    rect(-1, window.origin, window.u, window.v),
    ...box({ top: 3, sides: 4 }, [1.2, 2.4, 0], [3.6, 3, 0.9]),
    ...box({ top: 3, sides: 4 }, [1, 0.9, 0], [2.2, 1.5, 0.9]),
    rect(-1, lamp.origin, lamp.u, lamp.v),
  ];
  return {
    surfaces: SURFACE_IDS,
    size: SIZE,
    viewpoints: [],
    eyeLimits: { min: [0.1, 0.1, 0.3], max: [w - 0.1, d - 0.1, h - 0.1] },
    edges: [],
    light: {
      surfaces: SURFACE_IDS,
      groups: GROUPS,
      coarse: [],
      fine,
      lamps: [{ group: 4, rect: lamp, lumens: 2000 }],
      windows: [{ rect: window, panes: 2, facing_deg: 0, groups: { sky: 0, sun: 1, ground: 2, facing: 3 } }],
      props: [sphere([2.6, 2.7, 1.05], 0.08, 6), bevel(3)],
      worktop: [13],
    },
  };
}

/** Direct light by formula, lx. Daylight: smooth from the window, and from the ground before it. */
function daylightAt([x, y, z]: Vec3): readonly [number, number, number, number] {
  const sky = 900 / (0.4 + x * x + (y - 1.3) ** 2 * 0.6 + (z - 1.5) ** 2);
  return [sky, 0, 30 + 20 * z, 0];
}

/** Lamps: smooth from the ceiling, and a narrow band of light over the counter. */
function lampsAt([x, y, z]: Vec3): readonly [number, number, number, number] {
  const ceiling = 700 / (0.6 + (x - 1.7) ** 2 + (y - 1.4) ** 2 + (z - 2.4) ** 2);
  const strip = 800 * Math.exp(-((y - 2.8) ** 2 + (z - 1.2) ** 2) / 0.09);
  return [ceiling, strip, 0, 0];
}

/** Indirect colour of a component by formula, exposed linear sRGB. */
function indirectAt([x, y, z]: Vec3, component: number): readonly [number, number, number] {
  const dim = 0.06 + 0.03 * Math.sin(1.3 * x + 0.7 * component) + 0.02 * Math.cos(1.7 * y) + 0.01 * z;
  return [dim * (1 + 0.2 * component), dim, dim * (1 - 0.15 * component)];
}

function layoutOf(rects: readonly Rect[], spacing_m: number, width: number): AtlasLayout {
  const blocks = new Int32Array(4 * rects.length);
  let [x, y, rowHeight] = [0, 0, 0];
  rects.forEach(({ u, v }, i) => {
    const samples = [u, v].map((edge) => Math.max(1, 1 + Math.round(Math.hypot(...edge) / spacing_m)));
    // One face with a single sample, to check that it counts as constant.
    const [alongU, alongV] = i === 5 ? [1, 1] : (samples as [number, number]);
    if (x + alongU > width) [x, y, rowHeight] = [0, y + rowHeight, 0];
    blocks.set([x, y, alongU, alongV], 4 * i);
    x += alongU;
    rowHeight = Math.max(rowHeight, alongV);
  });
  return { width, height: y + rowHeight, blocks };
}

function fillAtlas(
  into: Float32Array,
  offset: number,
  rects: readonly Rect[],
  { width, blocks }: AtlasLayout,
  valueAt: (place: Vec3) => readonly number[],
): void {
  rects.forEach(({ origin, u, v }, i) => {
    const [x, y, alongU, alongV] = blocks.subarray(4 * i) as unknown as [number, number, number, number];
    for (let k = 0; k < alongV; k++) {
      for (let j = 0; j < alongU; j++) {
        const [a, b] = [alongU > 1 ? j / (alongU - 1) : 0.5, alongV > 1 ? k / (alongV - 1) : 0.5];
        const place = [0, 1, 2].map((c) => origin[c]! + a * u[c]! + b * v[c]!) as unknown as Vec3;
        into.set(valueAt(place), offset + 4 * ((y + k) * width + x + j));
      }
    }
  });
}

export function smallLight(room: Room): RoomLight {
  const { fine, props } = room.light;
  const directAtlas = layoutOf(fine, 0.1, 128);
  const map = (valueAt: (place: Vec3) => readonly number[]) => {
    const direct = new Float32Array(4 * directAtlas.width * directAtlas.height);
    fillAtlas(direct, 0, fine, directAtlas, valueAt);
    return direct;
  };
  return {
    directAtlas,
    direct: [map(daylightAt), map(lampsAt)],
    nodeAtlas: layoutOf(fine, 0.5, 64),
    propDirect: [
      props.map(({ positions }) => perVertex(positions, daylightAt)),
      props.map(({ positions }) => perVertex(positions, lampsAt)),
    ],
    revision: 1,
    isFinal: true,
  };
}

function perVertex(positions: Float32Array, valueAt: (place: Vec3) => readonly number[]): Float32Array {
  const values: number[] = [];
  for (let i = 0; i < positions.length; i += 3) {
    values.push(...valueAt([positions[i]!, positions[i + 1]!, positions[i + 2]!]));
  }
  return new Float32Array(values);
}

/** Weights of three components and a gain that runs over the period: all bytes differ from their neighbours. */
function testPattern(size: number, period_m: number): PatternTexture {
  const data = new Uint8Array(4 * size * size);
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) {
      const [a, b] = [(2 * Math.PI * x) / size, (2 * Math.PI * y) / size];
      const vein = Math.round(110 * (0.5 + 0.5 * Math.sin(3 * a + 2 * Math.sin(b))));
      const fleck = Math.round(70 * (0.5 + 0.5 * Math.cos(5 * b + a)));
      const joint = x % 32 < 2 || y % 32 < 2 ? 60 : 0;
      data.set([vein, fleck, joint, Math.round(128 + 40 * Math.sin(a + 4 * b))], 4 * (y * size + x));
    }
  }
  return { width: size, height: size, width_m: period_m, height_m: period_m, data };
}

/** The pattern of a look instead of the test pattern, and how far it is moved: (ds, dt) on the room's one piece, m. */
export interface LaidPattern {
  readonly spec: PatternSpec;
  readonly shift?: readonly [number, number];
  /** The spec baked, if it is already. */
  readonly baked?: PatternTexture;
}

/** `tint` above 0 makes a second look that differs everywhere; `exposure` makes direct light as many times brighter. */
export function smallLook(
  room: Room,
  light: RoomLight,
  tint = 0,
  gloss: readonly number[] = [],
  exposure = 1,
  laid: LaidPattern | null = null,
): Look {
  const { fine, props, lamps } = room.light;
  const base: readonly (readonly [number, number, number])[] = [
    [0.42, 0.3, 0.2],
    [0.75, 0.73, 0.68],
    [0.85, 0.85, 0.83],
    [0.35, 0.34, 0.33],
    [0.28, 0.36, 0.42],
    [0.6, 0.62, 0.58],
    [0.55, 0.5, 0.42],
  ];
  const off = [0, 0, 0];
  const groupWhites = [
    ...[[0.00095, 0.001, 0.00108], off, [0.0009, 0.001, 0.0008], off],
    ...[[0.00125, 0.001, 0.0007], [0.0011, 0.001, 0.00085], off, off],
  ].map((white) => white.map((channel) => channel * exposure));
  const surfaces = base.map((color, surface): SurfaceLook => {
    const flat = [0, 1, 2, 3].map((c) => color.map((v, k) => v * (1 - 0.2 * c) + tint * 0.15 * (k === 0 ? 1 : -1)));
    const groupColors = flat.map(
      (own) => new Float32Array(groupWhites.flatMap((white) => white.map((w, k) => w * own[k]!))),
    );
    const patterned = surface === 0 || surface === 3 || surface === 5;
    return {
      surface,
      finish: `finish-${surface}`,
      groupColors: patterned ? groupColors.slice(0, laid?.spec.shares.length) : groupColors.slice(0, 1),
      flat: flat as unknown as SurfaceLook['flat'],
      glossGu: gloss[surface] ?? 0,
      metal: surface === 6,
      pattern: patterned ? 'waves' : null,
      shifts: patterned && laid?.shift ? Float32Array.from(laid.shift) : null,
    };
  });
  const layer = 4 * light.nodeAtlas.width * light.nodeAtlas.height;
  const nodes = new Float32Array(4 * layer);
  for (let c = 0; c < 4; c++) {
    fillAtlas(nodes, c * layer, fine, light.nodeAtlas, (place) => [...indirectAt(place, c), 1]);
  }
  const nodeColors = new Uint16Array(nodes.length);
  halvesFromFloats(nodeColors, nodes);
  return {
    option: `option-${tint}`,
    setting: 'day',
    seenBy: 'used-to-it',
    surfaces,
    groupWhites: new Float32Array(groupWhites.flat()),
    nodeColors,
    propColors: props.map(({ positions, pattern }) => {
      const components = pattern ? [0, 1, 2, 3] : [0];
      return Float32Array.from(
        components.flatMap((c) => Array.from(perVertex(positions, (place) => indirectAt(place, c)))),
      );
    }),
    patterns: new Map([['waves', laid ? (laid.baked ?? bakePattern(laid.spec)) : testPattern(128, 0.9)]]),
    // Unlike all else that is bright, so that its edges show.
    lampColors: lamps.map(() => [30, 12, 20] as const),
    outside: {
      zenith: [30, 32, 35],
      ground: [5, 5, 5],
      facing: [0, 0, 0],
      sky: skyLuminance('traditional', [0, 0, 1], 1),
      sunShines: false,
      isBrick: false,
      blind: 1,
      covered: 0,
      cloths: [],
      darkenedBy: 8,
    },
  };
}
