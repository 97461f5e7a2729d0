import { describe, expect, it } from 'vitest';
import type { LaidFinish } from '../../src/engine/finish/types';
import { judge } from '../../src/engine/judge/judge';
import { judgePair } from '../../src/engine/judge/pair';
import { type SampleColor, sampleColor } from '../../src/engine/judge/sample-color';
import type { SurfaceId } from '../../src/engine/surface';
import { finish, laidFinish } from './finishes';
import { type Row, scheme } from './schemes';

// Expected numbers: an independent computation of the same rules from published equations (CIEDE2000, ISO/CIE
// 11664-6; WID, Perez et al. 2016; highest-luminance anchoring, Gilchrist et al. 1999), printed to one decimal.

const side = (of: LaidFinish, index = 0) => {
  const color: SampleColor = sampleColor('wall', of, index);
  return { color, lab: color.lab };
};
const judged = (a: LaidFinish, b: LaidFinish, ai = 0, bi = 0) => judgePair(side(a, ai), side(b, bi), { anchorY: null });

const counter = finish('EN-01');
const limestone = finish('ST-02');
const bluish = laidFinish('bluish', 'laminate', ['base 1 96 .2 -2.5']);
const neutral = finish('TL-01');
const yellowish = finish('TL-02');

describe('three whites beside two counters', () => {
  it.each([
    ['cool counter, bluish white', counter, bluish, 'looks-dirty', 'visible', 5.25, 4.6, 2.5, 3.9, 92.2],
    ['cool counter, neutral white', counter, neutral, 'agree', null, 3.53, 2.8, 2.2, -1.2, 95.2],
    ['cool counter, yellowish white', counter, yellowish, 'too-yellow', 'grave', 9.97, 0.3, 10.0, -17.0, null],
    ['limestone, bluish white', limestone, bluish, 'too-yellow', 'grave', 13.09, 8.9, 9.6, 21.6, 85.5],
    ['limestone, neutral white', limestone, neutral, 'looks-dirty', 'grave', 9.13, 7.1, 5.8, 16.5, 88.3],
    ['limestone, yellowish white', limestone, yellowish, 'agree', null, 4.72, 3.9, 2.6, 0.6, 93.3],
  ] as const)('%s', (_, stone, white, verdict, severity, de00, lightness, chroma, dWid, lRel) => {
    const found = judged(stone, white);
    expect(found.verdict).toBe(verdict);
    expect(found.severity).toBe(severity);
    expect(found.de00).toBeCloseTo(de00, 2);
    expect(found.numbers['lightness_part']).toBeCloseTo(lightness, 1);
    expect(found.numbers['chroma_part']).toBeCloseTo(chroma, 1);
    // Published as white minus counter; ours is lighter minus darker, so only the yellowish tile on the cool counter turns.
    const whiteIsLighter = white.components[0]!.labD65.l > stone.components[0]!.labD65.l;
    expect((whiteIsLighter ? 1 : -1) * found.numbers['d_wid']!).toBeCloseTo(dWid, 1);
    if (lRel !== null) expect(found.numbers['l_rel']).toBeCloseTo(lRel, 1);
  });

  it('charges the counter where it looks dirty or yellow, the tile where that is the yellow one', () => {
    expect(judged(counter, bluish).faulty).toBe('a');
    expect(judged(limestone, bluish).faulty).toBe('a');
    expect(judged(counter, yellowish).faulty).toBe('b');
    expect(judged(yellowish, counter).faulty).toBe('a');
  });

  it('judges the three whites among each other', () => {
    const yellowNeutral = judged(yellowish, neutral);
    expect(yellowNeutral).toMatchObject({ verdict: 'too-yellow', severity: 'grave', faulty: 'a' });
    expect(yellowNeutral.numbers['d_wid']).toBeCloseTo(15.9, 1);
    expect(yellowNeutral.numbers['chroma_part']).toBeCloseTo(7.9, 1);
    const neutralBluish = judged(neutral, bluish);
    expect(neutralBluish).toMatchObject({ verdict: 'too-yellow', severity: 'grave', faulty: 'a' });
    expect(neutralBluish.numbers['d_wid']).toBeCloseTo(5.1, 1);
    expect(neutralBluish.numbers['chroma_part']).toBeCloseTo(4.2, 1);
    expect(judged(yellowish, bluish).numbers['d_wid']).toBeCloseTo(21.0, 1);
  });

  it.each([
    [85, -1],
    [85, 1],
    [87, 0],
    [89, -1],
    [89, 1],
  ])('agrees with neutral white at L* %d, b* %d', (l, b) => {
    expect(judged(laidFinish('s', 'engineered', [`base 1 ${l} -.8 ${b}`]), neutral).verdict).toBe('agree');
  });

  it('finds neutral white too clean beside a yellower counter, too yellow beside a bluer one', () => {
    const yellower = judged(laidFinish('s', 'engineered', ['base 1 87 -.8 2.5']), neutral);
    expect(yellower.numbers['d_wid']).toBeGreaterThanOrEqual(2.6);
    expect(yellower.verdict).toBe('looks-dirty');
    const bluer = judged(laidFinish('s', 'engineered', ['base 1 88 -.8 -2']), neutral);
    expect(bluer.numbers['d_wid']).toBeLessThanOrEqual(-2.6);
    expect(bluer).toMatchObject({ verdict: 'too-yellow', faulty: 'b' });
  });

  it('lowers the anchored lightness, and so may turn grave, when a brighter white is in view', () => {
    const alone = judged(counter, bluish);
    const anchored = judgePair(side(counter), side(bluish), { anchorY: 98 });
    expect(anchored.numbers['l_rel']).toBeLessThan(alone.numbers['l_rel']!);
    expect([alone.severity, anchored.severity]).toEqual(['visible', 'grave']);
  });
});

