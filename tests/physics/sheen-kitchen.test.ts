import { beforeAll, expect, it } from 'vitest';
import { lrvFromReflectance } from '../../src/engine/color/lrv';
import { xyzFromEmission } from '../../src/engine/color/xyz';
import { directAt } from '../../src/engine/light/direct-map';
import { paneTransmittance } from '../../src/engine/light/glass';
import { castRay } from '../../src/engine/light/ray';
import type { Vec3 } from '../../src/engine/light/types';
import type { Sheen } from '../../src/engine/sheen/sheen';
import { observer2 } from '../../src/engine/spectrum/observers';
import type { EmissionSpd } from '../../src/engine/spectrum/types';
import { beginLight, gatherGroup, type LitScheme } from '../../src/kitchen/study/lit-scheme';
import { mirroredLight } from '../../src/kitchen/study/mirrored';
import { mirroredRoomOf, normalOf } from '../../src/kitchen/study/mirrored-room-of';
import { readPoint } from '../../src/kitchen/study/point-reading';
import { readMirrored } from '../../src/kitchen/study/read-mirrored';
import { type RoomBasis, studyBasisNow } from '../../src/kitchen/study/room-study';
import { layScheme } from '../../src/kitchen/study/scheme';
import { type SettingLight, settingLight } from '../../src/kitchen/study/setting-light';
import { beginScheme, solveSchemeGroup } from '../../src/kitchen/study/solved-scheme';
import { GROUPS } from '../../src/model/project';
import { demoProject } from '../io/demo';

// A clear mirror laid on the worktop of the demo kitchen, looked at so that one known thing stands in it.

const clear: Sheen = { alpha: 0, part: 1, metal: true };
const UP: Vec3 = [0, 0, 1];

interface Lit {
  readonly basis: RoomBasis;
  readonly lit: LitScheme;
  readonly setting: SettingLight;
}

const project = demoProject();

function lightUp(id: string, under?: RoomBasis): Lit {
  const setting = settingLight(project, project.settings.find((candidate) => candidate.id === id)!);
  if (!setting.ok) throw new Error(setting.problem.text);
  const basis = under ?? studyBasisNow(project, setting.value.daylight);
  const scheme = layScheme(project, project.options[0]!.id, basis.room.surfaces);
  if (!scheme.ok) throw new Error(scheme.problem.text);
  const solved = beginScheme(scheme.value, GROUPS.length);
  const lit = beginLight(basis, solved);
  setting.value.levels.forEach((level, group) => {
    if (level <= 0) return;
    solveSchemeGroup(basis, solved, group);
    gatherGroup(basis, lit, group);
  });
  return { basis, lit, setting: setting.value };
}

let day: Lit;
let evening: Lit;
beforeAll(() => {
  day = lightUp('day');
  // The lamps' light is the same with daylight in the room; in the evening that has level 0.
  evening = lightUp('evening', day.basis);
});

/** What a mirror at `point` facing up shows of `target`: the eye stands on the other side, mirrored. */
function mirroredFrom({ basis, lit, setting }: Lit, point: Vec3, target: Vec3) {
  const eye: Vec3 = [2 * point[0] - target[0], 2 * point[1] - target[1], target[2]];
  const view = { point, normal: UP, eye };
  return mirroredLight(mirroredRoomOf(basis, lit, setting, null), setting, view, clear, 16)!;
}

it('shows the sky through two panes as bright as the standard overcast sky is there', () => {
  const { rect } = day.basis.room.light.windows[0]!;
  const pane: Vec3 = [0, 1, 2].map((k) => rect.origin[k]! + 0.5 * rect.u[k]! + 0.7 * rect.v[k]!) as unknown as Vec3;
  const point: Vec3 = [0.3, pane[1], 0.901];
  const found = mirroredFrom(day, point, pane);
  const d = pane.map((x, k) => x - point[k]!);
  const length = Math.hypot(...d);
  const sine = d[2]! / length;
  // 10000 lx on the open horizontal. CIE overcast (Moon and Spencer 1942): Lz = 9 E / (7 pi), L = Lz (1 + 2 sin) / 3; ISO 15469
  // type 1: Lz = E / 2.4495, L = Lz (1 + 4 exp(-0.7 / sin)) / (1 + 4 exp(-0.7)).
  const byTradition = ((9e4 / (7 * Math.PI)) * (1 + 2 * sine)) / 3;
  const byIso = ((1e4 / 2.4495) * (1 + 4 * Math.exp(-0.7 / sine))) / (1 + 4 * Math.exp(-0.7));
  const sky = day.setting.daylight!.outdoors.sky.traditional ? byTradition : byIso;
  const expected = Math.PI * sky * paneTransmittance(-d[0]! / length, 2);
  // The zenith factor of type 1 as printed; the engine's table of the sky.
  expect(Math.abs(xyzFromEmission(found.met, observer2).y / expected - 1)).toBeLessThan(0.005);
  expect(found.from[0]).toEqual({ source: GROUPS.indexOf('sky'), share: 1 });
});

