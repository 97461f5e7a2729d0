import { expect, it } from 'vitest';
import { run } from '../../src/cli/run';
import { shortlistText } from '../../src/cli/text/shortlist-text';
import { DEMO_PATH, demoProject, demoText } from '../io/demo';
import { fileWith } from './upstand';

const extra = JSON.stringify({
  ...JSON.parse(demoText()),
  library: [
    ...JSON.parse(demoText()).library,
    {
      ...JSON.parse(demoText()).library.find(({ id }: { id: string }) => id === 'TL-02'),
      id: 'TL-90',
      label: 'Another yellowish white tile, TL-90',
    },
  ],
});
const other = fileWith('other-library.json', extra);
const clashing = fileWith('clashing.json', demoText().replaceAll('"lab": [88, 0.6, 12]', '"lab": [88, 0.6, 3]'));

const ran = run([
  ...['shortlist', DEMO_PATH, '--surface', 'backsplash', '--option', 'our-floor', '--setting', 'evening'],
  ...['--library', other, '--class', 'glazed', '--class', 'metal', '--wish', 'sheen:gloss', '--why', 'TL-90', '--json'],
]);
const list = JSON.parse(ran.out);
type Row = { finish: string; rank: number; reasons: string[]; basis: string; code: string; reason: string };

it('accepts or rejects every finish of both libraries that is not hidden, with the reason', () => {
  expect([ran.exit, ran.messages]).toEqual([0, '']);
  expect(list).toMatchObject({ project: 'terrace', option: 'our-floor', surface: 'backsplash', settings: ['evening'] });
  const ids = [...list.accepted, ...list.rejected].map(({ finish }: Row) => finish).sort();
  const wanted = demoProject().library.filter(({ class: kind }) => kind === 'glazed' || kind === 'metal');
  expect(ids).toEqual([...wanted.map(({ id }) => id), 'TL-90'].sort());
  expect(list.hidden).toBe(demoProject().library.length - wanted.length);
  for (const { rank, reasons, basis } of list.accepted as Row[]) {
    expect([rank, basis]).toEqual([expect.any(Number), 'installed']);
    expect(reasons.length).toBeGreaterThan(2);
  }
  expect(list.rejected).toContainEqual(
    expect.objectContaining({
      finish: 'TL-90',
      code: 'too-yellow',
      reason: 'The backsplash looks yellow beside the counters.',
    }),
  );
  expect(list.why.points[0]).toMatchObject({
    kind: 'rejects',
    text: 'The backsplash looks yellow beside the counters.',
  });
});

it('says in words what the JSON says in fields', () => {
  const words = shortlistText(list, demoProject().settings.slice(0, 1)).replace(/\s+/g, ' ');
  for (const { finish, reasons } of list.accepted as Row[]) {
    expect(words).toContain(finish);
    for (const reason of reasons) expect(words).toContain(reason);
  }
  for (const { reason } of list.rejected as Row[]) expect(words).toContain(reason);
  expect(words).toContain(list.held_words);
  expect(words).toContain(list.why.points[0].why);
});

it.each<[string, readonly string[], RegExp]>([
  ['no surface', [DEMO_PATH], /--surface is missing.*Usage: upstand shortlist PROJECT --surface ID/],
  ['an unknown surface', [DEMO_PATH, '--surface', 'roof'], /surface "roof".*counter, island-counter/],
  ['no project', ['--surface', 'wall'], /project file is missing/],
  ['a missing file', ['nowhere.json', '--surface', 'wall'], /^nowhere\.json: /],
  ['an unknown option', [DEMO_PATH, '--surface', 'wall', '--option', 'x'], /option "x".*our-floor/],
  ['an unknown setting', [DEMO_PATH, '--surface', 'wall', '--setting', 'x'], /setting "x".*evening/],
  ['an unknown finish', [DEMO_PATH, '--surface', 'wall', '--why', 'XX-1'], /terrace.*"XX-1".*PT-01/],
  ['a hidden finish', [DEMO_PATH, '--surface', 'wall', '--class', 'wood', '--why', 'PT-01'], /"PT-01".*WD-01/],
  ['an unknown class', [DEMO_PATH, '--surface', 'wall', '--class', 'marble'], /--class "marble".*stone/],
  ['a wish without a kind', [DEMO_PATH, '--surface', 'wall', '--wish', 'warm'], /--wish "warm".*lrv:60-80/],
  ['a wish for a feeling', [DEMO_PATH, '--surface', 'wall', '--wish', 'warmth:high'], /"warmth:high".*class:stone/],
  ['a range turned round', [DEMO_PATH, '--surface', 'wall', '--wish', 'lrv:80-60'], /"lrv:80-60".*smaller one first/],
  ['an unknown sheen', [DEMO_PATH, '--surface', 'wall', '--wish', 'sheen:silky'], /"sheen:silky".*eggshell/],
  ['a price that is none', [DEMO_PATH, '--surface', 'wall', '--wish', 'price:cheap'], /"price:cheap".*\$\$/],
  [
    'a pattern that is none',
    [DEMO_PATH, '--surface', 'wall', '--wish', 'pattern:loud'],
    /"pattern:loud".*quiet or lively/,
  ],
  ['a wish beside nothing', [DEMO_PATH, '--surface', 'wall', '--wish', 'no-lighter-than:roof'], /roof".*counter/],
  ['a missing library', [DEMO_PATH, '--surface', 'wall', '--library', 'none.json'], /^none\.json: /],
  [
    'a library with other finishes of the same id',
    [DEMO_PATH, '--surface', 'wall', '--library', clashing],
    /clashing\.json: library\[\d+\]\.id: TL-02 \(.*\) is another finish.*another id/,
  ],
])('ends with 2 and says what to do for %s', (_, args, message) => {
  const { exit, out, messages } = run(['shortlist', ...args]);
  expect([exit, out]).toEqual([2, '']);
  expect(messages).toMatch(message);
});
