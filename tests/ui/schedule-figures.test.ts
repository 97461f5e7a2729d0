import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { afterEach, describe, expect, it } from 'vitest';
import type { ScheduleRow } from '../../src/kitchen/schedule/types';
import type { Project } from '../../src/model/project';
import { AssumedForm } from '../../src/ui/schedule/AssumedForm';
import { ItemList } from '../../src/ui/schedule/ItemList';
import { ItemRow } from '../../src/ui/schedule/ItemRow';
import { JobForm } from '../../src/ui/schedule/JobForm';
import type { ScheduleDoors } from '../../src/ui/schedule/schedule-props';
import { setManner } from '../../src/ui/words/spoken';
import { demoAfter, finishOf, OPTION, rowIn, scheduled } from '../schedule/schedule';

afterEach(() => setManner({ words: 'us', unit: 'mm' }));

const JOB = { starts_on: '2026-06-01' };
const priced = (finish: string, amount: number, currency: string) => {
  const { supply } = finishOf(demoAfter(), finish);
  return {
    kind: 'edit-finish',
    finish,
    changes: { supply: { ...supply, price: { amount, currency, per: 'pack' as const } } },
  } as const;
};
/** The demo with its floor to be ordered as well, a day to begin, and two prices. */
const project = demoAfter(
  { kind: 'set-job', job: JOB },
  { kind: 'set-state', option: OPTION, surface: 'floor', state: 'decided' },
  priced('TL-01', 30.5, 'EUR'),
  priced('PT-02', 42, 'USD'),
);
const schedule = scheduled(project, '2026-05-04');

function doorsOf(project: Project): ScheduleDoors {
  const option = project.options.find(({ id }) => id === OPTION)!;
  const nothing = () => {};
  return {
    option: option.name,
    kitchen: project.kitchen,
    schedule,
    library: new Map(project.library.map((finish) => [finish.id, finish])),
    revisions: [],
    present: project,
    past: null,
    isFrozen: false,
    today: '2026-05-04',
    records: option.items ?? [],
    extras: option.extras ?? [],
    samples: project.samples ?? [],
    job: project.job ?? {},
    days: schedule.days,
    assumptions: project.quantities ?? {},
    onFreeze: nothing,
    onLookAt: nothing,
    paintOf: () => null,
    onRecord: nothing,
    onState: nothing,
    onExtra: nothing,
    onRemoveExtra: nothing,
    onSample: nothing,
    onRemoveSample: nothing,
    onJob: nothing,
    onAssumptions: nothing,
  };
}

const doors = doorsOf(project);

/** What one reads, without marks. */
const plain = (markup: string): string =>
  markup
    .replace(/<(?:option|datalist)[^>]*>.*?<\/(?:option|datalist)>/g, ' ')
    .replace(/<[^>]+>/g, ' ')
    .replaceAll('&#x27;', "'")
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&')
    .replace(/\s+/g, ' ');

const opened = (row: ScheduleRow): string =>
  plain(renderToStaticMarkup(createElement(ItemRow, { row, doors, isOpen: true, onOpen: () => {} })));

/** Square feet of a square meter: 1 ft is 0.3048 m exactly (NIST SP 811, appendix B). */
const FT2_PER_M2 = 1 / 0.3048 ** 2;
const MM_PER_INCH = 25.4;
/** Exactly, by the same appendix: 231 cubic inches, and the pound avoirdupois. */
const L_PER_GALLON = 3.785411784;
const KG_PER_POUND = 0.45359237;

