import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { afterEach, describe, expect, it } from 'vitest';
import { lengthText } from '../../src/model/length-text';
import { BlockView } from '../../src/ui/handover/BlockView';
import { datesPart } from '../../src/ui/handover/dates-part';
import { deliveryPart } from '../../src/ui/handover/delivery-part';
import { drawingsPart } from '../../src/ui/handover/drawings-part';
import { quantitiesPart } from '../../src/ui/handover/quantities-part';
import { schedulePart } from '../../src/ui/handover/schedule-part';
import { setManner } from '../../src/ui/words/spoken';
import { demoAfter, finishOf, OPTION, scheduled } from '../schedule/schedule';

afterEach(() => setManner({ words: 'us', unit: 'mm' }));

/** The demo with two things besides: one of so many cans, one of which nobody said how many; and two prices. */
const PRIMER = 'Primer, 5 L can';
const project = demoAfter(
  { kind: 'set-job', job: { starts_on: '2026-06-01' } },
  {
    kind: 'set-extra',
    option: OPTION,
    extra: {
      id: 'X1',
      what: PRIMER,
      where: '300 mm behind the gray door',
      quantity: 2,
      unit: 'cans',
      price: { amount: 24.5, currency: 'USD' },
      lead_time_weeks: 1,
      stage: 'paint',
    },
  },
  { kind: 'set-extra', option: OPTION, extra: { id: 'X2', what: 'Clips', stage: 'fittings' } },
  {
    kind: 'edit-finish',
    finish: 'TL-01',
    changes: {
      supply: { ...finishOf(demoAfter(), 'TL-01').supply, price: { amount: 60, currency: 'EUR', per: 'm2' } },
    },
  },
);
const schedule = scheduled(project, '2026-05-04');

/** What one reads on a printed part, cell by cell of the row that begins with a tag. */
function cellsOf(id: keyof typeof PARTS, tag: string): readonly string[] {
  const row = printed(id)
    .split('<tr')
    .find((one) => new RegExp(`<th scope="row"[^>]*>(?:<s>)?${tag}<`).test(one));
  return [...(row ?? '').matchAll(/<t[hd][^>]*>(.*?)<\/t[hd]>/g)].map(([, cell]) => plain(cell!));
}

const PARTS = {
  schedule: () => schedulePart(schedule, project.library),
  drawings: () => drawingsPart(project.kitchen, schedule),
  dates: () => datesPart(schedule, null),
  quantities: () => quantitiesPart(schedule),
  delivery: () => deliveryPart(schedule),
};

const printed = (id: keyof typeof PARTS): string =>
  PARTS[id]()
    .blocks.map((block) => renderToStaticMarkup(createElement(BlockView, { block })))
    .join('');

const plain = (markup: string): string =>
  markup
    .replace(/<[^>]+>/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();

describe('what no surface shows, on paper', () => {
  it('has its amount in the schedule, in the order of ordering and in the delivery check', () => {
    expect(cellsOf('schedule', 'X1')[2]).toBe('2 cans');
    expect(plain(printed('dates'))).toContain(`X1 ${PRIMER} 2 cans`);
    expect(cellsOf('delivery', 'X1').slice(0, 3)).toEqual(['X1', `${PRIMER} 300 mm behind the gray door`, '2 cans']);
  });

  it('has none where nobody said one, and is to be checked all the same', () => {
    expect(cellsOf('schedule', 'X2')[2]).toBe('');
    expect(cellsOf('delivery', 'X2').slice(0, 3)).toEqual(['X2', 'Clips', '']);
  });

  it.each([
    ['us', 'in'],
    ['uk', 'in'],
    ['uk', 'mm'],
  ] as const)('stays in the words of whoever wrote it, in %s words and %s', (words, unit) => {
    setManner({ words, unit });
    for (const id of ['schedule', 'dates', 'delivery', 'drawings'] as const)
      expect(plain(printed(id))).toContain(PRIMER);
    for (const id of ['schedule', 'delivery'] as const)
      expect(plain(printed(id))).toContain('300 mm behind the gray door');
  });
});

it('a price says what it is for, and one of a piece is told alone', () => {
  expect(cellsOf('schedule', 'BS1')[3]).toContain('Price €60.00 / m²');
  expect(cellsOf('schedule', 'X1')[3]).toContain('Price $24.50 Total $49.00');
  expect(plain(printed('schedule'))).not.toMatch(/\d each\b/);
});

it('what is made or bought by the piece has the sizes it has, and no 0 of what says nothing', () => {
  const parts = schedule.rows.flatMap(({ quantity }) => (quantity && !quantity.slabs ? quantity.parts : []));
  expect(parts.some(({ length_mm, width_mm }) => length_mm > 0 && width_mm === 0)).toBe(true);
  const text = plain(printed('quantities'));
  for (const { length_mm, width_mm } of parts) {
    const [length, width] = [length_mm, width_mm].map((mm) => lengthText(mm, 'mm'));
    if (length_mm > 0)
      expect(text).toMatch(new RegExp(`(?: of |> ?| )${width_mm > 0 ? `${length} × ${width}` : length}(?:,| mm)`));
  }
  expect(text).not.toMatch(/\b0 ×|× 0\b|\b0 mm/);
});
