import { describe, expect, it } from 'vitest';
import scene from '../../scenes/one-wall.json';
import type { Assessment } from '../../src/engine/judge/assessment';
import { SURFACES, type SurfaceId } from '../../src/engine/surface';
import { cautionsOf } from '../../src/kitchen/cautions-of';
import { cautionText } from '../../src/model/caution-words';
import type { Caution } from '../../src/model/cautions';
import type { Kitchen } from '../../src/model/kitchen';
import type { Finish, Option, Placement, Project } from '../../src/model/project';
import { terrace } from '../ui/terrace';

const project = terrace();
const ours = (of: Project): Option => of.options.find((one) => one.id === 'our-floor')!;
const cautions = (of: Project, assessment: Assessment | null = null) => cautionsOf(of, ours(of), assessment);
const codes = (of: Project) => cautions(of).map((caution) => caution.code);
const find = <C extends Caution['code']>(of: Project, code: C, assessment: Assessment | null = null) =>
  cautions(of, assessment).find((caution): caution is Extract<Caution, { code: C }> => caution.code === code);
const textOf = (of: Project, code: Caution['code']): string => {
  const caution = find(of, code);
  return caution ? cautionText(caution) : 'none';
};

/** Every option with other placements. */
const placed = (of: Project, change: Partial<Record<SurfaceId, Partial<Placement>>>): Project => ({
  ...of,
  options: of.options.map((option) => ({
    ...option,
    scheme: Object.fromEntries(
      SURFACES.map((surface) => [surface, { ...option.scheme[surface], ...change[surface] }]),
    ) as Option['scheme'],
  })),
});
const lay = (of: Project, change: Partial<Record<SurfaceId, string>>) =>
  placed(of, Object.fromEntries(Object.entries(change).map(([surface, finish]) => [surface, { finish }])));
const inKitchen = (of: Project, change: Partial<Kitchen>): Project => ({
  ...of,
  kitchen: { ...of.kitchen, ...change },
});
/** One finish of the library changed. */
const made = (of: Project, id: string, change: Partial<Finish>): Project => ({
  ...of,
  library: of.library.map((finish) => (finish.id === id ? { ...finish, ...change } : finish)),
});
/** Counters, upstand, backsplash and floor of what gives no dust. */
const plain = lay(project, { counter: 'SS-01', 'island-counter': 'SS-01', upstand: 'SS-01', floor: 'WD-01' });

describe('dust', () => {
  it('is warned of for stone, engineered stone and porcelain, on what is cut to fit', () => {
    expect(codes(plain)).not.toContain('dust');
    expect(find(lay(plain, { counter: 'ST-05' }), 'dust')).toMatchObject({ surfaces: ['counter'], engineered: false });
    expect(find(lay(plain, { floor: 'TL-07' }), 'dust')).toMatchObject({ surfaces: ['floor'], engineered: false });
  });

  it('says what holds in Australia for engineered stone only', () => {
    expect(textOf(lay(plain, { counter: 'EN-01' }), 'dust')).toContain('Australia since July 2024');
    expect(textOf(lay(plain, { counter: 'ST-05' }), 'dust')).not.toContain('Australia');
  });

  it('counts an island only where there is one', () => {
    const island = lay(plain, { 'island-counter': 'ST-05' });
    expect(codes(inKitchen(island, { island: project.kitchen.island ?? null }))).toContain('dust');
    expect(codes(inKitchen(island, { island: null }))).not.toContain('dust');
  });
});

describe('heat', () => {
  const cooking = (kind: 'gas' | 'induction', region: Kitchen['region'], of = project) =>
    textOf(inKitchen(of, { region, cooktop: { ...of.kitchen.cooktop, kind } }), 'heat');

  it('sends one to the manuals, and names the figure of the region where one is common', () => {
    expect(cooking('induction', 'eu')).toMatch(/^Check the manuals[^.]*\.$/);
    expect(cooking('induction', 'us')).toContain('30 in (762 mm)');
    expect(cooking('gas', 'uk')).toContain('760 mm');
    expect(cooking('induction', 'uk')).not.toContain('760 mm');
    expect(cooking('gas', 'eu')).toContain('licensed trade');
    expect(cooking('induction', 'eu')).not.toContain('licensed trade');
  });

  it('names no clearance upward where nothing hangs above', () => {
    const open = inKitchen(project, {
      cooktop: { ...project.kitchen.cooktop, hood: 'none' },
      runs: project.kitchen.runs.map((run) => ({ ...run, over: 'none' as const })),
    });
    expect(cooking('induction', 'us', open)).not.toContain('762');
  });
});