describe('an item shows the figures of the schedule', () => {
  it('packs as they are sold, what is needed, and its area', () => {
    const row = rowIn(schedule, 'BS1');
    const { order, area_m2 } = row.quantity!;
    const text = opened(row);
    expect(text).toContain(`${order.packs} × box of 1 m²`);
    expect(text).toContain(`Net ${area_m2.toFixed(2)} m²`);
    setManner({ words: 'us', unit: 'in' });
    expect(opened(row)).toContain(`${order.packs} × box of 1 m²`);
    expect(opened(row)).toContain(`Net ${(area_m2 * FT2_PER_M2).toFixed(1)} sq ft`);
  });

  it('paint in liters or US gallons, grout in kilograms or pounds', () => {
    const [paint, grout] = ['FR1', 'BS1G'].map((id) => rowIn(schedule, id)) as [ScheduleRow, ScheduleRow];
    expect(opened(paint)).toContain(`Net ${Number(paint.quantity!.net.toFixed(2))} L (`);
    expect(opened(grout)).toContain(`Net ${Number(grout.quantity!.net.toFixed(2))} kg (`);
    setManner({ words: 'us', unit: 'in' });
    expect(opened(paint)).toContain(`Net ${Number((paint.quantity!.net / L_PER_GALLON).toFixed(2))} gal (`);
    expect(opened(grout)).toContain(`Net ${Number((grout.quantity!.net / KG_PER_POUND).toFixed(2))} lb (`);
  });

  it('color, LRV, sheen, supplier and order code', () => {
    const row = rowIn(schedule, 'CT1');
    const [l, a, b] = row.colors[0]!.lab_d65.map((one) => one.toFixed(1));
    const text = opened(row);
    expect(text).toContain(`L* ${l}, a* ${a}, b* ${b} (D65, 2°)`);
    expect(text).toContain(`LRV ${row.lrv!.toFixed(0)}`);
    expect(text).toContain(`${row.gloss_gu} GU`);
    expect(text).toContain('Demo supplier C, DEMO-EN-01');
  });

  it('the price of a pack and of all of them; sums apart by currency', () => {
    const row = rowIn(schedule, 'BS1');
    const total = 30.5 * row.quantity!.order.packs!;
    expect(opened(row)).toContain('€30.50');
    expect(opened(row)).toContain(`Total €${total.toFixed(2)}`);
    const paint = 42 * rowIn(schedule, 'WL1').quantity!.order.packs!;
    const list = plain(renderToStaticMarkup(createElement(ItemList, doors)));
    expect(list).toContain(`€${total.toFixed(2)}`);
    expect(list).toContain(`$${paint.toFixed(2)}`);
    expect(list).toContain(`2 of ${schedule.rows.length} items have a price`);
  });

  it('its day to order, as one writes days there', () => {
    const row = rowIn(schedule, 'BS1');
    const [year, , day] = row.order_by!.split('-').map(Number);
    expect(opened(row)).toMatch(new RegExp(`Order by \\w{3} ${day}, ${year}`));
    setManner({ words: 'uk', unit: 'mm' });
    expect(opened(row)).toMatch(new RegExp(`Order by ${day} \\w{3} ${year}`));
  });

  it('every piece that is cut from slabs in its size, in inches where those are chosen', () => {
    const row = rowIn(schedule, 'CT1');
    const parts = row.quantity!.slabs!.slabs.flatMap((slab) => slab.parts);
    const metric = opened(row);
    for (const { from_mm, to_mm, width_mm } of parts) {
      expect(metric).toContain(`${Math.round(to_mm - from_mm)} × ${Math.round(width_mm)} mm`);
    }
    expect(metric).toContain(`Slab ${row.quantity!.slabs!.slabs.length} of ${row.quantity!.slabs!.slabs.length}`);
    setManner({ words: 'us', unit: 'in' });
    const shown = [...opened(row).matchAll(/(\d[^×;:]*?) × (\d[^×;:]*?) in(?: \(seam\))?[;.]/g)].map(([, a, b]) => [
      inches(a!),
      inches(b!),
    ]);
    for (const { from_mm, to_mm, width_mm } of parts) {
      const size = [(to_mm - from_mm) / MM_PER_INCH, width_mm / MM_PER_INCH];
      // Whole millimeters, then sixteenths of an inch.
      const isShown = shown.some((one) =>
        one.every((value, i) => Math.abs(value - size[i]!) <= 1 / 32 + 0.5 / MM_PER_INCH + 1e-9),
      );
      expect(isShown, `${size.join(' × ')} among ${JSON.stringify(shown)}`).toBe(true);
    }
  });
});