it('shows a lamp face by its exitance', () => {
  const lamp = evening.basis.room.light.lamps.find(({ group }) => GROUPS[group] === 'ceiling')!;
  const { u, v, origin } = lamp.rect;
  const middle: Vec3 = [0, 1, 2].map((k) => origin[k]! + 0.5 * u[k]! + 0.5 * v[k]!) as unknown as Vec3;
  const found = mirroredFrom(evening, [middle[0] + 0.4, middle[1] - 0.1, 2.3], middle);
  // Lambert: pi times luminance is lm/m2.
  const exitance = lamp.lumens / (Math.hypot(...u) * Math.hypot(...v));
  expect(xyzFromEmission(found.met, observer2).y / exitance).toBeCloseTo(1, 6);
  expect(found.from).toEqual([{ source: GROUPS.indexOf('ceiling'), share: 1 }]);
});

it('shows a wall as bright as its light times its reflectance', () => {
  const { basis, lit, setting } = day;
  const target: Vec3 = [2.9, 1.1, 2.5];
  const found = mirroredFrom(day, [2.6, 1.6, 2.2], target);
  expect(found.from).toEqual([{ source: 'ceiling', share: 1 }]);
  const hit = castRay(basis.transport.fineBvh, [2.9, 1.1, 2.2], [0, 0, 1])!;
  // The reading of that place: its indirect light between nodes; direct light by the engine.
  const indirect = readPoint(basis, lit, setting, [null, null], hit.rect, hit.u, hit.v, null)!.lux;
  const direct = directAt(basis.room.light, basis.transport, target, [0, 0, -1]);
  const lux = indirect + direct.reduce((sum, lx, group) => sum + lx * setting.levels[group]!, 0);
  const { average } = lit.solved.scheme.surfaces[basis.room.surfaces.indexOf('ceiling')]!;
  // LRV is by the 10 degree observer under D65 and the nearest node stands for the place: 5 %.
  expect(
    Math.abs((xyzFromEmission(found.met, observer2).y / lux / lrvFromReflectance(average)) * 100 - 1),
  ).toBeLessThan(0.05);
});

it('reads a veil over what has a gloss and none over what is matt', () => {
  const { basis, lit, setting } = day;
  const read = (surface: string, eye: Vec3) => {
    const rect = basis.room.light.fine.findIndex(
      (face) => basis.room.surfaces[face.surface] === surface && Math.hypot(...face.u) * Math.hypot(...face.v) > 0.1,
    );
    const irradiance = setting.spectra[0]!.map((value) => 300 * value) as EmissionSpd;
    const { average } = lit.solved.scheme.surfaces[basis.room.light.fine[rect]!.surface]!;
    const face = basis.room.light.fine[rect]!;
    const point = face.origin.map((x, k) => x + (face.u[k]! + face.v[k]!) / 2) as unknown as Vec3;
    const normal = normalOf(face);
    const direct = directAt(basis.room.light, basis.transport, point, normal);
    const place = { surface: face.surface, point, normal, eye, direct };
    return readMirrored(basis, lit, setting, null, place, irradiance, average);
  };
  const veil = read('backsplash', [2.5, 2.2, 1.6])!;
  expect(veil.veil).toBeGreaterThan(0);
  expect(veil.parts.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
  expect(veil.lab_d65.every(Number.isFinite)).toBe(true);
  for (const { from } of veil.parts) {
    if (from.kind === 'direct') expect(GROUPS).toContain(from.group);
    else expect(basis.room.surfaces).toContain(from.surface);
  }
  expect(read('ceiling', [2.5, 2.2, 1.6])).toBeNull();
});

it('tells with the reading of a point what an eye sees mirrored there, and nothing without an eye', () => {
  const { basis, lit, setting } = day;
  const eye: Vec3 = [2.6, 1.6, 1.6];
  const { rect, u, v } = castRay(basis.transport.fineBvh, eye, [-0.3, 2.3, -0.4])!;
  const read = (from: Vec3 | null) => readPoint(basis, lit, setting, [null, null], rect, u, v, null, from)!;
  expect(basis.room.surfaces[basis.room.light.fine[rect]!.surface]).toBe('backsplash');
  expect(read(eye).mirrored!.veil).toBeGreaterThan(0);
  expect(read(null).mirrored).toBeNull();
  // What is read besides is the same.
  expect(read(eye).lab_d65).toEqual(read(null).lab_d65);
});
