import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { expect, type Page, test } from '@playwright/test';
import { choose, drawer, finishes, prepare, sample } from './page';
import { lettersOf, type PdfPage, readPdf } from './pdf';

// A consultant's whole job in one go: a new project, what stays, what is chosen beside it, samples, dates, offers, approvals, a frozen
// revision, and the set that is printed to be signed; what is printed is held against what the command line reads in the saved file.

test.describe.configure({ mode: 'serial' });

// By the clock of the machine, as somebody works by it.
const TODAY = new Date();
const START = new Date(TODAY.getTime() + 9 * 7 * 86_400_000).toISOString().slice(0, 10);
const dayOf = (dateStyle: 'long' | 'medium') => new Intl.DateTimeFormat('en-US', { dateStyle }).format(TODAY);
const command = promisify(execFile);

/** What is chosen beside the floor that stays, by surface. */
const CHOSEN = {
  counter: 'Yellowish white engineered stone, satin',
  'base-fronts': 'Grayish-green paint, satin',
  backsplash: 'Yellowish white tile, gloss glaze',
  wall: 'Faintly yellowish white paint, satin',
} as const;

/** Items that somebody named a price for. */
const OFFERED = ['FR1', 'CT1', 'BS1', 'WL1'];

let page: Page;
let pages: readonly PdfPage[];

test.beforeAll(async ({ browser }) => {
  const context = await browser.newContext({ reducedMotion: 'reduce', locale: 'en-US', acceptDownloads: true });
  page = await context.newPage();
  await prepare(page, { fine: true });
  await page.goto('./');
});
test.afterAll(() => page.context().close());

const button = (name: string) => page.getByRole('button', { name, exact: true });
const questions = () => page.getByRole('dialog', { name: /^New project/ });
const schedule = () => page.getByRole('dialog', { name: /^Schedule/ });
const field = (label: string) => schedule().getByLabel(label, { exact: true });
const line = (id: string) => schedule().locator('.item-line', { has: page.getByText(id, { exact: true }) });
const tags = () => schedule().locator('.item-line .tag').allTextContents();
const next = () => questions().getByRole('button', { name: 'Next', exact: true }).click();

test('a new project: what stays, how large the room is, and whose it is', async () => {
  await button('More').click();
  await button('New project').click();
  await questions().getByRole('checkbox', { name: 'Floor', exact: true }).check();
  await questions().getByRole('combobox', { name: 'Floor: finish' }).selectOption('WD-09');
  await next();
  await questions()
    .locator('label', { has: page.getByRole('radio', { name: 'L with island', exact: true }) })
    .click();
  await next();
  await next();
  await next();
  await questions().getByRole('textbox', { name: 'What shall it be called?' }).fill('Orchard house');
  await questions().getByRole('button', { name: 'Make the project' }).click();
  await expect(questions()).toHaveCount(0);
  await expect(page.locator('.bar-project-name')).toHaveText('Orchard house');
  await expect(sample(page, 'floor')).toContainText('fixed');
});

test('finishes are chosen in the order of deciding, and decided', async () => {
  for (const [surface, finish] of Object.entries(CHOSEN)) {
    await sample(page, surface).click();
    await drawer(page).getByRole('searchbox').fill(finish);
    await finishes(page).getByRole('option').filter({ hasText: finish }).click();
    await drawer(page).getByRole('combobox', { name: 'State' }).first().selectOption('decided');
    await page.keyboard.press('Escape');
    await expect(sample(page, surface)).toContainText('decided');
  }
});

test('samples come and are judged in two lights', async () => {
  await button('Schedule').click();
  await choose(page, 'Samples');
  for (const finish of Object.values(CHOSEN)) {
    const row = schedule().locator('.sample-row', { hasText: finish });
    await row.getByLabel('Sample', { exact: true }).selectOption('Received');
    for (const light of ['At the window', 'Evening lamps']) {
      await row.getByLabel('Light').fill(light);
      await row.getByLabel('Seen by').fill('Owner');
      await row.getByLabel('Seen by').press('Enter');
    }
    await row.getByLabel('Sample', { exact: true }).selectOption('Approved');
    await expect(row.getByRole('list', { name: 'Seen in' }).getByRole('listitem')).toHaveCount(2);
  }
});

