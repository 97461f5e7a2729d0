import { differenceCiede2000 } from 'culori';
import { beforeAll, describe, expect, it } from 'vitest';
import { chromaOf } from '../../src/engine/color/lab';
import { wid } from '../../src/engine/color/wid';
import { DIRECT_LAYERS } from '../../src/engine/light/direct-scene';
import { directTexels } from '../../src/engine/light/direct-texels';
import { munsellFromLabD65 } from '../../src/engine/naming/munsell';
import { undertoneOf } from '../../src/engine/naming/undertone';
import { SURFACES } from '../../src/engine/surface';
import { type HeldChoice, readHeld } from '../../src/kitchen/study/held-reading';
import { COMPARISON_WHITES, laidWhite } from '../../src/kitchen/study/held-whites';
import { beginLight, gatherGroup } from '../../src/kitchen/study/lit-scheme';
import { readPoint } from '../../src/kitchen/study/point-reading';
import { studyBasisNow } from '../../src/kitchen/study/room-study';
import { layScheme } from '../../src/kitchen/study/scheme';
import { settingLight } from '../../src/kitchen/study/setting-light';
import { beginScheme, solveSchemeGroup } from '../../src/kitchen/study/solved-scheme';
import { GROUPS } from '../../src/model/project';
import { smallProject } from '../workers/small-project';

// Bands of the trade's words in Munsell terms, built on the ISCC-NBS blocks (Kelly and Judd, NBS SP 440: 263 white, 92 yellowish
// white, 89 pale yellow); the bands themselves are our judgment.
describe('the comparison whites', () => {
  const placeOf = (id: (typeof COMPARISON_WHITES)[number]) => {
    const lab = laidWhite(id).components[0]!.labD65;
    return { lab, munsell: munsellFromLabD65(lab), undertone: undertoneOf(lab) };
  };
  /** 7YR to 9Y on the hue circle of 100. */
  const isYellow = (hue: number) => hue >= 17 && hue <= 29;

  it('are a neutral white, an off-white and a cream by their numbers', () => {
    const neutral = placeOf('neutral-white');
    expect(neutral.lab.l).toBeGreaterThanOrEqual(93);
    expect(neutral.undertone.strength).toBeLessThanOrEqual(0.5);
    // Whiteness index for dentistry, published; the limit for a neutral white is our judgment.
    expect(wid(neutral.lab)).toBeGreaterThanOrEqual(45);
    const off = placeOf('off-white');
    expect(off.lab.l).toBeGreaterThanOrEqual(88);
    expect(isYellow(off.munsell.hue100)).toBe(true);
    expect(off.munsell.chroma).toBeGreaterThanOrEqual(0.35);
    expect(off.munsell.chroma).toBeLessThanOrEqual(1.1);
    const cream = placeOf('cream');
    expect(cream.lab.l).toBeGreaterThanOrEqual(83);
    expect(isYellow(cream.munsell.hue100)).toBe(true);
    expect(cream.munsell.chroma).toBeGreaterThanOrEqual(1.1);
    expect(cream.munsell.chroma).toBeLessThanOrEqual(3);
  });

  it('are plain: a neutral white reflects every wavelength alike', () => {
    const { spectrum, labD65 } = laidWhite('neutral-white').components[0]!;
    expect(Math.max(...spectrum) - Math.min(...spectrum)).toBeLessThan(0.001);
    expect(chromaOf(labD65)).toBeLessThan(0.01);
  });
});

describe('a card held in place', () => {
  const found = settingLight(smallProject, smallProject.settings.find(({ id }) => id === 'evening')!);
  const laid = layScheme(smallProject, 'our-floor', SURFACES);
  if (!found.ok || !laid.ok) throw new Error('refused');
  const setting = found.value;
  let hold: (surface: string, choice: HeldChoice) => NonNullable<ReturnType<typeof readHeld>>;
  let point: (surface: string) => NonNullable<ReturnType<typeof readPoint>>;

  beforeAll(() => {
    const basis = studyBasisNow(smallProject, null);
    const lit = beginLight(basis, beginScheme(laid.value, GROUPS.length));
    setting.levels.forEach((level, group) => {
      if (!(level > 0)) return;
      solveSchemeGroup(basis, lit.solved, group);
      gatherGroup(basis, lit, group);
    });
    const steps = directTexels(basis.room.light, basis.transport, { layer: DIRECT_LAYERS[1] });
    let step = steps.next();
    while (!step.done && step.value.stage === 'lattice') step = steps.next();
    const maps = [null, step.done ? step.value : step.value.map] as const;
    const rectOf = (surface: string) => {
      const index = SURFACES.indexOf(surface as never);
      const areas = basis.room.light.fine.map(({ surface: own, u, v }) =>
        own === index ? Math.hypot(...u) * Math.hypot(...v) : 0,
      );
      return areas.indexOf(Math.max(...areas));
    };
    hold = (surface, choice) =>
      readHeld(
        smallProject,
        basis,
        lit,
        setting,
        maps,
        { rect: rectOf(surface), u: 0.5, v: 0.5, place: null },
        choice,
        'used-to-it',
      )!;
    point = (surface) => readPoint(basis, lit, setting, maps, rectOf(surface), 0.5, 0.5, null)!;
  }, 60_000);

  it('is the surface when it is of the surface’s own finish', () => {
    const own = hold('wall', { kind: 'finish', id: smallProject.options[1]!.scheme.wall.finish });
    const there = point('wall');
    expect(own.de00).toBe(0);
    // The same number the picture shows: the card cannot be told from the wall.
    expect(own.components[0]!.srgb8).toEqual(there.srgb8);
    expect(own.components[0]!.lab_d65.map((x) => x.toFixed(6))).toEqual(there.lab_d65.map((x) => x.toFixed(6)));
    // Known from a supplier's figure only, two such colors may still differ: nothing but 'same' or 'cannot tell'.
    expect(['same', 'cannot-tell']).toContain(own.verdict);
  });

  it.each(COMPARISON_WHITES)('differs from the wall by what CIEDE2000 says (culori): %s', (id) => {
    const { components, surface_lab_d65, de00 } = hold('wall', { kind: 'white', id });
    const lab = ([l, a, b]: readonly number[]) => ({ mode: 'lab65' as const, l: l!, a: a!, b: b! });
    expect(de00).toBeCloseTo(differenceCiede2000()(lab(components[0]!.lab_d65), lab(surface_lab_d65)), 6);
  });

  it('says that cream looks yellower and dark paint darker than a neutral white wall', () => {
    expect(hold('wall', { kind: 'white', id: 'cream' }).held_looks).toBe('yellower');
    expect(hold('wall', { kind: 'finish', id: 'PT-22' }).held_looks).toBe('darker');
  });

  it('takes the color of the light of its place with it: a white is darker where less light falls', () => {
    const [bright, dim] = [
      hold('counter', { kind: 'white', id: 'neutral-white' }),
      hold('plinth', { kind: 'white', id: 'neutral-white' }),
    ];
    expect(point('counter').lux).toBeGreaterThan(point('plinth').lux);
    expect(bright.components[0]!.linear[1]).toBeGreaterThan(dim.components[0]!.linear[1]);
  });

  it('has its real size: a card, or a whole tile', () => {
    expect(hold('wall', { kind: 'white', id: 'cream' }).size_m).toEqual([0.1, 0.15]);
    // The demo's wall tile, 200 x 100 mm.
    expect(hold('wall', { kind: 'finish', id: 'TL-01' }).size_m).toEqual([0.2, 0.1]);
  });
});
