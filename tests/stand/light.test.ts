import { beforeAll, describe, expect, it } from 'vitest';
import { directTexels } from '../../src/engine/light/direct-texels';
import { SURFACES } from '../../src/engine/surface';
import { buildStand } from '../../src/kitchen/stand/build-stand';
import { beginLight, gatherGroup } from '../../src/kitchen/study/lit-scheme';
import { readPoint } from '../../src/kitchen/study/point-reading';
import { type RoomBasis, studyBasisNow } from '../../src/kitchen/study/room-study';
import { layScheme } from '../../src/kitchen/study/scheme';
import { settingLight } from '../../src/kitchen/study/setting-light';
import { beginScheme, solveSchemeGroup } from '../../src/kitchen/study/solved-scheme';
import { LAMP_LAYERS, mapsLit } from '../../src/kitchen/study/stand-light';
import { readSamples } from '../../src/kitchen/study/stand-samples';
import { standScheme } from '../../src/kitchen/study/stand-scheme';
import { type StandBase, standBaseInSteps, standInRoom } from '../../src/kitchen/study/stand-study';
import { GROUPS } from '../../src/model/project';
import { smallProject } from '../workers/small-project';

const option = 'our-floor';
const finished = <T>(steps: Generator<unknown, T>): T => {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
};
const unwrap = <T>(result: { ok: true; value: T } | { ok: false }): T => {
  if (!result.ok) throw new Error('refused');
  return result.value;
};

let base: StandBase;
const stand = buildStand(smallProject, smallProject.options, 'as-in-room');
beforeAll(() => {
  base = finished(standBaseInSteps(stand, 'gray'));
});

describe.each(['day', 'evening'])('the light of the %s', (id) => {
  const setting = unwrap(settingLight(smallProject, smallProject.settings.find((one) => one.id === id)!));
  let room: RoomBasis;
  let lit: ReturnType<typeof standInRoom>;
  beforeAll(() => {
    room = studyBasisNow(smallProject, setting.daylight);
    lit = standInRoom(base, room);
  });

  it('gives what lies what the worktop has, each group by itself, and what stands as near as lamps can', () => {
    GROUPS.forEach((_, group) => {
      expect(lit.reached.flat[group]!).toBeCloseTo(room.worktopLight[group]!, 3);
      const [chief, fill] = [lit.lumens[group]!, lit.lumens[GROUPS.length + group]!];
      expect(chief).toBeGreaterThanOrEqual(0);
      expect(fill).toBeGreaterThanOrEqual(0);
      if (chief > 0 && fill > 0) expect(lit.reached.upright[group]!).toBeCloseTo(lit.wanted.upright[group]!, 3);
    });
  });

  it('reads white as white there, and as much light as it was set to, in what the picture is drawn from', () => {
    const scheme = standScheme(unwrap(layScheme(smallProject, option, SURFACES)), 'gray');
    const own = beginLight(lit.basis, beginScheme(scheme, GROUPS.length));
    setting.levels.forEach((level, group) => {
      if (!(level > 0)) return;
      solveSchemeGroup(lit.basis, own.solved, group);
      gatherGroup(lit.basis, own, group);
    });
    const { room: apart, transport } = base.lamps;
    const perLumen = LAMP_LAYERS.map((layer) => finished(directTexels(apart, transport, { layer })));
    const maps = mapsLit(perLumen, lit.lumens);
    const wanted = setting.levels.reduce((sum, level, group) => sum + level * room.worktopLight[group]!, 0);
    const counter = SURFACES.indexOf('counter');
    const top = lit.basis.room.light.fine.findIndex(
      ({ surface, u, v }) => surface === counter && u[0] * v[1] - u[1] * v[0] > 0,
    );
    const point = readPoint(lit.basis, own, setting, maps, top, 0.5, 0.5, null)!;
    // A fifth: the samples stand for grays of their lightness and shade each other, and the booth is lit a little unevenly.
    expect(Math.abs(point.lux / wanted - 1)).toBeLessThan(0.2);
    // Chroma 1: a white still looks white to the product. The deep fronts beside it lend less than that.
    expect(Math.hypot(point.place_white_lab_d65[1], point.place_white_lab_d65[2])).toBeLessThan(1);
    expect(point.parts.some(({ from }) => from.kind === 'bounce' && from.surface === 'stand')).toBe(true);
  }, 120_000);

  it('tells a gray sample upright by the cube root of its share of the light (CIE 15: L* = 116 (Y/Yn)^(1/3) - 16)', () => {
    const scheme = unwrap(layScheme(smallProject, option, SURFACES));
    const { light, samples } = readSamples(lit, stand.samples, scheme, setting)!;
    const share = light.upright_lux / light.flat_lux;
    for (const { flat, upright } of samples) {
      if (upright.lightness < 10) continue;
      // One light spectrum on both planes but for the mix of groups: within half a unit.
      expect(Math.abs((upright.lightness + 16) / (flat.lightness + 16) - Math.cbrt(share))).toBeLessThan(0.02);
    }
  });
});
