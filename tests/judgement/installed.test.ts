import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Lab } from '../../src/engine/color/types';
import { bounceTints } from '../../src/engine/judge/bounce';
import { NOT_DRAWN } from '../../src/engine/judge/claims';
import { holdsIn } from '../../src/engine/judge/holds';
import type { JudgeInput } from '../../src/engine/judge/input';
import { judge } from '../../src/engine/judge/judge';
import { lightShifts } from '../../src/engine/judge/light-shift';
import { withoutTint } from '../../src/engine/judge/place-tint';
import { finish, knownTo } from './finishes';
import { inPlace, type Row, scheme, tinted } from './schemes';

const ROWS: Row[] = [
  ['counter', 'EN-01', 10],
  ['floor', 'WD-01', 10],
  ['base-fronts', 'PT-01', 40],
  ['backsplash', 'TL-01', 10],
  ['wall', 'PT-02', 30],
];

/** A surface whose place is tinted as a perfect white there would be. */
const tintedPlace = (input: JudgeInput, surface: 'wall' | 'backsplash' | 'base-fronts', white: Lab<'D65-2'>) => {
  const s = input.surfaces.find((x) => x.surface === surface)!;
  const components = s.finish.components.map((c) => tinted(c.labD65, white));
  return inPlace(input, surface, { placeWhite: white, components, average: components[0]! });
};

describe('taking the tint of a place off', () => {
  it('undoes a place that scales the tristimulus values, for light and dark alike', () => {
    const lab = fc.record({
      l: fc.double({ min: 35, max: 98, noNaN: true }),
      a: fc.double({ min: -15, max: 15, noNaN: true }),
      b: fc.double({ min: -15, max: 25, noNaN: true }),
    });
    const white = fc.record({
      l: fc.constant(100),
      a: fc.double({ min: -6, max: 6, noNaN: true }),
      b: fc.double({ min: -6, max: 20, noNaN: true }),
    });
    fc.assert(
      fc.property(lab, white, (own, place) => {
        const back = withoutTint(tinted(own, place), place);
        expect(back.a).toBeCloseTo(own.a, 6);
        expect(back.b).toBeCloseTo(own.b, 6);
      }),
    );
  });
});

describe('tinted by bounce', () => {
  // A perfect white on the wall by day: over birch a* +0.5 b* +8.2, over slate -1.8 +0.4 (radiosity, 81 wavelengths); the
  // wall paint is then named yellowish white with a chroma part of 6.2, and white with 2.4.
  it.each([
    ['birch', { l: 100, a: 0.5, b: 8.2 }, 'visible', 'yellowish white', 6.2],
    ['slate', { l: 100, a: -1.8, b: 0.4 }, 'note', 'white', 2.4],
  ] as const)('over %s', (_, white, severity, name, chromaPart) => {
    const [found] = bounceTints(tintedPlace(scheme(ROWS), 'wall', white));
    expect(found).toMatchObject({ surface: 'wall', severity, installedName: name, sampleName: 'white' });
    expect(Math.abs(found!.chromaPart - chromaPart)).toBeLessThan(0.35);
  });

  it('says nothing of full colors, metals and fittings', () => {
    const white = { l: 100, a: 0.5, b: 12 };
    expect(bounceTints(tintedPlace(scheme(ROWS), 'base-fronts', white))).toEqual([]);
    const steel = scheme([['appliance', 'TL-01', 10], ...ROWS.slice(1)]);
    const tintedSteel = inPlace(steel, 'appliance', { placeWhite: white, average: { l: 93, a: 0.2, b: 13 } });
    expect(bounceTints(tintedSteel)).toEqual([]);
  });

  it('leaves a shift that stays without the tint to the lamp', () => {
    const shifted = inPlace(scheme(ROWS), 'wall', { average: { l: 92, a: 2, b: 8 } });
    expect(bounceTints(shifted)).toEqual([]);
    expect(lightShifts(shifted, NOT_DRAWN.shift)).toMatchObject([{ surface: 'wall', sampleName: 'white' }]);
  });

  it('charges two whites in one tinted place to the place', () => {
    const white = { l: 100, a: 0, b: 5 };
    const assessed = judge(tintedPlace(scheme(ROWS), 'wall', white));
    expect(assessed.warnings.some((w) => w.code === 'too-yellow' || w.code === 'white-looks-dirty')).toBe(false);
    expect(assessed.warnings.filter((w) => w.code === 'tinted-by-bounce')).toHaveLength(1);
  });

  it('puts wall and backsplash that read alike from one source into one finding', () => {
    const white = { l: 100, a: 0.5, b: 8.2 };
    const both = ['wall', 'backsplash'] as const;
    const input = both.reduce(
      (i, s) => inPlace(tintedPlace(i, s, white), s, { tintFrom: [{ surface: 'floor', share: 0.8 }] }),
      scheme(ROWS),
    );
    const found = judge(input).warnings.filter((w) => w.code === 'tinted-by-bounce');
    expect(found).toHaveLength(1);
    expect(found[0]!.surfaces).toEqual(['backsplash', 'wall']);
    expect(found[0]!.text).toBe(
      'The backsplash and the wall read yellowish white here; the samples are white. Most of the tint comes from the floor.',
    );
  });
});

