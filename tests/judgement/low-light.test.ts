import { describe, expect, it } from 'vitest';
import type { JudgeInput } from '../../src/engine/judge/input';
import { judge } from '../../src/engine/judge/judge';
import { inPlace, type Row, scheme } from './schemes';

const ROWS: readonly Row[] = [
  ['counter', 'EN-01', 10],
  ['island-counter', 'EN-01', 10],
  ['floor', 'ST-01', 20],
];

const inLight = (counter: number, island: number, change: Partial<JudgeInput> = {}): JudgeInput => ({
  ...inPlace(inPlace(scheme(ROWS), 'counter', { illuminanceLx: counter, luxMin: 0.5 * counter }), 'island-counter', {
    illuminanceLx: island,
    luxMin: 0.8 * island,
  }),
  ...change,
});
const warningsOf = (input: JudgeInput) => judge(input).warnings.filter(({ code }) => code === 'low-light');

describe('light on the worktops', () => {
  // IES RP-11 as quoted second-hand: preparation counter 50 fc (500 lx), sink and range 30 fc (300 lx).
  it.each([
    [500, null],
    [499, 'note'],
    [300, 'note'],
    [299, 'visible'],
  ] as const)('%d lx: %s', (lux, severity) => {
    expect(warningsOf(inLight(lux, 600))[0]?.severity ?? null).toBe(severity);
    expect(warningsOf(inLight(600, lux))[0]?.severity ?? null).toBe(severity);
  });

  it('names each counter with its own figure, which reads below the limit it falls short of', () => {
    const [warning, ...more] = warningsOf(inLight(299, 499));
    expect(more).toEqual([]);
    expect(warning!.surfaces).toEqual(['counter', 'island-counter']);
    expect(warning!.text).toMatch(
      /^The counter gets about 290 lx and the island counter gets about 490 lx in this light;/,
    );
    expect(warning!.text).toContain('300 lx is recommended at sink and cooktop, 500 lx where food is prepared');
    expect(warning!.why).toContain('the counter gets about 140 lx at its darkest place');
    expect(warning!.why).toContain('it is no rule');
    expect(warning!.holds_in).toBeNull();
    expect(warningsOf(inLight(600, 499))[0]!.surfaces).toEqual(['island-counter']);
  });

  it('says to switch lamps on by day only, where none is on', () => {
    const advice = (burning: JudgeInput['burning']) =>
      /Switch lamps on/.test(warningsOf(inLight(250, 250, { burning }))[0]!.text);
    expect(advice({ daylight: true, lamps: false })).toBe(true);
    expect(advice({ daylight: true, lamps: true })).toBe(false);
    expect(advice({ daylight: false, lamps: true })).toBe(false);
  });

  it('notes in one line what daylight alone gives where lamps could be on, and only what falls short of the least', () => {
    const burning = { daylight: true, lamps: false, hasLampsOff: true };
    const [warning, ...more] = warningsOf(inLight(250, 120, { burning }));
    expect(more).toEqual([]);
    expect(warning).toMatchObject({ severity: 'note', surfaces: ['counter', 'island-counter'] });
    expect(warning!.text).toBe(
      'By daylight alone the counters get as little as about 120 lx: for work there lamps are on by day, too.',
    );
    expect(warningsOf(inLight(400, 299, { burning }))[0]).toMatchObject({ surfaces: ['island-counter'] });
    expect(warningsOf(inLight(400, 300, { burning }))).toEqual([]);
  });

  it('notes no more of lamps that were dimmed on purpose', () => {
    const [warning] = warningsOf(inLight(60, 250, { burning: { daylight: false, lamps: true, isDimmed: true } }));
    expect(warning).toMatchObject({ severity: 'note' });
    expect(warning!.text).toContain('dimmed as it is');
  });

  it('says one sentence of a room without light', () => {
    const input = inLight(500, 500, { burning: { daylight: false, lamps: false } });
    const dark: JudgeInput = { ...input, surfaces: input.surfaces.map((s) => ({ ...s, installed: [] })) };
    const found = judge(dark).warnings.filter(({ code }) => code === 'low-light');
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ severity: 'grave', surfaces: ['counter', 'island-counter', 'floor'] });
    expect(found[0]!.text).toMatch(/^No light is on in this setting/);
    const shut: JudgeInput = { ...dark, burning: { daylight: true, lamps: false } };
    expect(warningsOf(shut)[0]!.text).toMatch(/^Next to no light reaches the room/);
    const saying = (burning: JudgeInput['burning']) => warningsOf({ ...dark, burning })[0]!.text;
    expect(saying({ daylight: true, lamps: false, noDaylightFor: 'night' })).toMatch(
      /^The sun is down, .* Switch lamps/,
    );
    expect(saying({ daylight: true, lamps: false, noDaylightFor: 'window' })).toMatch(/^There is no window, /);
    expect(saying({ daylight: false, lamps: true, hasNoLamp: true })).toMatch(
      /^No lamp of this setting is in the room/,
    );
  });
});