it('asks for heat-rated glass behind the cooktop, not for glass elsewhere or tile there', () => {
  const glass = made(project, 'TL-01', { class: 'glass' });
  expect(codes(glass)).toContain('glass');
  expect(codes(project)).not.toContain('glass');
  const low = inKitchen(glass, { runs: glass.kitchen.runs.map((run) => ({ ...run, splash: 'upstand' as const })) });
  expect(codes(low)).not.toContain('glass');
});

it('warns that acid may mark plain or veined stone, not speckled or engineered stone', () => {
  expect(codes(lay(plain, { counter: 'ST-05' }))).toContain('acid');
  expect(codes(lay(plain, { counter: 'EN-01' }))).not.toContain('acid');
  const speckled = made(lay(plain, { counter: 'ST-05' }), 'ST-05', {
    components: project.library
      .find(({ id }) => id === 'ST-05')!
      .components.map((c) => ({ ...c, role: c.role === 'base' ? c.role : 'fleck' })),
  });
  expect(codes(speckled)).not.toContain('acid');
});

it('asks for the slip value of a hard floor only, the more so of a polished one', () => {
  expect(codes(plain)).not.toContain('slip');
  expect(textOf(lay(plain, { floor: 'ST-01' }), 'slip')).not.toContain('polished');
  expect(textOf(made(lay(plain, { floor: 'ST-01' }), 'ST-01', { gloss_gu: 80 }), 'slip')).toContain('polished');
});

describe('lead', () => {
  const allOpen = placed(project, Object.fromEntries(SURFACES.map((s) => [s, { state: 'open' as const }])));
  const PAINTED = ['wall', 'ceiling', 'frame', 'base-fronts', 'wall-fronts', 'tall-fronts'] as const;

  it('is asked where something stays and something is painted over', () => {
    expect(codes(project)).toContain('lead');
    expect(codes(allOpen)).not.toContain('lead');
    const nothingPainted = placed(project, Object.fromEntries(PAINTED.map((s) => [s, { state: 'fixed' as const }])));
    expect(codes(nothingPainted)).not.toContain('lead');
  });

  it('names the year 1978 in the United States alone', () => {
    expect(textOf(inKitchen(project, { region: 'us' }), 'lead')).toContain('Built before 1978?');
    expect(textOf(project, 'lead')).not.toContain('1978');
  });

  // 1978: 40 CFR 745. 1992: the rules that follow Directive 89/677/EEC, from memory.
  it.each([
    ['us', 1977, 1978],
    ['uk', 1991, 1992],
    ['eu', 1991, 1992],
  ] as const)('knows the year of a house in %s: %i is old, %i is not', (region, old, young) => {
    const built = (year_built: number, of = project) => inKitchen({ ...of, year_built }, { region });
    expect(textOf(built(old), 'lead')).toContain(`Built in ${old}`);
    expect(codes(built(young))).not.toContain('lead');
    // An old house is one whether or not anything in it stays.
    expect(codes(built(old, allOpen))).toContain('lead');
  });
});

describe('glare', () => {
  const polished = lay(project, { counter: 'ST-05', 'island-counter': 'ST-05' });
  const lrv = (value: number, surfaces: readonly SurfaceId[] = ['counter', 'island-counter']) =>
    ({ surfaces: surfaces.map((surface) => ({ surface, average: { lrv: value } })) }) as unknown as Assessment;
  const glare = (of: Project, assessment: Assessment | null = lrv(10)) => find(of, 'glare', assessment);

  it('is warned of for a polished dark top that mirrors a window to somebody, with its wall', () => {
    const found = glare(polished)!;
    expect(found.surfaces).toContain('counter');
    expect(cautionText(found)).toMatch(/^The counters? (is|are) dark and polished.* on the left wall/);
    expect(glare(project)).toBeUndefined();
    expect(glare(inKitchen(polished, { openings: [] }))).toBeUndefined();
  });

  it('is none of a light top, nor before it is known how light it is', () => {
    expect([glare(polished, lrv(19)), glare(polished, lrv(21))].map((one) => one !== undefined)).toEqual([true, false]);
    expect(glare(polished, null)).toBeUndefined();
  });

  it('is none of a honed top', () => {
    expect(glare(made(polished, 'ST-05', { gloss_gu: 69 }))).toBeUndefined();
    expect(glare(made(polished, 'ST-05', { gloss_gu: 70 }))).toBeDefined();
  });

  it('is none where the window stands behind those who look at the counter', () => {
    const oneWall = scene as unknown as Kitchen;
    const window = { ...oneWall.openings[0]!, center: 900, width: 800 };
    const bare = inKitchen(polished, { ...oneWall, openings: [{ ...window, wall: 'front' }] });
    expect(glare(inKitchen(bare, { openings: [{ ...window, wall: 'back' }] }))).toBeDefined();
    expect(glare(bare)).toBeUndefined();
  });
});