describe('faults under a lamp', () => {
  // The tile alone reads yellower in this light, with no tint in its place: the finish, not the room.
  const yellowed = inPlace(scheme(ROWS), 'backsplash', {
    components: [{ l: 93, a: 0.2, b: 6.5 }],
    average: { l: 93, a: 0.2, b: 6.5 },
  });

  it('charges a finish that stays too yellow with the tint taken off, softly on a guessed spectrum', () => {
    const found = judge(yellowed).warnings.find((w) => w.code === 'too-yellow' && w.surfaces.includes('counter'))!;
    expect(found).toMatchObject({ basis: 'installed', severity: 'visible' });
    expect(found.text).toBe('In this light, the backsplash may look yellow beside the counter.');
  });

  it('does not say it twice where the sample shows it already', () => {
    const rows = ROWS.map((r): Row => (r[0] === 'backsplash' ? ['backsplash', 'TL-02', 10] : r));
    const found = judge(scheme(rows)).warnings.filter((w) => w.code === 'too-yellow' && w.surfaces.includes('counter'));
    expect(found).toHaveLength(1);
    expect(found[0]!.basis).toBe('sample');
  });
});

describe('whites that a lamp may part', () => {
  // Both measured white for white; by 16 curves of the tile 10 read it yellower under this lamp.
  const known = ROWS.map(([surface, id, percent]): Row => [surface, knownTo(finish(id as string), 0.05), percent!]);
  const partly = (many: number) => {
    const input = scheme(known);
    const own = finish('TL-01').components[0]!.labD65;
    const variants = Array.from({ length: 16 }, (_, i) => (i < 16 - many ? own : { ...own, b: own.b + 4.7 }));
    return inPlace(input, 'backsplash', { variants: [variants] });
  };
  const notes = (many: number) => {
    const input = partly(many);
    return holdsIn(input, judge(input)).warnings.filter(
      (w) => w.text.includes('in this light') && w.basis === 'installed',
    );
  };

  it('are a question for samples under that lamp, where curves alone decide', () => {
    const note = notes(10).find((w) => w.surfaces.includes('counter'))!;
    expect(note).toMatchObject({ code: 'cannot-tell', severity: 'note' });
    expect(note.text).toContain('the color of a sample does not say what other light makes of it');
    expect(note.why).toMatch(/in this light they do in 3[0-9]% of the curves/);
  });

  it('are not, where nearly all curves agree', () => {
    expect(notes(2).filter((w) => w.surfaces.includes('counter'))).toEqual([]);
  });
});

describe('what cannot be told', () => {
  it('withholds the verdict on a tile known from a photo, and says what to do', () => {
    const photo = knownTo(finish('TL-01'), 5, 'photo');
    const input = scheme([
      ['counter', knownTo(finish('EN-01'), 5, 'photo'), 10],
      ['backsplash', photo, 10],
    ]);
    const assessed = judge(input);
    expect(assessed.pairs.find((p) => p.a.component === 'base')!.verdict).toBe('cannot-tell');
    const [warning] = assessed.warnings;
    expect(warning).toMatchObject({ code: 'cannot-tell', severity: 'note', surfaces: ['counter', 'backsplash'] });
    expect(warning!.text).toBe(
      'Cannot tell from here how the whites of the counter and the backsplash sit together: both colors are taken from a photo. ' +
        'Compare these two samples by the window, the counter lying flat, the backsplash upright.',
    );
  });

  it('speaks flatly of measured colors, softens declared ones, and withholds loose ones', () => {
    const textAt = (uncertainty: number) => {
      const input = scheme([
        ['counter', knownTo(finish('EN-01'), uncertainty), 10],
        ['wall', knownTo(finish('PT-06'), uncertainty), 10],
      ]);
      return holdsIn(input, judge(input)).warnings[0]!;
    };
    expect(textAt(0.25).text).toBe('The wall looks yellow beside the counter.');
    // Outside draws: yellow in 99.6, 82 and 67 %.
    expect(textAt(0.7).text).toBe('The wall may look yellow beside the counter.');
    expect(textAt(1.5).code).toBe('cannot-tell');
    expect(textAt(0.25).holds_in!).toBeGreaterThan(textAt(0.7).holds_in!);
  });
});

