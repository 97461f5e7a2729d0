import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import terrace from '../../demo-data/terrace.project.json?raw';
import { parseProject } from '../../src/io/project-file';
import { isFound, searchable } from '../../src/model/search-words';
import { SAME, SPELLINGS, TERMS } from '../../src/model/trade-word-tables';
import { NO_FILTERS, passes } from '../../src/ui/drawer/finish-filters';
import { filterRange, NO_RANGE_FILTERS } from '../../src/ui/library/range-filters';

const PAIRS = [
  ...TERMS,
  ...SPELLINGS,
  ...SAME.flatMap(([first, ...others]) => others.map((other) => [first!, other] as const)),
];

const parsed = parseProject(terrace);
if (!parsed.ok) throw new Error('the demonstration is unreadable');
const { library } = parsed.value;
/** A library with every word of the tables in a name, in both forms, beside those of the demonstration. */
const finishes = [
  ...library,
  ...PAIRS.flat().map((word, i) => ({
    ...library[i % library.length]!,
    id: `W-${i}`,
    label: `The ${word} one, W-${i}`,
  })),
];
const inDrawer = (search: string) =>
  finishes.filter((finish) => passes(finish, { ...NO_FILTERS, search })).map(({ id }) => id);
const inLibrary = (search: string) => filterRange(finishes, { ...NO_RANGE_FILTERS, search }).map(({ id }) => id);

describe('a search', () => {
  it.each(PAIRS)('finds the same for %s and %s', (one, other) => {
    for (const inPlace of [inDrawer, inLibrary]) {
      const found = inPlace(one);
      expect(found.length).toBeGreaterThanOrEqual(2);
      expect(inPlace(other)).toEqual(found);
    }
  });

  it.each(['gray', 'grey', 'Grey', 'green-grey', 'green gray', 'pale green-gray'])(
    'finds the pale green-gray paint by %s',
    (search) => expect(inDrawer(search)).toContain('PT-14'),
  );

  it('finds as many by grey as by gray, in either words', () => {
    expect(inDrawer('charcoal grey')).toContain('PT-22');
    expect(inDrawer('grayish')).toEqual(inDrawer('greyish'));
  });

  it('finds by the beginning of a word in either spelling, and codes with their hyphens', () => {
    const text = searchable('Pale green-gray paint, satin, PT-14');
    for (const typed of ['gre', 'gra', 'grey', 'pt-14', '']) expect(isFound(typed, text)).toBe(true);
    for (const typed of ['pt-15', 'blue', 'gray blue']) expect(isFound(typed, text)).toBe(false);
  });

  it('finds a text by itself', () => {
    fc.assert(fc.property(fc.string(), (text) => isFound(text, searchable(text))));
  });

  it('takes endings along in both spellings', () => {
    const stem = fc.constantFrom(
      ...SPELLINGS.filter(([us]) => !us.endsWith('e') && !us.endsWith('d') && !us.endsWith('g')),
    );
    fc.assert(
      fc.property(stem, fc.constantFrom('', 's', 'ed', 'ish', 'less', 'ing'), ([us, uk], ending) => {
        const text = searchable(`a ${us}${ending} thing`);
        expect(isFound(`${uk}${ending}`, text)).toBe(true);
        expect(isFound(`${us}${ending}`, searchable(`a ${uk}${ending} thing`))).toBe(true);
      }),
    );
  });
});
