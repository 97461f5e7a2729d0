import { expect, it } from 'vitest';
import { libraryText } from '../../src/io/library-file';
import { newLibrary } from '../../src/model/library';
import type { Finish } from '../../src/model/project';
import { createImportDesk } from '../../src/workers/import-desk';
import type { FromImport } from '../../src/workers/import-messages';
import { demoProject } from '../io/demo';

const HEAD = 'code,name,lab_l,lab_a,lab_b,illuminant,observer_deg,class,gloss_60';
const table = (rows: number) =>
  [HEAD, ...Array.from({ length: rows }, (_, i) => `A-${i},Name ${i},${20 + (i % 70)},1,2,D65,10,paint,10`)].join('\n');

async function deskOf(text: string, name = 'range.csv') {
  const said: FromImport[] = [];
  const desk = createImportDesk((message) => said.push(message));
  await desk({ kind: 'read', file: new File([text], name) });
  return { said, desk };
}

const partsOf = (said: readonly FromImport[], run: number) =>
  said.filter((one) => one.kind === 'part').filter((one) => one.run === run);

it('reads a table, tells its head, and hands its finishes over in parts', async () => {
  const { said, desk } = await deskOf(table(1200));
  const head = said.find((one) => one.kind === 'sheet')?.head;
  expect(head).toMatchObject({ format: 'csv', file: 'range.csv', rows: 1200 });
  expect(head?.columns[1]).toMatchObject({ heading: 'name', field: 'name', example: 'Name 0' });
  await desk({ kind: 'make', run: 1, choices: {} });
  const parts = partsOf(said, 1);
  expect(parts.length).toBe(3);
  expect(parts.flatMap(({ part }) => part.kept).length).toBe(1200);
  expect(said.at(-1)).toMatchObject({ kind: 'made', run: 1 });
});

it('newer choices end what is made of older ones', async () => {
  const { said, desk } = await deskOf(table(6000));
  const first = desk({ kind: 'make', run: 1, choices: {} });
  await Promise.all([first, desk({ kind: 'make', run: 2, choices: { provenance: 'measured' } })]);
  expect(partsOf(said, 1)).toEqual([]);
  expect(partsOf(said, 2).flatMap(({ part }) => part.kept).length).toBe(6000);
});

it('opens a library of its own, and says of what is none why', async () => {
  const library = { type: 'upstand-library', version: 2, id: 'l', name: 'Mine', note: '', finishes: [] };
  const own = await deskOf(`\uFEFF ${JSON.stringify(library)}`, 'mine.library.json');
  expect(own.said.at(-1)).toMatchObject({ kind: 'library', library: { name: 'Mine' } });
  for (const [text, name] of [
    [JSON.stringify({ ...library, version: 99 }), 'newer.json'],
    ['{"type":"something"}', 'other.json'],
    ['\u0000\u0001\u0002\u0000', 'noise.bin'],
  ] as const) {
    const { said } = await deskOf(text, name);
    expect(said.at(-1)).toMatchObject({ kind: 'failed' });
  }
});

it('refuses finishes of a library with a color that no surface can have, one by one', async () => {
  const [first, second, third] = demoProject().library;
  // CIELAB 50, 150, -150 under D65: outside the object-color solid (MacAdam 1935).
  const color = { kind: 'lab', lab: [50, 150, -150], illuminant: 'D65', observer_deg: 2 } as const;
  const wrong: Finish = { ...second!, components: [{ role: 'base', share: 1, color }], pattern: { kind: 'plain' } };
  const library = newLibrary({ id: 'l', name: 'Mine', note: '', finishes: [first!, wrong, third!] });
  const { said } = await deskOf(libraryText(library), 'mine.library.json');
  const last = said.at(-1)!;
  if (last.kind !== 'library') throw new Error(last.kind);
  expect(last.library.finishes).toEqual([first, third]);
  expect(last.refused).toMatchObject([
    { row: 2, code: wrong.id, name: wrong.label, problem: { code: 'outside-object-color-solid' } },
  ]);
});

it('tells all that is wrong with a library', async () => {
  const library = { type: 'upstand-library', version: 2, id: 'l', name: 'Mine', note: 1, finishes: [{}, 0] };
  const { said } = await deskOf(JSON.stringify(library), 'mine.library.json');
  const last = said.at(-1)!;
  expect(last.kind === 'failed' && [last.problem, ...last.more].map(({ at }) => at?.path)).toEqual(
    expect.arrayContaining(['note', 'finishes[0].id', 'finishes[1]']),
  );
});