describe('domain of the rules for whites', () => {
  const pale = (kind: LaidFinish['class']) => laidFinish('pale', kind, ['base 1 80 2 10']);

  it('never calls wood dirty, and would call the same numbers dirty in paint', () => {
    const wood = judged(pale('wood'), neutral);
    expect(wood.verdict).toBe('none');
    expect(wood.numbers['d_l']).toBeGreaterThanOrEqual(10);
    expect(judged(pale('solid surface'), neutral).verdict).toBe('none');
    expect(judged(pale('glazed'), neutral)).toMatchObject({ verdict: 'looks-dirty', severity: 'grave' });
    // A paint comes in any color, and this one is a gray by name (ISCC-NBS: yellowish gray): it is meant.
    expect(judged(pale('paint'), neutral)).toMatchObject({ verdict: 'looks-dirty', severity: 'visible' });
  });

  it('knows wood prints by their grain, and stone grain as stone', () => {
    const print = laidFinish('print', 'vinyl', ['base .7 84 .5 4', 'grain .3 80 .8 5']);
    const granite = laidFinish('granite', 'stone', ['base .7 84 .5 4', 'grain .3 80 .8 5']);
    expect(judged(print, neutral).verdict).toBe('none');
    expect(judged(granite, neutral).verdict).not.toBe('none');
  });

  it.each([
    ['yellow stone, chroma 2.5', 'base 1 82 3 16'],
    ['pink stone, chroma 2.06', 'base 1 82 6 6'],
    ['pinkish terrazzo, a* 4.3 apart', 'base 1 80 4 4.5'],
  ])('leaves %s out', (_, text) => {
    expect(['looks-dirty', 'too-yellow', 'agree']).not.toContain(
      judged(laidFinish('s', 'stone', [text]), neutral).verdict,
    );
  });

  it('leaves a pale green tile out: its a* stands too far off', () => {
    const green = laidFinish('green', 'glazed', ['base 1 80 -9 8']);
    expect(judged(green, neutral).numbers['d_wid']).toBeUndefined();
  });

  it('leaves metals and fittings out', () => {
    const steel = laidFinish('steel', 'metal', ['base 1 85 0 3']);
    expect(judged(steel, neutral).numbers['d_wid']).toBeUndefined();
    const enamel = laidFinish('enamel', 'glazed', ['base 1 85 0 6']);
    const sink = sampleColor('sink', enamel, 0);
    expect(judgePair({ color: sink, lab: sink.lab }, side(neutral), { anchorY: null }).verdict).toBe('none');
    expect(judged(enamel, neutral).verdict).not.toBe('none');
  });
});

describe('library whites beside the demo counter', () => {
  it.each([
    ['PT-04', 'looks-dirty', 'b'],
    ['EN-02', 'looks-dirty', 'b'],
    ['LM-01', 'looks-dirty', 'b'],
    ['TL-03', 'looks-dirty', 'b'],
    ['PT-06', 'too-yellow', 'a'],
    ['PT-07', 'too-yellow', 'a'],
    ['PT-20', 'too-yellow', 'a'],
    ['ST-02', 'too-yellow', 'a'],
    ['EN-04', 'too-yellow', 'a'],
    ['TL-02', 'too-yellow', 'a'],
    ['ST-03', 'looks-dirty', 'a'],
  ] as const)('%s: %s', (id, verdict, faulty) => {
    expect(judged(finish(id), counter)).toMatchObject({ verdict, faulty });
  });

  it.each(['PT-05', 'EN-03', 'ST-05', 'SS-01'])('%s agrees or matches', (id) => {
    expect(['agree', 'match', 'same']).toContain(judged(finish(id), counter).verdict);
  });

  it.each(['PT-08', 'PT-09', 'PT-10', 'PT-14', 'LM-02'])('%s pulls apart from the vein', (id) => {
    expect(judged(finish(id), counter, 0, 1)).toMatchObject({ verdict: 'pulls-apart', severity: 'visible' });
  });

  it.each(['PT-16', 'EN-05', 'VP-01'])('%s echoes the vein', (id) => {
    expect(judged(finish(id), counter, 0, 1).verdict).toBe('relates');
  });
});

