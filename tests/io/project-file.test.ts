import { expect, it } from 'vitest';
import { SURFACES } from '../../src/engine/surface';
import { parseProject, projectText } from '../../src/io/project-file';
import { DEMO_PATH, demoProject, demoText } from './demo';

type Loose = Record<string, never> & { [name: string]: Loose } & Loose[];

/** The demo with something changed by hand, as text. */
function changed(change: (project: Loose) => void): string {
  const project = JSON.parse(demoText());
  change(project);
  return JSON.stringify(project, null, 2);
}

const set = (holder: unknown, name: string | number, value: unknown) => {
  (holder as Record<string | number, unknown>)[name] = value;
};
const remove = (holder: unknown, name: string) => {
  delete (holder as Record<string, unknown>)[name];
};

it('reads the demo without a notice and writes it back letter by letter', () => {
  const parsed = parseProject(demoText(), DEMO_PATH);
  expect(parsed).toMatchObject({ ok: true });
  expect(parsed.ok && parsed.notices).toBeUndefined();
  expect(parsed.ok && projectText(parsed.value)).toBe(demoText());
});

it('gives the document back, whatever the order of fields in the file', () => {
  const demo = demoProject();
  const backwards = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(backwards);
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(
      Object.entries(value)
        .reverse()
        .map(([name, member]) => [name, backwards(member)]),
    );
  };
  const parsed = parseProject(JSON.stringify(backwards(demo)));
  expect(parsed).toEqual({ ok: true, value: demo });
  expect(parsed.ok && projectText(parsed.value)).toBe(demoText());
});

it('ships demo finishes that say what they are and that they are invented', () => {
  const demo = demoProject();
  expect(demo.library.length).toBeGreaterThanOrEqual(63);
  expect(demo.note).toContain('invented');
  for (const finish of demo.library) {
    expect(finish.label.endsWith(`, ${finish.id}`)).toBe(true);
    expect(finish.note).toContain('Invented');
    expect(finish.supply?.supplier ?? '').toMatch(/^Demo supplier [ABC]$/);
  }
  for (const option of demo.options) expect(Object.keys(option.scheme)).toEqual([...SURFACES]);
  // Findings are computed, never stored.
  expect(demoText()).not.toMatch(/lacks-warm|lacks-cool|weak-edge|tinted|verdict|warning|undertone/);
});

