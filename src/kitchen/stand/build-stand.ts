import { cutRect, splitContacts } from '../../engine/light/split-contacts';
import type { FineRect, LampFace, LightRoom, Rect, Solid, Vec3 } from '../../engine/light/types';
import { SURFACES, type SurfaceId } from '../../engine/surface';
import { GROUPS, type Option, type Project } from '../../model/project';
import type { Room } from '../types';
import { BOOTH, CHIEF_FACES, FILL_FACES } from './booth';
import { chooseSamples } from './choose-samples';
import { placeSamples } from './place-samples';
import { sampleBox, sampleFaces } from './sample-boxes';
import type { Arrangement, PlacedSample } from './types';
import { standViewpoints } from './viewpoints';

/** Places of the stand among the surfaces of its room, after those of a kitchen. */
export const BACKING = SURFACES.length;
export const BOOTH_WALL = SURFACES.length + 1;

/** The sample stand as a room of its own, and what stands where. */
export interface Stand {
  readonly room: Room;
  readonly samples: readonly PlacedSample[];
}

/** Depth of a lamp's body, m. */
const BODY_M = 0.01;

const NO_PATTERN = { s0: 0, t0: 0, su: 0, tu: 0, sv: 0, tv: 0 } as const;

/**
 * The samples of one or two options, of the surfaces the room has, on a table before a panel, in a closed booth. Each light group has two lamp faces, of one
 * lumen each: what they send is set by `standLight`. Lamps stand in the order of GROUPS, chief faces first.
 */
export function buildStand(
  project: Pick<Project, 'library' | 'kitchen'>,
  options: readonly Option[],
  arrangement: Arrangement,
  present: readonly SurfaceId[] = SURFACES,
): Stand {
  const samples = placeSamples(chooseSamples(project, options, present), arrangement);
  const solids = samples.map(sampleBox);
  const shell = splitContacts(boothShell(), [...solids, ...lampBodies()], cutPlain);
  const cut = (detailed: boolean): FineRect[] => {
    const faces = samples.flatMap((sample, i) =>
      sampleFaces(sample, SURFACES.indexOf(sample.surface), i + 1, detailed),
    );
    return [...shell, ...faces.filter(isOffTable), ...lampRects()];
  };
  const light: LightRoom = {
    surfaces: [...SURFACES, 'backing', 'booth'],
    groups: GROUPS,
    coarse: cut(false),
    fine: cut(true),
    lamps: lampFaces(),
    windows: [],
    props: [],
    worktop: [],
  };
  const { width, depth, height } = BOOTH;
  const room: Room = {
    light,
    surfaces: SURFACES,
    viewpoints: standViewpoints(solids),
    eyeLimits: { min: [0.5, 0.15, 0.12], max: [width - 0.5, depth - 0.3, height - 0.2] },
    size: [width, depth, height],
    edges: [],
  };
  return { room, samples };
}

/** The lower edge of what stands on the table is not seen. */
const isOffTable = ({ origin, u, v }: FineRect): boolean => origin[2] > 0 || u[2] > 0 || v[2] > 0;

/** Only the shell is touched, and it has no pattern. */
const cutPlain = (rect: FineRect, u0: number, u1: number, v0: number, v1: number): FineRect => ({
  ...cutRect(rect, u0, u1, v0, v1),
  pattern: NO_PATTERN,
  piece: 0,
});

/** Table, panel, and the walls and ceiling about them, all seen from within. */
function boothShell(): FineRect[] {
  const { width: w, depth: d, height: h } = BOOTH;
  const face = (surface: number, origin: Vec3, u: Vec3, v: Vec3): FineRect => plain({ surface, origin, u, v });
  return [
    face(BACKING, [0, 0, 0], [w, 0, 0], [0, d, 0]),
    face(BACKING, [0, d, 0], [w, 0, 0], [0, 0, h]),
    face(BOOTH_WALL, [0, 0, h], [0, d, 0], [w, 0, 0]),
    face(BOOTH_WALL, [0, 0, 0], [0, 0, h], [w, 0, 0]),
    face(BOOTH_WALL, [0, 0, 0], [0, d, 0], [0, 0, h]),
    face(BOOTH_WALL, [w, 0, 0], [0, 0, h], [0, d, 0]),
  ];
}

const plain = (rect: Rect): FineRect => ({ ...rect, pattern: NO_PATTERN, piece: 0 });

const faces = (): Rect[] =>
  [...CHIEF_FACES, ...FILL_FACES].map(({ min, max, towards }) => {
    const [x, y, z]: Vec3 = [max[0] - min[0], max[1] - min[1], max[2] - min[2]];
    const edges: readonly [Vec3, Vec3] =
      towards === 'x+'
        ? [
            [0, y, 0],
            [0, 0, z],
          ]
        : towards === 'y+'
          ? [
              [0, 0, z],
              [x, 0, 0],
            ]
          : [
              [0, y, 0],
              [x, 0, 0],
            ];
    return { surface: -1, origin: min, u: edges[0], v: edges[1] };
  });

/** What stands in the shell where a lamp face is: there the shell is left out. */
const lampBodies = (): Solid[] =>
  [...CHIEF_FACES, ...FILL_FACES].map(({ min, max, towards }) => {
    const [axis, from, to] =
      towards === 'z-' ? [2, BOOTH.height - BODY_M, BOOTH.height] : [towards === 'x+' ? 0 : 1, 0, BODY_M];
    const at = (point: Vec3, value: number): Vec3 => point.map((x, k) => (k === axis ? value : x)) as unknown as Vec3;
    return { min: at(min, from), max: at(max, to) };
  });

const lampRects = (): FineRect[] => faces().map(plain);

const lampFaces = (): LampFace[] => faces().map((rect, index) => ({ group: index % GROUPS.length, rect, lumens: 1 }));
