import { describe, expect, it } from 'vitest';
import { whiteOf } from '../../src/engine/color/xyz';
import type { LaidFinish } from '../../src/engine/finish/types';
import type { Warning } from '../../src/engine/judge/assessment';
import { holdsIn } from '../../src/engine/judge/holds';
import type { JudgeInput } from '../../src/engine/judge/input';
import { judge } from '../../src/engine/judge/judge';
import { plausibleCurves } from '../../src/engine/plausible/curves';
import { lightById, perLux } from '../../src/engine/spectrum/lights';
import { observer2 } from '../../src/engine/spectrum/observers';
import { placeColors } from '../../src/kitchen/study/place-colors';
import { finish, knownTo } from './finishes';
import { measured, metamericTo } from './metamers';
import { inPlace, scheme } from './schemes';

const found = (input: JudgeInput): Warning[] =>
  holdsIn(input, judge(input)).warnings.filter((w) => w.basis === 'installed' && w.surfaces.includes('base-fronts'));

/** Fronts under one lamp and nothing else: what is left is the lamp's doing. */
function underLamp(fronts: LaidFinish, id: string): JudgeInput {
  const spd = perLux(lightById(id)!);
  const read = placeColors(spd, whiteOf(spd, observer2));
  const input = scheme([
    ['base-fronts', fronts, 40],
    ['ceiling', 'PT-03', 10],
  ]);
  const components = fronts.components.map((c) => read(c.spectrum));
  return inPlace(input, 'base-fronts', {
    components,
    average: components[0]!,
    variants: fronts.components.map((c) => plausibleCurves(c, fronts.class).map(read)),
  });
}

describe('a finish under a lamp', () => {
  const metamer = metamericTo(knownTo(finish('PT-21'), 0.25), 0.7);

  it('is said flatly where a measured spectrum shifts to another name', () => {
    const [warning] = found(underLamp(metamer, 'LED-B2'));
    expect(warning).toMatchObject({ code: 'light-shift', severity: 'note' });
    expect(warning!.text).toMatch(/^The base fronts read .* in this light; the sample is medium gray\.$/);
    expect(warning!.why).toContain('The spectrum was measured.');
    expect(warning!.holds_in!).toBeGreaterThanOrEqual(0.85);
  });

  it('says nothing of the same color with a measured spectrum that holds its color', () => {
    expect(found(underLamp(measured(finish('PT-21')), 'LED-B2'))).toEqual([]);
  });

  it('says how far the curves of a color go, and that the spectrum is a guess', () => {
    const [warning] = found(underLamp(knownTo(finish('TL-04'), 0.25), 'LED-B2'));
    expect(warning!.why).toMatch(/\d\.\d CIEDE2000 from the sample, \d\.\d to \d\.\d over the curves/);
    expect(warning!.why).toContain('The spectrum is a guess: only the color was given.');
  });
});

describe('a finish known by its color alone', () => {
  // Medium gray, and a reading 5.8 away that is named reddish gray: between the two, some curves shift and some do not.
  const sample = { l: 60, a: 0, b: 0.5 };
  const shifted = { l: 60, a: 5, b: 1.5 };
  const gray = knownTo(finish('PT-21'), 0.05);
  /** Of 16 curves, `many` shift; the nominal one is the first. */
  const with16 = (many: number, nominalShifts: boolean) => {
    const rest = Array.from({ length: 15 }, (_, i) => (i < many - (nominalShifts ? 1 : 0) ? shifted : sample));
    const variants = [nominalShifts ? shifted : sample, ...rest];
    const input = scheme([
      ['base-fronts', gray, 40],
      ['ceiling', 'PT-03', 10],
    ]);
    return inPlace(input, 'base-fronts', { components: [variants[0]!], average: variants[0]!, variants: [variants] });
  };

  it.each([
    [16, true, 'The base fronts read reddish gray in this light; the sample is medium gray.'],
    [15, true, 'The base fronts read reddish gray in this light; the sample is medium gray.'],
    [13, true, 'The base fronts may read reddish gray in this light; the sample is medium gray.'],
  ])('%d of 16 curves shift: said, as firmly as that', (many, nominal, text) => {
    const [warning] = found(with16(many, nominal));
    expect(warning).toMatchObject({ code: 'light-shift', text });
    // Every curve is tried equally often, to one draw.
    expect(Math.abs(warning!.holds_in! - many / 16)).toBeLessThanOrEqual(1 / 200 + 1e-9);
  });

  it.each([
    [8, true],
    [8, false],
    [5, false],
  ])('%d of 16 shift: cannot tell, whichever curve is computed with (%s)', (many, nominal) => {
    const [warning] = found(with16(many, nominal));
    expect(warning).toMatchObject({ code: 'cannot-tell', severity: 'note' });
    expect(warning!.text).toBe(
      'Cannot tell whether the base fronts keep reading medium gray in this light or turn reddish gray: the ' +
        'numbers of the sample do not say how this finish behaves under this lamp. Hold a sample under that lamp, beside one by the ' +
        'window.',
    );
  });

  it.each([3, 0])('%d of 16 shift: nothing to say', (many) => {
    expect(found(with16(many, false))).toEqual([]);
  });

  it('says it with "may" while nothing has been drawn', () => {
    const [warning] = judge(with16(16, true)).warnings.filter((w) => w.code === 'light-shift');
    expect(warning!.text).toContain('may read');
    expect(warning!.holds_in).toBeNull();
  });

  it('tells a shift within one name by how it looks against the sample', () => {
    // Kelly and Judd 1955: both are medium gray (Munsell value 4.5 to 6.5, L* 46 to 66); 5 in L* is 4.6 CIEDE2000 there.
    const lighter = { l: 65, a: 0, b: 0.5 };
    const input = scheme([
      ['base-fronts', gray, 40],
      ['ceiling', 'PT-03', 10],
    ]);
    const [warning] = found(
      inPlace(input, 'base-fronts', { components: [lighter], average: lighter, variants: [[lighter]] }),
    );
    expect(warning).toMatchObject({
      code: 'light-shift',
      text: 'The base fronts read lighter in this light than the sample, though both are medium gray.',
    });
  });
});