it.each<[string, string, string, (project: Loose) => void]>([
  [
    'unknown-finish',
    'options[1].scheme.floor.finish',
    'XX-99',
    (p) => set(p['options']![1]!['scheme']!['floor'], 'finish', 'XX-99'),
  ],
  [
    'unknown-finish',
    'options[0].scheme.backsplash.laying.grout',
    'GR-77',
    (p) => set(p['options']![0]!['scheme']!['backsplash']!['laying'], 'grout', 'GR-77'),
  ],
  [
    'not-a-grout',
    'options[0].scheme.backsplash.laying.grout',
    'no grout',
    (p) => set(p['options']![0]!['scheme']!['backsplash']!['laying'], 'grout', 'TL-01'),
  ],
  [
    'missing-field',
    'options[1].scheme.upstand.state',
    'missing',
    (p) => remove(p['options']![1]!['scheme']!['upstand'], 'state'),
  ],
  ['reserved-id', 'library[0].id', 'NONE', (p) => set(p['library']![0], 'id', 'NONE')],
  [
    'wrong-field',
    'options[1].scheme.floor.finish',
    '5',
    (p) => set(p['options']![1]!['scheme']!['floor'], 'finish', 5),
  ],
  ['wrong-field', 'library[2].class', 'rubber', (p) => set(p['library']![2], 'class', 'rubber')],
  ['wrong-field', 'library[0].pattern.kind', 'wavy', (p) => set(p['library']![0]!['pattern'], 'kind', 'wavy')],
  [
    'missing-field',
    'library[0].components[0].color.lab[2]',
    'missing',
    (p) => set(p['library']![0]!['components']![0]!['color'], 'lab', [1, 2]),
  ],
  [
    'out-of-range',
    'library[0].components[0].color.lab[0]',
    '0 to 100',
    (p) => set(p['library']![0]!['components']![0]!['color']!['lab'], 0, 120),
  ],
  ['out-of-range', 'library[1].gloss_gu', '0 to 200', (p) => set(p['library']![1], 'gloss_gu', -1)],
  ['out-of-range', 'settings[0].daylight.blind', '0 to 1', (p) => set(p['settings']![0]!['daylight'], 'blind', 2)],
  [
    'no-such-day',
    'settings[0].daylight.day',
    'month 2',
    (p) => Object.assign(p['settings']![0]!['daylight']!, { month: 2, day: 30 }),
  ],
  [
    'out-of-range',
    'settings[1].lamps.hood.level',
    '0 to 1',
    (p) => set(p['settings']![1]!['lamps']!['hood'], 'level', 2),
  ],
  [
    'unknown-light',
    'settings[1].lamps.ceiling.light',
    'LED-Z9',
    (p) => set(p['settings']![1]!['lamps']!['ceiling'], 'light', 'LED-Z9'),
  ],
  ['out-of-range', 'kitchen.room.width', '100', (p) => set(p['kitchen']!['room'], 'width', 100)],
  ['does-not-fit', 'kitchen.island.y', 'island', (p) => set(p['kitchen']!['island'], 'y', 3200)],
  ['duplicate-id', 'library[1].id', 'PT-01', (p) => set(p['library']![1], 'id', 'PT-01')],
  ['duplicate-id', 'options[1].id', 'copied-look', (p) => set(p['options']![1], 'id', 'copied-look')],
  ['shares-not-one', 'library[0].components', '0.900', (p) => set(p['library']![0]!['components']![0], 'share', 0.9)],
  ['newer-version', 'version', 'version 99', (p) => set(p, 'version', 99)],
  ['not-a-project', '', 'upstand-project', (p) => set(p, 'type', 'recipe')],
  ['empty-list', 'options', 'empty', (p) => set(p, 'options', [])],
])('refuses with %s at %s', (code, path, words, change) => {
  const text = changed(change);
  const parsed = parseProject(text, 'mine.json');
  if (parsed.ok) throw new Error('it was accepted');
  const all = [parsed.problem, ...(parsed.more ?? [])];
  const found = all.find((problem) => problem.code === code && problem.at?.path === path);
  expect(found, JSON.stringify(all.slice(0, 3))).toBeDefined();
  expect(found!.text).toContain(words);
  expect(found!.remedy).not.toBe('');
  expect(found!.at).toMatchObject({ file: 'mine.json' });
  expect(found!.at!.line).toBeGreaterThanOrEqual(1);
});

it('names the line of a wrong value', () => {
  const text = changed((p) => set(p['options']![1]!['scheme']!['floor'], 'finish', 'XX-99'));
  const parsed = parseProject(text);
  const line = text.slice(0, text.indexOf('XX-99')).split('\n').length;
  expect(parsed).toMatchObject({ ok: false, problem: { at: { line } } });
});

it('lists every wrong field, not only the first', () => {
  const parsed = parseProject(
    changed((p) => {
      set(p['library']![0], 'gloss_gu', 240);
      set(p['library']![5], 'gloss_gu', 240);
    }),
  );
  expect(!parsed.ok && [parsed.problem, ...(parsed.more ?? [])].map((problem) => problem.at?.path)).toEqual([
    'library[0].gloss_gu',
    'library[5].gloss_gu',
  ]);
});

it('scales shares that miss 1 by rounding, and leaves out unknown fields, and says both', () => {
  const parsed = parseProject(
    changed((p) => {
      set(p['library']![0]!['components']![0], 'share', 0.996);
      set(p['library']![1], 'glos', 3);
    }),
  );
  expect(parsed.ok && parsed.notices?.map((notice) => [notice.code, notice.at?.path])).toEqual([
    ['unknown-field', 'library[1].glos'],
    ['shares-scaled', 'library[0].components'],
  ]);
  expect(parsed.ok && parsed.value.library[0]!.components[0]!.share).toBe(1);
  expect(parsed.ok && parseProject(projectText(parsed.value))).toMatchObject({
    ok: true,
    value: parsed.ok && parsed.value,
  });
});