it('tells the weight of stone of 30 mm, by region; not of 20, of a mitred edge, or of what is no stone', () => {
  const thick = (thickness: number, of = project, edge: Kitchen['counter']['edge'] = 'eased') =>
    inKitchen(of, { counter: { ...of.kitchen.counter, thickness, edge } });
  // Trade figures, from memory: 81 kg/m2 and 16.6 lb/ft2 at 30 mm.
  expect(textOf(thick(30), 'load')).toContain('81 kg/m²');
  expect(textOf(inKitchen(thick(30), { region: 'us' }), 'load')).toContain('17 lb/ft²');
  expect(codes(thick(20))).not.toContain('load');
  expect(codes(thick(40, project, 'mitred'))).not.toContain('load');
  expect(codes(thick(30, plain))).not.toContain('load');
});

describe('edges for low vision', () => {
  const assessed = (lrvs: Partial<Record<SurfaceId, number>>) =>
    ({
      surfaces: Object.entries(lrvs).map(([surface, lrv]) => ({ surface, average: { lrv } })),
    }) as unknown as Assessment;
  const edges = (of: Project, lrvs: Partial<Record<SurfaceId, number>>) =>
    cautions(of, assessed(lrvs)).filter((caution) => caution.code === 'low-vision');

  it('are named where they differ by less than 20 LRV (BS 8300-2), with both measures', () => {
    const found = edges(project, { counter: 60, floor: 41, 'base-fronts': 20, wall: 80 });
    expect(found).toMatchObject([{ surfaces: [['counter'], ['floor']], stepLrv: 19, isForUser: false }]);
    expect(cautionText(found[0]!)).toContain('the counter and the floor differ by only 19 LRV (contrast 19%');
    expect(edges(project, { counter: 62, floor: 41, 'base-fronts': 20, wall: 80 })).toEqual([]);
  });

  it('count from 30 LRV down where someone sees badly', () => {
    const user: Project = { ...project, users: ['low-vision'] };
    const found = edges(user, { counter: 66, floor: 41, 'base-fronts': 10, wall: 80 });
    expect(found).toMatchObject([{ surfaces: [['counter'], ['floor']], isForUser: true }]);
    expect(cautionText(found[0]!)).toContain('Someone with low vision');
    expect(edges(user, { counter: 72, floor: 41, 'base-fronts': 10, wall: 80 })).toEqual([]);
  });

  it('are one where two finishes meet in several places', () => {
    const found = edges(project, { floor: 20, 'base-fronts': 12, 'tall-fronts': 12, plinth: 12, wall: 80 });
    expect(found).toMatchObject([{ surfaces: [['floor'], ['base-fronts', 'tall-fronts', 'plinth']] }]);
    expect(cautionText(found[0]!)).toContain('the floor and the base and tall fronts differ');
  });

  it('are the same as in the findings: none between surfaces of one finish', () => {
    const one = lay(project, { 'base-fronts': 'ST-01', plinth: 'ST-01' });
    expect(edges(one, { floor: 20, 'base-fronts': 20, wall: 80 })).toEqual([]);
  });
});

it('never promises', () => {
  const all = [project, lay(project, { counter: 'ST-05' }), inKitchen(project, { region: 'us' })];
  for (const of of all) {
    for (const text of cautions(of).map(cautionText)) {
      expect(text).toMatch(/^[A-Z].*\.$/);
      expect(text).not.toMatch(/\b(safe|compliant|complies|undefined|NaN)\b/i);
    }
  }
});
