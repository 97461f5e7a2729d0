import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { expect, test } from '@playwright/test';
import { choose, findings, openPage, settled } from './page';

// The browser and Node carry their own versions of the same script engine, whose sines and powers may differ in the last bit.
const LAST_DIGITS = 1e-9;

const run = promisify(execFile);

/** What the command line says of an option of the demo project by day. */
async function assessByCommand(option: string): Promise<unknown> {
  const { stdout } = await run(
    process.execPath,
    ['--import', 'tsx', 'src/cli/main.ts', 'assess', 'demo-data/terrace.project.json', '--option', option].concat([
      '--setting',
      'day',
      '--json',
    ]),
    { maxBuffer: 1 << 26 },
  );
  return JSON.parse(stdout);
}

test('the page and the command line say the same, number for number', async ({ browser }) => {
  const page = await openPage(browser, { permissions: ['clipboard-read', 'clipboard-write'] }, { help: true });
  await choose(page, 'Our floor');
  await settled(page);
  await page.evaluate(() => navigator.clipboard.writeText(''));
  // Ready once what would help is found, too.
  await findings(page).getByRole('button', { name: 'Copy findings' }).click({ timeout: 180_000 });
  await expect(findings(page).getByText('Copied as JSON')).toBeVisible();
  const onPage = JSON.parse(await page.evaluate(() => navigator.clipboard.readText()));
  expect(onPage.status).toBe('done');
  expect(onPage.option).toBe('our-floor');
  expect(onPage.surfaces.length).toBeGreaterThan(10);
  expect(onPage.repairs.length).toBeGreaterThan(0);
  expect(differences(onPage, await assessByCommand('our-floor'))).toEqual([]);
  await page.context().close();
});

/** Where two JSON values differ: any text, order, length or key; numbers by more than the last digits. */
function differences(a: unknown, b: unknown, path = ''): string[] {
  if (typeof a === 'number' && typeof b === 'number') {
    return Math.abs(a - b) <= LAST_DIGITS * Math.max(1, Math.abs(a)) ? [] : [`${path}: ${a}, ${b}`];
  }
  if (typeof a === 'object' && typeof b === 'object' && a && b && Array.isArray(a) === Array.isArray(b)) {
    const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
    const at = (value: object, key: string) => (value as Record<string, unknown>)[key];
    return [...keys].flatMap((key) => differences(at(a, key), at(b, key), `${path}/${key}`));
  }
  return a === b ? [] : [`${path}: ${a}, ${b}`];
}
