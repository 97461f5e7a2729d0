import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { expect, it } from 'vitest';
import { inTradeWords } from '../../src/model/trade-words';

/**
 * British spellings and trade words with the US ones beside them (Merriam-Webster; NKBA for counter, toe kick, faucet and
 * cooktop). What people read stands in string literals; ids such as 'tap' or 'plinth' are one word and never shown.
 */
const BRITISH = new RegExp(
  [
    'colour|grey|neighbour|favour|behaviour|mould|aluminium|judgement|catalogue|programme|labelled|modelled|cancelled',
    '\\b(centre|metre|millimetre)s?\\b|\\b(recognise|organise|analyse|normalise|optimise)[ds]?\\b|\\bmatt\\b|\\blicence\\b',
    '\\bworktops?\\b|\\bhobs?\\b|\\btaps?\\b|\\bplinths?\\b|\\bskirting\\b|\\bcupboards?\\b|\\bsplashbacks?\\b',
  ].join('|'),
  'i',
);

/** What is recognized in files that people bring, in the words of many languages, and the tables of both countries' words. */
const RECOGNIZED = [
  'src/model/trade-word-tables.ts',
  'src/model/unit-vocabulary.ts',
  ...['heading-words', 'price-heading', 'price-words'].map((name) => `src/io/sheet/${name}.ts`),
];

const files = (readdirSync('src', { recursive: true }) as string[])
  .filter((name) => /\.tsx?$/.test(name) && !/\.(test|data)\.ts$/.test(name))
  .map((name) => join('src', name))
  .filter((name) => !RECOGNIZED.includes(name));

/** Texts in string literals, templates and elements; ids and module names, which are single words, left out. */
function textsOf(file: string): readonly string[] {
  const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);
  const texts: string[] = [];
  const visit = (node: ts.Node) => {
    const isTemplate = ts.isTemplateHead(node) || ts.isTemplateMiddle(node) || ts.isTemplateTail(node);
    if (isTemplate || ts.isJsxText(node)) texts.push(node.text);
    else if (ts.isStringLiteralLike(node) && !isId(node.text)) texts.push(node.text);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return texts;
}

/** One word in small letters, or a path or name put together of such: never a sentence, a label or a name on screen. */
const isId = (text: string): boolean => /^[\w./@?-]*$/.test(text) && !/^[A-Z][a-z]+$/.test(text);

it('knows a British word when it sees one, and lets ids be', () => {
  expect('A screen colour').toMatch(BRITISH);
  expect('Raise the taps').toMatch(BRITISH);
  expect('A light tapestry, a matte counter, gray').not.toMatch(BRITISH);
  expect(['tap', './parts/plinth', 'base.plinth_height'].every(isId)).toBe(true);
  expect(isId('Worktop')).toBe(false);
});

/** US spellings and trade words that are others in the UK (Merriam-Webster and Oxford dictionaries; planning guides of both countries). */
const AMERICAN = new RegExp(
  [
    '\\b(?:dis)?colors?\\b|\\bgray|neighbor|\\bodors?\\b|\\bmold|behavior|favor|aluminum|\\bjudgment|\\bfibers?\\b|luster\\b',
    '\\b(?:center|meter|millimeter|centimeter|liter)(?:s|ed)?\\b|\\bmatte\\b|\\b(?:catalog|analyze)[sd]?\\b|\\b(?:recogn|organ|standard|real)iz',
    '\\bfaucets?\\b|\\bcook ?tops?\\b|\\bcounter(?:top)?s?\\b|backsplash|baseboard|\\btoe[ -]kick|\\bdrywall\\b|\\bpantr(?:y|ies)\\b',
    '\\b(?:upper|wall|base|tall)[ -]cabinets?\\b|\\bunder-cabinet\\b|\\blocal codes?\\b|\\blicensed trades?\\b|\\btrim\\b',
  ].join('|'),
  'i',
);
/** What people read: messages of the page and the command line, and sentences of engine, model and kitchen. */
const READ = /^src\/(?:ui\/words|cli\/text|app\/words|engine\/judge|model|kitchen)/;

it('turned for the UK has no US word left', () => {
  expect('Recognized: the color of the countertop').toMatch(AMERICAN);
  const texts = files
    .filter((file) => READ.test(file))
    .flatMap((file) => textsOf(file).map((text) => ({ file, text })))
    // What is quoted is what somebody wrote; paths and names of fields stay.
    .filter(({ text }) => !/["\u201c]|[._][a-z]/.test(text));
  expect(texts.length).toBeGreaterThan(800);
  const left = texts.map(({ file, text }) => ({ file, text: inTradeWords(text, 'uk') }));
  expect(left.filter(({ text }) => AMERICAN.test(text))).toEqual([]);
});

it('says everything in US words, in problems and reasons as well', () => {
  const texts = files.flatMap((file) => textsOf(file).map((text) => ({ file, text })));
  expect(texts.length).toBeGreaterThan(800);
  expect(texts.filter(({ text }) => BRITISH.test(text))).toEqual([]);
});
