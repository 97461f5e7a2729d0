import { describe, expect, it } from 'vitest';
import { labUnder } from '../../src/engine/change/lab-under';
import { differenceCiede2000 } from '../../src/engine/color/difference';
import { whiteOf } from '../../src/engine/color/xyz';
import type { LaidFinish } from '../../src/engine/finish/types';
import { holdsIn } from '../../src/engine/judge/holds';
import { judge } from '../../src/engine/judge/judge';
import { plausibleCurves } from '../../src/engine/plausible/curves';
import { lightById, perLux } from '../../src/engine/spectrum/lights';
import { observer2 } from '../../src/engine/spectrum/observers';
import { placeColors } from '../../src/kitchen/study/place-colors';
import { finish, knownTo } from './finishes';
import { measured, metamericTo } from './metamers';
import { inPlace, scheme } from './schemes';

/** Fronts and a wall under one lamp and nothing else. */
function found(fronts: LaidFinish, wall: LaidFinish, id: string) {
  const spd = perLux(lightById(id)!);
  const read = placeColors(spd, whiteOf(spd, observer2));
  let input = scheme([
    ['base-fronts', fronts, 40],
    ['wall', wall, 30],
    ['ceiling', 'PT-03', 10],
  ]);
  for (const [surface, of] of [
    ['base-fronts', fronts],
    ['wall', wall],
  ] as const) {
    const components = of.components.map((c) => read(c.spectrum));
    input = inPlace(input, surface, {
      components,
      average: components[0]!,
      variants: of.components.map((c) => plausibleCurves(c, of.class).map(read)),
    });
  }
  const drawn = holdsIn(input, judge(input));
  return drawn.warnings.filter(
    (w) => w.basis === 'installed' && w.surfaces.includes('wall') && w.surfaces.includes('base-fronts'),
  );
}

describe('a pair that matches by day', () => {
  const gray = measured(knownTo(finish('PT-21'), 0.25));
  const metamer = { ...metamericTo(knownTo(finish('PT-21'), 0.25), 0.7), id: 'other' };

  it('parts under a lamp where both spectra were measured and a metameric black divides them', () => {
    const lamp = lightById('LED-B2')!;
    const apart = differenceCiede2000(
      labUnder(gray.components[0]!.spectrum, lamp),
      labUnder(metamer.components[0]!.spectrum, lamp),
    );
    expect(apart).toBeGreaterThan(3.6);
    const [warning] = found(gray, metamer, 'LED-B2');
    expect(warning).toMatchObject({ code: 'pair-splits', severity: 'visible' });
    expect(warning!.text).toMatch(
      /match by day but do not in this light: the wall looks (redder|greener|yellower|bluer)\.$/,
    );
    expect(warning!.why).toContain(`${apart.toFixed(1)} in this light`);
    expect(warning!.holds_in!).toBeGreaterThan(0.85);
  });

  it('says nothing under daylight, nor of two of one spectrum', () => {
    expect(found(gray, metamer, 'D65').filter((w) => w.code === 'pair-splits')).toEqual([]);
    expect(found(gray, { ...gray, id: 'other' }, 'LED-B2')).toEqual([]);
  });

  it('cannot be told to stay one under a lamp of three lines where only the colors are known, however exactly', () => {
    const one = knownTo(finish('PT-12'), 0.05);
    const other = { ...one, id: 'other' };
    const [warning] = found(one, other, 'LED-RGB1');
    expect(warning).toMatchObject({ code: 'cannot-tell', severity: 'note' });
    expect(warning!.text).toContain('a match by day, stay one in this light');
    expect(warning!.text).toContain('Compare these two samples, upright, in this light.');
    // Measured, the same two are of one spectrum, and nothing can divide them.
    expect(found(measured(one), measured(other), 'LED-RGB1')).toEqual([]);
  });
});
