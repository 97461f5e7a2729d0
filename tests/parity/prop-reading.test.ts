import { beforeAll, expect, it } from 'vitest';
import { pictureSrgb8 } from '../../src/engine/color/picture-light';
import { propDirect } from '../../src/engine/light/prop-gather';
import { beginLight, gatherGroup, type LitScheme } from '../../src/kitchen/study/lit-scheme';
import { paintLook } from '../../src/kitchen/study/paint-look';
import { readPropPoint } from '../../src/kitchen/study/point-reading';
import { type RoomBasis, studyBasisNow } from '../../src/kitchen/study/room-study';
import { layScheme } from '../../src/kitchen/study/scheme';
import { type SettingLight, settingLight } from '../../src/kitchen/study/setting-light';
import { beginScheme, solveSchemeGroup } from '../../src/kitchen/study/solved-scheme';
import { GROUPS } from '../../src/model/project';
import { demoProject } from '../io/demo';

// A place on a prop, read in 5 nm steps by the study and added up from what the picture is given: two ways to one color.

const project = demoProject();
let basis: RoomBasis;
let lit: LitScheme;
let setting: SettingLight;

beforeAll(() => {
  const found = settingLight(project, project.settings.find(({ id }) => id === 'evening')!);
  if (!found.ok) throw new Error(found.problem.text);
  setting = found.value;
  basis = studyBasisNow(project, setting.daylight);
  const scheme = layScheme(project, project.options[0]!.id, basis.room.surfaces);
  if (!scheme.ok) throw new Error(scheme.problem.text);
  const solved = beginScheme(scheme.value, GROUPS.length);
  lit = beginLight(basis, solved);
  setting.levels.forEach((level, group) => {
    if (level <= 0) return;
    solveSchemeGroup(basis, solved, group);
    gatherGroup(basis, lit, group);
  });
}, 120_000);

it('reads on a prop what the picture shows there, within a code value', () => {
  const { look } = paintLook(basis, lit, setting);
  const { props } = basis.room.light;
  const direct = propDirect(basis.room.light, basis.transport, { id: 'lamps', firstGroup: 4 });
  let compared = 0;
  props.forEach(({ surface, indices }, prop) => {
    for (let i = 0; i < indices.length; i += 3 * Math.max(1, Math.floor(indices.length / 60))) {
      const vertices = [indices[i]!, indices[i + 1]!, indices[i + 2]!] as const;
      const weights = [0.5, 0.3, 0.2] as const;
      const reading = readPropPoint(basis, lit, setting, [null, null], { prop, vertices, weights }, null);
      if (!reading) continue;
      const finish = look.surfaces[surface]!;
      const color = [0, 0, 0];
      const white = [0, 0, 0];
      vertices.forEach((vertex, w) => {
        for (let k = 0; k < 3; k++) {
          color[k]! += weights[w]! * look.propColors[prop]![3 * vertex + k]!;
          for (let g = 0; g < 4; g++) {
            const lx = weights[w]! * direct[prop]![4 * vertex + g]!;
            color[k]! += lx * finish.groupColors[0]![3 * (4 + g) + k]!;
            white[k]! += lx * look.groupWhites[3 * (4 + g) + k]!;
          }
        }
      });
      const over = Math.max(1, ...white) ** 0.6;
      const [r, g, b] = color.map((x) => x / over) as [number, number, number];
      pictureSrgb8({ r, g, b }).forEach((byte, k) => {
        expect(Math.abs(byte - reading.srgb8[k]!)).toBeLessThanOrEqual(1);
      });
      compared++;
    }
  });
  expect(compared).toBeGreaterThan(40);
});

it('has no reading for a place that is on no prop', () => {
  const place = { prop: 999, vertices: [0, 1, 2], weights: [1, 0, 0] } as const;
  expect(readPropPoint(basis, lit, setting, [null, null], place, null)).toBeNull();
});