test('the job has a name and a first day, and every item to order its day', async () => {
  await choose(page, 'Job and dates');
  await field('Prepared for').fill('The Orchard family');
  await field('Prepared by').fill('A. Consultant');
  await field('First day of installing').fill(START);
  await choose(page, 'Items');
  for (const id of await tags()) {
    if (id !== 'FL1') await expect(line(id)).toContainText('Order by ');
  }
});

test('every item is decided, offered and approved', async () => {
  for (const id of (await tags()).filter((one) => one !== 'FL1')) {
    await line(id).click();
    if (!id.endsWith('G')) await field('State').selectOption('Decided');
    if (OFFERED.includes(id)) {
      await field('Price').fill('100');
      await field('Price').press('Enter');
      await field('Currency').pressSequentially('EUR');
      await field('Price is for').selectOption('All of it');
    }
    await field('Approved by').fill('Owner');
    await expect(line(id)).toContainText('Decided');
    await line(id).click();
  }
  await expect(schedule()).toContainText('Prices known so far: €400.00 (4 of 10 items have a price)');
});

test('it is frozen to be signed', async () => {
  await schedule().getByRole('button', { name: 'Freeze a revision…' }).click();
  await page.keyboard.type('To sign');
  await page.keyboard.press('Enter');
  await expect(schedule().getByRole('status')).toHaveText('As frozen in R1.');
});

test('the set that is printed is that revision, with a line to sign, and no draft', async () => {
  await schedule().getByRole('button', { name: 'Handover set…' }).click();
  const set = page.getByRole('dialog', { name: 'Handover set' });
  await expect(set).toHaveAttribute('aria-busy', 'false', { timeout: 200_000 });
  await expect(set.getByRole('img', { name: /^The kitchen as / })).toHaveCount(3);
  await expect(set.getByText('A draft: freeze it to be signed')).toHaveCount(0);
  pages = await readPdf(await page.pdf({ preferCSSPageSize: true }));
  const [cover] = pages;
  for (const text of ['Orchard house', 'R1, To sign', dayOf('long'), 'The Orchard family', 'A. Consultant']) {
    expect(cover!.letters).toContain(lettersOf(text));
  }
  const sign = pages.find(({ letters }) => letters.startsWith('Tosign'))!;
  expect(sign.letters).toContain(lettersOf('R1, To sign'));
  expect(sign.letters).toContain('Signature');
  for (const { letters } of pages) expect(letters).not.toMatch(/draft/i);
  await page.keyboard.press('Escape');
});

test('what is printed is what the command line reads in the saved file, item by item', async () => {
  const saving = page.waitForEvent('download');
  await button('Save').click();
  const { stdout } = await command(
    process.execPath,
    ['--import', 'tsx', 'src/cli/main.ts', 'schedule', await (await saving).path(), '--json'],
    { maxBuffer: 1 << 26 },
  );
  const { rows } = JSON.parse(stdout) as { readonly rows: readonly Row[] };
  const printed = pages
    .filter(({ letters }) => letters.startsWith('Finishschedule'))
    .map(({ letters }) => letters)
    .join('');
  expect(rows.map(({ id }) => id)).toContain('CT1');
  const starts = rows.map(({ id, element }) => printed.indexOf(`${id}${lettersOf(element)}`));
  for (const [i, row] of rows.entries()) {
    expect(starts[i], row.id).toBeGreaterThan(starts[i - 1] ?? -1);
    const words = printed.slice(starts[i], starts[i + 1]);
    const says = (text: string) => expect(words, row.id).toContain(lettersOf(text));
    if (row.state === 'fixed') {
      says('Stays');
      continue;
    }
    const { packs, pack, quantity, measure } = row.quantity!.order;
    says(
      packs !== null && pack?.container
        ? `${packs} × ${pack.container} of ${pack.quantity}`
        : `${packs ?? quantity} ${measure}`,
    );
    says(
      `Order by ${new Intl.DateTimeFormat('en-US', { dateStyle: 'medium', timeZone: 'UTC' }).format(new Date(row.order_by!))}`,
    );
    says(OFFERED.includes(row.id) ? 'Total €100.00' : 'Cost not known');
    says('Since R1');
    says(`Approved: Owner, ${dayOf('medium')}`);
  }
});

interface Row {
  readonly id: string;
  readonly element: string;
  readonly state: string;
  readonly order_by: string | null;
  readonly quantity: {
    readonly order: {
      readonly packs: number | null;
      readonly pack: { readonly container: string | null; readonly quantity: number } | null;
      readonly quantity: number;
      readonly measure: string;
    };
  } | null;
}
