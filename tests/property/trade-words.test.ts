import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hasUsWord, inTradeWords } from '../../src/model/trade-words';

// Pairs of terms from the trade's guides of both countries; spellings by Merriam-Webster and the Oxford dictionary.
describe('US words for the UK', () => {
  it.each([
    ['The counters touch the backsplash.', 'The worktops touch the splashback.'],
    ['Counter', 'Worktop'],
    ['COUNTER', 'WORKTOP'],
    ['a granite countertop', 'a granite worktop'],
    ['Wall-cabinet fronts', 'Wall-unit fronts'],
    ['an upper cabinet, a range hood, the hood lamps', 'a wall unit, a cooker hood, the cooker hood lamps'],
    ['Toe kick height, toe-kick recess', 'Plinth height, plinth recess'],
    ['Faucets, cooktops and a pantry', 'Taps, hobs and a larder'],
    ['baseboard, light rail, receptacles, latex paint', 'skirting, pelmet, sockets, emulsion'],
    ['dark bluish-gray, grayish, colorless, discolored', 'dark bluish-grey, greyish, colourless, discoloured'],
    ['Centered in millimeters; neighbors; mitered', 'Centred in millimetres; neighbours; mitred'],
    ['None was recognized; trim, local codes', 'None was recognised; woodwork, building regulations'],
    ['Under-cabinet strip', 'Under-cupboard strip'],
  ])('%s: %s', (us, uk) => expect(inTradeWords(us, 'uk')).toBe(uk));

  it.each([
    'encounter parameter hoodie centerpiece',
    'kitchen.counter.thickness and options/0/scheme/island-counter/x',
    'gray-card.csv, src/color.ts, --color lab:1, #gray, CT_gray, GRAY-01, 7-gray, gray-7',
    'There is no surface "island counter".',
    'Give \u201ccolor\u201d a value.',
  ])('leaves %s', (text) => expect(inTradeWords(text, 'uk')).toBe(text));

  it('leaves names, wherever they stand', () => {
    const kept = ['Gray oak', 'Color 3'];
    expect(inTradeWords('Gray oak on the counter; Color 3 is gray; Gray oaks', 'uk', kept)).toBe(
      'Gray oak on the worktop; Color 3 is grey; Grey oaks',
    );
  });

  it('changes nothing for the US', () => {
    fc.assert(fc.property(fc.string(), (text) => inTradeWords(text, 'us') === text));
  });

  const WORDS = [
    'counter',
    'Counters',
    'an upper cabinet',
    'hood',
    'cooker hood',
    'gray',
    'color',
    'centered',
    'toe kick',
    'the',
    ',',
    '.',
    '"',
    'wall',
    'cabinet',
    'a',
    '12 mm',
    'range',
    'latex paint',
  ];
  const sentence = fc
    .array(fc.oneof(fc.constantFrom(...WORDS), fc.string({ maxLength: 6 })))
    .map((words) => words.join(' '));

  it('once is as good as twice, and no US word is left outside of quotes', () => {
    fc.assert(
      fc.property(sentence, (text) => {
        const uk = inTradeWords(text, 'uk');
        expect(inTradeWords(uk, 'uk')).toBe(uk);
        if (!text.includes('"') && !text.includes('\u201c')) expect(hasUsWord(uk)).toBe(false);
      }),
    );
  });

  it('keeps every protected part as it is', () => {
    const name = fc.constantFrom('Gray Counter', 'color of the hood', 'Matte', 'Pantry 2');
    fc.assert(
      fc.property(sentence, name, sentence, (before, kept, after) => {
        const plain = (text: string) => text.replace(/["\u201c\u201d]/g, '');
        const uk = inTradeWords(`${plain(before)} | ${kept} | ${plain(after)}`, 'uk', [kept]);
        expect(uk).toContain(`| ${kept} |`);
      }),
    );
  });
});
