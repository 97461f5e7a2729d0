import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import terrace from '../../demo-data/terrace.project.json?raw';
import { parseProject } from '../../src/io/project-file';
import { finishNames } from '../../src/model/given-names';
import { hasUsWord } from '../../src/model/trade-words';
import { isBuiltIn, knowBuiltIn, shownName } from '../../src/ui/words/built-in';
import { labelWithoutCode } from '../../src/ui/words/finishes';
import { keepNames, retold, setManner } from '../../src/ui/words/spoken';

const parsed = parseProject(terrace);
if (!parsed.ok) throw new Error('the demonstration is unreadable');
const demo = parsed.value;

beforeEach(() => {
  knowBuiltIn(demo);
  setManner({ words: 'uk', unit: 'mm' });
});
afterEach(() => {
  setManner({ words: 'us', unit: 'mm' });
  knowBuiltIn({ library: [], note: '' });
  keepNames('test', []);
});

describe('finishes that come with the program', () => {
  it('are shown in UK words, all of them, and the note of the demonstration', () => {
    const shown = [...demo.library.map(({ label }) => shownName(label)), shownName(demo.note)];
    expect(demo.library.filter(({ label }) => hasUsWord(label)).length).toBeGreaterThan(15);
    expect(shown.filter(hasUsWord)).toEqual([]);
    expect(labelWithoutCode('Charcoal-gray paint, satin, PT-22', 'PT-22')).toBe('Charcoal-grey paint, satin');
    expect(shownName(demo.note)).toContain('colours');
  });

  it('are theirs as written in US words', () => {
    setManner({ words: 'us', unit: 'mm' });
    for (const { label } of demo.library) expect(shownName(label)).toBe(label);
  });

  it('are known by what they say, also in a library somebody kept under other codes', () => {
    const { label, id } = demo.library.find((one) => one.id === 'PT-22')!;
    expect(shownName(label)).toBe('Charcoal-grey paint, satin, PT-22');
    expect(labelWithoutCode(label, id)).toBe('Charcoal-grey paint, satin');
  });
});

describe('finishes that people and suppliers named', () => {
  it.each(['Gray oak', 'Charcoal-gray paint', 'Color 3, matte, X-1', 'Grayish-green paint, satin, PT-16'])(
    'stay: %s',
    (label) => {
      expect(isBuiltIn(label)).toBe(false);
      expect(shownName(label)).toBe(label);
      expect(labelWithoutCode(`${label}, X-9`, 'X-9')).toBe(label);
    },
  );

  it('stay in sentences, where the program’s own are turned', () => {
    keepNames('test', finishNames([{ ...demo.library[0]!, id: 'G-1', label: 'Gray oak, G-1' }]));
    expect(retold('Fronts: Gray oak, G-1')).toBe('Fronts: Gray oak, G-1');
    expect(retold('Fronts: Charcoal-gray paint, satin, PT-22')).toBe('Fronts: Charcoal-grey paint, satin, PT-22');
  });
});