describe('a mix of daylight and lamps', () => {
  // A perfect white on a wall by ceiling lamps in a room with a window, its counter lit by both: a* 8.1, b* 27; of that the
  // lights alone bring a* 8, b* 26.5 (every surface gray).
  const place = { l: 100, a: 8.1, b: 27 };
  const lights = { l: 100, a: 8, b: 26.5 };
  const lit = (surface: 'wall' | 'backsplash', lightWhite: Lab<'D65-2'>): JudgeInput => ({
    ...inPlace(tintedPlace(scheme(ROWS), surface, place), surface, {
      lightWhite,
      tintFrom: [{ surface: 'floor', share: 0.04 }],
    }),
    lights: 'daylight-and-lamps',
  });

  it('is said of the light, once, and of no surface', () => {
    const warnings = judge(lit('wall', lights)).warnings.filter((w) => w.basis === 'installed');
    expect(warnings.map((w) => w.code)).toEqual(['light-shift']);
    expect(warnings[0]).toMatchObject({ severity: 'note', surfaces: ['wall'] });
    expect(warnings[0]!.text).toBe(
      'The light here is a mix of daylight and lamps: beside a white on the counter, a white reads orange on the wall. ' +
        'That is the light, no finish.',
    );
  });

  it('leaves to the surfaces what they add, and names their greatest part of that', () => {
    const found = bounceTints(lit('wall', { l: 100, a: 6, b: 16 }));
    expect(found).toMatchObject([{ surface: 'wall', isMixed: true, source: null }]);
    const floor = inPlace(lit('wall', { l: 100, a: 6, b: 16 }), 'wall', {
      tintFrom: [{ surface: 'floor', share: 0.2 }],
    });
    const [tint] = bounceTints(floor);
    // 0.2 of the whole tint is more than half of what the lights leave over (1 - 0.6).
    expect(tint!.source!.share).toBeGreaterThan(0.5);
    const text = judge(floor).warnings.find((w) => w.code === 'tinted-by-bounce')!.text;
    expect(text).toContain('the mix of lights left aside');
    expect(text).toContain('Most of the tint comes from the floor.');
  });

  it('records the part of the lights beside the surfaces’', () => {
    const wall = judge(lit('wall', lights)).surfaces.find((s) => s.surface === 'wall')!;
    expect(wall.installed[0]!.light_white_lab_d65).toEqual([100, 8, 26.5]);
    expect(wall.installed[0]!.tint_from_light).toBeCloseTo(0.98, 2);
  });

  it('does not tip the balance: each place is read against its own light', () => {
    const rows: Row[] = [
      ['counter', 'EN-01', 10],
      ['floor', 'ST-01', 20],
      ['base-fronts', 'PT-01', 30],
      ['backsplash', 'TL-01', 20],
      ['wall', 'PT-02', 20],
    ];
    const plain = scheme(rows);
    // Half of the kitchen by the lamps, half by the window.
    const mixed = (['base-fronts', 'wall'] as const).reduce(
      (input, s) => inPlace(tintedPlace(input, s, place), s, { lightWhite: place }),
      plain,
    );
    const [expected, found] = [judge(plain), judge(mixed)].map((a) => a.balance.installed.shares);
    found!.forEach((share, i) => {
      expect(share).toBeCloseTo(expected![i]!, 9);
    });
  });
});

describe('how much of a tint one surface brings', () => {
  it.each([
    [0.85, 'Most of the tint comes from the floor.'],
    [0.5, 'Most of the tint comes from the floor.'],
    [0.45, 'About half of the tint comes from the floor.'],
    [0.31, 'About a third of the tint comes from the floor.'],
    [0.29, 'The tint comes from what stands around.'],
  ])('%d', (share, sentence) => {
    const input = inPlace(tintedPlace(scheme(ROWS), 'wall', { l: 100, a: 0.5, b: 8.2 }), 'wall', {
      tintFrom: [{ surface: 'floor', share }],
    });
    expect(judge(input).warnings.find((w) => w.code === 'tinted-by-bounce')!.text).toContain(sentence);
  });
});