describe('pairs with floors', () => {
  const slate = finish('ST-01');
  const greenGray = finish('PT-14');
  const terrazzo = laidFinish('terrazzo', 'engineered', ['base .7 80 4 4.5', 'fleck .3 58 14 10']);

  it('finds the slate related to the vein of the counter, strongly', () => {
    const found = judged(slate, counter, 0, 1);
    expect(found.verdict).toBe('relates');
    expect(found.numbers['hue_apart_deg']).toBeCloseTo(2, 0);
    expect(found.numbers['chroma_part']).toBeCloseTo(1.0, 1);
  });

  it.each([
    ['green-gray and slate', greenGray, slate, 0, 0, 125],
    ['olive-gray and slate', finish('LM-02'), slate, 0, 0, 152],
    ['terrazzo base and slate', terrazzo, slate, 0, 0, 154],
    ['green-gray and vein', greenGray, counter, 0, 1, 123],
  ] as const)('%s pull apart', (_, a, b, ai, bi, hueApart) => {
    const found = judged(a, b, ai, bi);
    expect(found).toMatchObject({ verdict: 'pulls-apart', severity: 'visible' });
    expect(Math.abs(found.numbers['hue_apart_deg']! - hueApart)).toBeLessThan(1);
  });

  it.each([
    ['green-gray and red quarry tile', greenGray, finish('TL-07')],
    ['blue-green and birch', finish('PT-01'), finish('WD-01')],
    ['limestone and birch, same hue but far in chroma', limestone, finish('WD-01')],
  ])('%s: a contrast meant as such, nothing said', (_, a, b) => {
    expect(judged(a, b).verdict).toBe('none');
  });

  it('relates brass and birch', () => {
    expect(judged(finish('MT-01'), finish('WD-01')).verdict).toBe('relates');
  });

  it('calls tile and wall paint the same: 0.7 apart', () => {
    const found = judged(neutral, finish('PT-02'));
    expect(found.verdict).toBe('same');
    expect(found.de00).toBeCloseTo(0.7, 1);
  });
});

describe('the domain of whites', () => {
  it('is decided by the samples, also where the light drives the readings apart in a*', () => {
    const shifted = { ...side(neutral), lab: { l: 93, a: 4.5, b: 1.8 } };
    const found = judgePair(side(counter), shifted, { anchorY: null });
    expect(found.numbers['d_a']!).toBeGreaterThan(3.24);
    expect(found.numbers).toHaveProperty('d_wid');
  });

  it('takes in painted trim, never worse than visible, and leaves fittings out', () => {
    const rows = (trim: SurfaceId): Row[] => [
      [trim, 'PT-07', 4],
      ['wall', 'PT-04', 40],
    ];
    expect(judge(scheme(rows('tall-fronts'))).warnings[0]).toMatchObject({ code: 'too-yellow', severity: 'grave' });
    const trim = judge(scheme(rows('frame'))).warnings.find((w) => w.code === 'too-yellow')!;
    expect(trim).toMatchObject({ severity: 'visible', surfaces: ['wall', 'frame'] });
    expect(judge(scheme(rows('appliance'))).warnings.some((w) => w.code === 'too-yellow')).toBe(false);
  });

  it('says what the limit of whiteness was published for', () => {
    const [warning] = judge(
      scheme([
        ['counter', 'EN-01', 10],
        ['wall', 'PT-07', 40],
      ]),
    ).warnings.filter((w) => w.code === 'too-yellow');
    expect(warning!.why).toContain('limit 2.6, published for tooth-colored ceramics, not tested on counters');
  });
});

describe('two whites that only a lightness step sets apart', () => {
  const pairsOf = (darker: string) =>
    judge(
      scheme([
        ['counter', laidFinish('darker', 'engineered', [`base 1 ${darker}`]), 20],
        ['wall', laidFinish('lighter', 'paint', ['base 1 95 0 2']), 40],
      ]),
    ).pairs.filter((p) => p.basis === 'sample');

  it('is told from 10 L*, with its size', () => {
    const [step] = pairsOf('82 0 0');
    expect(step).toMatchObject({ verdict: 'none', numbers: { d_l: 13 } });
    expect(pairsOf('86 0 0').filter((p) => p.verdict === 'none')).toEqual([]);
  });
});

describe('grout', () => {
  const tile = (id: string, color: string, grout: string) =>
    laidFinish(id, 'glazed', [`base .95 ${color}`, `grout .05 ${grout}`]);
  const grouts = (other: string) =>
    judge(
      scheme([
        ['floor', tile('tile-a', '40 0 5', '74 0 1.5'), 20],
        ['backsplash', tile('tile-b', '93 0 2', other), 10],
      ]),
    ).pairs.filter((p) => p.a.component === 'grout' && p.b.component === 'grout');

  it('is no pair with itself between two tiles; another grout is', () => {
    expect(grouts('74 0 1.5')).toEqual([]);
    // 0.15 CIEDE2000 apart, known to 1 each: whether they look the same cannot be told.
    expect(grouts('74.2 0 1.5').map((p) => p.verdict)).toEqual(['cannot-tell', 'cannot-tell']);
  });
});
