import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/run';
import { DEMO_PATH, demoText } from '../io/demo';
import { fileWith } from './upstand';

const OPTION = ['--option', 'our-floor'];

describe('schedule', () => {
  it('as data has a row an item, with quantities', () => {
    const { exit, out, messages } = run(['schedule', DEMO_PATH, ...OPTION, '--json']);
    expect([exit, messages]).toEqual([0, '']);
    const { rows } = JSON.parse(out) as { rows: { id: string; quantity: { order: { packs: number } } | null }[] };
    expect(rows.map(({ id }) => id)).toContain('CT1');
    expect(rows.find(({ id }) => id === 'CT1')!.quantity!.order.packs).toBeGreaterThan(0);
    expect(rows.find(({ id }) => id === 'FL1')!.quantity).toBeNull();
  });

  it('as a table reads back, row by row, with a heading for every column', () => {
    const { exit, out } = run(['schedule', DEMO_PATH, ...OPTION, '--csv']);
    expect(exit).toBe(0);
    const { data, errors } = Papa.parse<Record<string, string>>(out.trim(), { header: true });
    expect(errors).toEqual([]);
    expect(data.find(({ id }) => id === 'BS1')).toMatchObject({
      status: 'open',
      code: 'DEMO-TL-01',
      order_unit: 'm2',
      waste_percent: '10',
      signature: '',
    });
    expect(new Set(data.map((row) => Object.keys(row).length)).size).toBe(1);
  });

  it('takes no text for a formula', () => {
    const evil = demoText().replaceAll('"DEMO-TL-01"', '"=HYPERLINK(1)"');
    const { out } = run(['schedule', fileWith('evil.json', evil), ...OPTION, '--csv']);
    expect(out).toContain("'=HYPERLINK(1)");
    expect(out).not.toMatch(/(^|,)"?=HYPER/m);
  });

  it('in words says what is to settle, in the words and units asked for', () => {
    const { out } = run(['schedule', DEMO_PATH, ...OPTION, '--words', 'uk', '--units', 'us']);
    expect(out).toMatch(/CT1 {2}Worktop, island worktop and upstand/);
    expect(out).toContain('to settle: No price is known.');
    expect(out).not.toMatch(/\d mm\b/);
  });

  it('does not open a project with times and packs there are none of', () => {
    const supplied = (from: RegExp, to: string) => demoText().replace(from, to);
    for (const [text, says] of [
      [
        supplied(/"lead_time_weeks": [\d.]+/, '"lead_time_weeks": -2'),
        /supply\.lead_time_weeks is -2, outside 0 to 520/,
      ],
      [supplied(/"lead_time_weeks": [\d.]+/, '"lead_time_weeks": 1e9'), /supply\.lead_time_weeks is 1000000000/],
      [supplied(/"pack": [\d.]+/, '"pack": -1'), /supply\.pack is -1, outside 0/],
    ] as const) {
      const { exit, out, messages } = run(['schedule', fileWith('supply.json', text), ...OPTION]);
      expect([exit, out]).toEqual([2, '']);
      expect(messages).toMatch(says);
    }
  });

  it('says that a pack of next to nothing is none', () => {
    const tiny = demoText().replaceAll('"box of 1 m2"', '"box of 0.000001 m2"');
    const { out } = run(['schedule', fileWith('tiny.json', tiny), ...OPTION]);
    expect(out.replace(/\s+/g, ' ')).toContain('"box of 0.000001 m2" does not say how much is in a pack');
  });

  it.each([
    ['two forms at once', ['schedule', DEMO_PATH, '--csv', '--json'], /--csv and --json/],
    ['no file', ['schedule'], /project file/],
    ['no such file', ['schedule', 'nowhere.json'], /nowhere\.json/],
    ['no such option', ['schedule', DEMO_PATH, '--option', 'nope'], /no option "nope"/],
    ['an option it does not know', ['schedule', DEMO_PATH, '--setting', 'day'], /--setting/],
  ])('ends with 2 and says what to do for %s', (_, args, says) => {
    const { exit, out, messages } = run(args);
    expect([exit, out]).toEqual([2, '']);
    expect(messages).toMatch(says);
  });
});