it('fronts are listed in their sizes, each with how many there are', () => {
  const row = rowIn(schedule, 'FR1');
  const text = opened(row);
  const { parts } = row.quantity!;
  expect(parts.length).toBeGreaterThan(5);
  for (const [kind, name] of [
    ['door', 'doors'],
    ['drawer', 'drawer fronts'],
  ] as const) {
    const own = parts.filter((part) => part.kind === kind);
    const [, line] = new RegExp(`${sum(own)} ${name}: ([\\d×., of]+) mm`).exec(text)!;
    for (const { length_mm, width_mm } of own) {
      const alike = own.filter((one) => one.length_mm === length_mm && one.width_mm === width_mm);
      const said = new RegExp(`(?:^|, )${sum(alike)} of ${size(length_mm)} × ${size(width_mm)}(?:,|$)`, 'g');
      expect(line!.match(said), `${line}`).toHaveLength(1);
    }
  }
});

const sum = (parts: readonly { readonly count: number }[]): number => parts.reduce((all, { count }) => all + count, 0);

/** Tenths of a millimeter. */
const size = (mm: number): string => String(Math.round(10 * mm) / 10).replace('.', '\\.');

/** "70 7/8" or "70⅞" or "70.9". */
function inches(text: string): number {
  const [, whole = '0', over, under] =
    /^(\d+(?:\.\d+)?)?(?:[ -]?(\d+)[/⁄](\d+))?$/.exec(text.normalize('NFKD').trim()) ?? [];
  return Number(whole) + (over === undefined ? 0 : Number(over) / Number(under));
}

/** Words of metric units behind a number; what is sold by them stays so. */
const METRIC = /\d ?(?:mm|cm|m²|m|L|kg)(?![\w²])|per (?:liter|L|kg|m²)\b/g;

it('in US units no row says anything in metric ones but what it is sold in', () => {
  setManner({ words: 'us', unit: 'in' });
  for (const row of schedule.rows) {
    const { pack } = row.quantity?.order ?? {};
    const found = (opened(row).match(METRIC) ?? []).filter((one) => !pack || !one.endsWith(UNIT[pack.measure] ?? '?'));
    expect(found, `${row.id}: ${opened(row)}`).toEqual([]);
  }
});

const UNIT: { readonly [measure: string]: string } = { m2: 'm²', L: 'L', kg: 'kg', m: 'm' };

it('the job shows when each stage begins', () => {
  const text = plain(renderToStaticMarkup(createElement(JobForm, doors)));
  const days = Object.values(doors.days!).map((day) =>
    new Date(`${day}T00:00:00Z`).toLocaleDateString('en-US', { dateStyle: 'medium', timeZone: 'UTC' }),
  );
  expect([...text.matchAll(/begins (\w{3} \d+, \d{4})/g)].map(([, day]) => day)).toEqual(days);
});

/** The form of the job for a project, as one reads it. */
const jobOf = (of: Project): string => {
  const schedule = scheduled(of, '2026-05-04');
  return plain(renderToStaticMarkup(createElement(JobForm, { ...doorsOf(of), schedule, days: schedule.days })));
};

it('what stays takes no days, whether a first day is set or not', () => {
  for (const job of [JOB, {}]) {
    const of = demoAfter({ kind: 'set-job', job });
    const { floor, cabinets } = fieldsOf(of);
    expect(floor).toMatch(/placeholder="0"/);
    expect(plain(floor!)).toContain('what is there stays: no days');
    expect(cabinets).toMatch(/placeholder="4"/);
    const given = fieldsOf(demoAfter({ kind: 'set-job', job: { ...job, stage_days: { floor: 2 } } }));
    expect(given.floor).not.toContain('stays');
  }
});

