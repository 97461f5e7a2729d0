import { readdirSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import { hasUsWord } from '../../src/model/trade-words';
import { isSpoken, keepNames, reread, retold, setManner, spoken } from '../../src/ui/words/spoken';

const US = { words: 'us', unit: 'mm' } as const;
const UK = { words: 'uk', unit: 'mm' } as const;
afterEach(() => {
  setManner(US);
  keepNames('test', []);
});

/** They shorten a name somebody gave. */
const OF_NAMES = /(?:labelWithoutCode|bareLabel|settingShortName|momentText)$/;
/** Files that hold no messages but what they are made with. */
const TOOLS = ['spoken.ts', 'built-in.ts', 'numbers.ts'];
const modules = await Promise.all(
  readdirSync('src/ui/words')
    .filter((name) => !TOOLS.includes(name))
    .map(
      async (name) =>
        [name, (await import(/* @vite-ignore */ `../../src/ui/words/${name}`)) as Record<string, unknown>] as const,
    ),
);

/** Arguments to try a message with: names and figures, which hold no US word, ids of surfaces, records of findings. */
const KITS: readonly (readonly unknown[])[] = [
  ['Oak', 'Ash', 'Elm', 'Fir', 'Yew'],
  [2, 3, 4, 5],
  [1, 2, 0],
  [['counter', 'base-fronts'], 2, 3],
  [
    ['Oak', 'Ash'],
    ['Elm', 'Fir'],
  ],
  [0, 'Oak', 1],
  ['Oak', 2, 'left', 1000, 2000],
  ['left', 'Oak'],
  ['counter'],
  ['counter', ['counter', 'tap']],
  [{ clears: { warnings: 1, notes: 1, questions: 1 }, eases: 1, brings: { warnings: 2, notes: 0, questions: 0 } }],
  [[{ code: 'weak-edge', surfaces: ['counter', 'plinth'] }]],
  [
    {
      of: 9,
      left: 3,
      by: [{ surfaces: ['counter'], count: 6 }],
      value: 0.5,
      surfaces: ['tap'],
      state: 'fixed',
      moved_de00: 2,
      label: 'Oak',
      mends: 1,
      costs: 1,
      worsens: 1,
      opens: 1,
    },
  ],
];

interface Leaf {
  readonly path: string;
  readonly value: unknown;
}

const leaves = (path: string, value: unknown): readonly Leaf[] =>
  typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([key, one]) => (key === 'id' ? [] : leaves(`${path}.${key}`, one)))
    : [{ path, value }];

/** Everything a message says, called with every kit it takes. */
function saidBy(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'function') return [];
  return KITS.flatMap((kit) => {
    try {
      const said: unknown = value(...kit);
      return typeof said === 'string' && !/undefined|NaN|\[object/.test(said) ? [said] : [];
    } catch {
      return [];
    }
  });
}

const messages = () =>
  modules.flatMap(([file, exports]) => leaves(file, exports)).filter(({ path }) => !OF_NAMES.test(path));

describe('messages', () => {
  it('are all of them spoken: each object of messages is wrapped once', () => {
    const unwrapped = modules.flatMap(([file, exports]) =>
      Object.entries(exports).flatMap(([name, value]) =>
        typeof value !== 'object' || isSpoken(value) ? [] : [`${file}: ${name}`],
      ),
    );
    expect(unwrapped).toEqual([]);
  });

  it('have no US word of the table left in the UK, and turn back as they were', () => {
    const before = messages().map(({ value }) => value);
    setManner(UK);
    const now = messages();
    const said = now.flatMap(({ path, value }) => saidBy(value).map((text) => `${path}: ${text}`));
    expect(said.length).toBeGreaterThan(1200);
    // What is quoted is what somebody wrote.
    expect(
      said.filter((text) => hasUsWord(text.replace(/["\u201c][^"\u201d]*["\u201d]/g, '').replace(/^[^:]*: /, ''))),
    ).toEqual([]);
    const silent = now.filter(({ value }) => typeof value === 'function' && saidBy(value).length === 0);
    expect(silent.length).toBeLessThan(now.filter(({ value }) => typeof value === 'function').length / 8);
    setManner(US);
    expect(messages().map(({ value }) => value)).toEqual(before);
  });

  it('show no metric length or light where US units are chosen', () => {
    setManner({ words: 'us', unit: 'in' });
    const said = messages().flatMap(({ path, value }) => saidBy(value).map((text) => `${path}: ${text}`));
    expect(said.filter((text) => /\d (?:mm|cm|m|lx)\b/.test(text))).toEqual([]);
  });
});

describe('a message', () => {
  const WORDS = spoken({
    title: 'Counter',
    list: [{ id: 'gray', name: 'Gray' }],
    of: (name: string, surface: string) => `The color of ${name} on the ${surface}`,
    size: (width: number, name: string) => `${name}: ${width} mm wide`,
  } as const);

  it('follows the choice and keeps names, ids and what is turned already', () => {
    setManner(UK);
    expect(WORDS.title).toBe('Worktop');
    expect(WORDS.list).toEqual([{ id: 'gray', name: 'Grey' }]);
    expect(WORDS.of('Gray oak', 'counter')).toBe('The colour of Gray oak on the worktop');
    setManner({ words: 'us', unit: 'in' });
    expect(WORDS.size(914.4, 'Tile of 300 mm')).toBe('Tile of 300 mm: 36 in wide');
  });

  it('in a list made while loading follows, too', () => {
    const list = reread(() => [WORDS.title, ...WORDS.list.map(({ name }) => name)]);
    expect(list).toEqual(['Counter', 'Gray']);
    setManner(UK);
    expect(list).toEqual(['Worktop', 'Grey']);
  });
});

it('retells what the engine says and leaves the names of the project', () => {
  keepNames('test', ['Gray oak', 'Counter idea']);
  setManner({ words: 'uk', unit: 'in' });
  const text = 'Gray oak makes the counter look gray in Counter idea: 500 lx, 30 mm, "color".';
  expect(retold(text)).toBe('Gray oak makes the worktop look grey in Counter idea: 46 fc, 1 3/16 in, "color".');
  setManner(US);
  expect(retold(text)).toBe(text);
});