/** The fields of the first two stages, in markup. */
function fieldsOf(of: Project): { readonly floor: string; readonly cabinets: string } {
  const schedule = scheduled(of, '2026-05-04');
  const form = createElement(JobForm, { ...doorsOf(of), job: of.job ?? {}, schedule, days: schedule.days });
  const [, floor, cabinets] = renderToStaticMarkup(form).split('job-stages')[1]!.split('<li>');
  return { floor: floor!, cabinets: cabinets! };
}

describe('that the counter comes by a lead time is said', () => {
  const FROM = 'weeks from the template: the longest lead time';

  it('where one decided it', () => {
    expect(jobOf(project)).toContain(`The counter comes 3 ${FROM} of what is cut to it.`);
  });

  it('neither where somebody set the days, nor where all that is cut stays, nor where no lead time is known', () => {
    const days = demoAfter({ kind: 'set-job', job: { ...JOB, stage_days: { template: 21 } } });
    expect(jobOf(days)).not.toContain(FROM);
    const stays = demoAfter(
      { kind: 'set-job', job: JOB },
      ...(['counter', 'island-counter', 'upstand'] as const).map(
        (surface) => ({ kind: 'set-state', option: OPTION, surface, state: 'fixed' }) as const,
      ),
    );
    expect(jobOf(stays)).not.toContain(FROM);
    const { lead_time_weeks: _, ...supply } = finishOf(demoAfter(), rowIn(schedule, 'CT1').finish!).supply!;
    const unknown = demoAfter(
      { kind: 'set-job', job: JOB },
      { kind: 'edit-finish', finish: rowIn(schedule, 'CT1').finish!, changes: { supply } },
    );
    expect(jobOf(unknown)).not.toContain(FROM);
    expect(jobOf(unknown)).toContain('begins');
  });
});

it('the day an item is needed by the job stands beside the field of its own day, not in it', () => {
  const row = rowIn(schedule, 'BS1');
  const markup = renderToStaticMarkup(createElement(ItemRow, { row, doors, isOpen: true, onOpen: () => {} }));
  expect(row.needed_on).not.toBeNull();
  expect(markup).not.toContain(`value="${row.needed_on}"`);
  expect(plain(markup)).toMatch(/Needed by the dates of the job: \w{3} \d+, 2026/);
});

it('half a week of lead time is hinted at as a number', () => {
  const row = { ...rowIn(schedule, 'BS1'), lead_time_weeks: 0.5 };
  const markup = renderToStaticMarkup(createElement(ItemRow, { row, doors, isOpen: true, onOpen: () => {} }));
  expect(markup).toContain('placeholder="0.5"');
});

it('what quantities rest on has its usual values in the units chosen', () => {
  const hints = () =>
    [...renderToStaticMarkup(createElement(AssumedForm, doors)).matchAll(/placeholder="([^"]*)"/g)].map(
      ([, hint]) => hint!,
    );
  expect(hints()).toContain('usual 10');
  expect(hints()).toContain('usual 600');
  setManner({ words: 'us', unit: 'in' });
  // 10 m2/L in square feet a gallon; 0.5 m2.
  expect(hints()).toContain(`usual ${(10 * FT2_PER_M2 * L_PER_GALLON).toFixed(0)}`);
  expect(hints()).toContain(`usual ${(0.5 * FT2_PER_M2).toFixed(1)}`);
});

it('what changed since it was approved can be approved anew, by one who approved it before', () => {
  const approved = { by: 'Ann', on: '2026-05-04', of: 'before' };
  const row: ScheduleRow = { ...rowIn(schedule, 'BS1'), approved: null };
  const records = [{ item: 'BS1', finish: 'TL-01', approved }];
  const markup = (of: ScheduleRow) =>
    renderToStaticMarkup(
      createElement(ItemRow, { row: of, doors: { ...doors, records }, isOpen: true, onOpen: () => {} }),
    );
  expect(markup(row)).toContain('Ann approves it as it is now');
  expect(markup({ ...row, approved })).not.toContain('approves it as it is now');
});
