// npm test: installs if needed; then lint, import rules, unused code, types and build at once; then unit tests, then browser tests.
// Closes with "N passed, N failed".
import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { ensureInstalled, root } from './ensure-installed.mjs';

ensureInstalled();
const { findBrowser } = await import('./find-browser.mjs');
const browser = await findBrowser();
const out = join(root, 'out');
mkdirSync(out, { recursive: true });

const SURROUNDINGS = {
  cwd: root,
  // A port of its own: whatever answers at the usual one may serve another build.
  env: {
    ...process.env,
    UPSTAND_BROWSER: browser,
    UPSTAND_TEST_PORT: process.env.UPSTAND_TEST_PORT ?? (await freePort()),
  },
  shell: process.platform === 'win32',
};
let passed = 0;
let failed = 0;

// Each of these works on one core, and none needs another.
const done = await Promise.all([
  check('lint', ['biome', 'check', '--error-on-warnings', '.']),
  check('import rules', ['depcruise', 'src']),
  check('unused code', ['knip', '--exclude', 'types', '--no-config-hints']),
  check('types', ['tsc', '--noEmit']),
  check('build', ['vite', 'build', '--logLevel', 'warn']),
]);
const isBuilt = done.at(-1);
suite(
  'unit tests',
  ['vitest', 'run', '--reporter=default', '--reporter=json', `--outputFile.json=${join(out, 'unit.json')}`],
  'unit.json',
  (report) => [
    report.numPassedTests,
    report.numFailedTests +
      (report.testResults ?? []).filter((file) => file.status === 'failed' && !file.assertionResults.length).length,
  ],
);
if (isBuilt) {
  suite('browser tests', ['playwright', 'test'], 'browser.json', (report) => [
    report.stats.expected + report.stats.flaky,
    report.stats.unexpected + report.errors.length,
  ]);
}

console.log(`\n${passed} passed, ${failed} failed`);
process.exit(failed ? 1 : 0);

/** A port nobody listens at. */
function freePort() {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.on('error', reject);
    server.listen(0, () => {
      const { port } = server.address();
      server.close(() => resolve(String(port)));
    });
  });
}

/** One command that counts as one check; says what it has to say once it has ended. */
async function check(name, args) {
  const said = [];
  const status = await new Promise((resolve) => {
    const child = spawn('npx', args, { ...SURROUNDINGS, stdio: ['ignore', 'pipe', 'pipe'] });
    child.stdout.on('data', (bytes) => said.push(bytes));
    child.stderr.on('data', (bytes) => said.push(bytes));
    child.on('error', () => resolve(1));
    child.on('close', resolve);
  });
  console.log(`\n== ${name}\n${Buffer.concat(said)}`);
  if (status !== 0) console.error(`${name}: failed`);
  if (status === 0) passed++;
  else failed++;
  return status === 0;
}

/** A test runner that writes a JSON report; a run without a readable report counts as one failure. */
function suite(name, args, file, count) {
  rmSync(join(out, file), { force: true });
  const status = execute(name, args);
  try {
    const [good, bad] = count(JSON.parse(readFileSync(join(out, file), 'utf8')));
    passed += good;
    failed += bad;
    if (good + bad === 0 || (status !== 0 && bad === 0)) failed++;
  } catch {
    failed++;
  }
}

function execute(name, args) {
  console.log(`\n== ${name}`);
  const { status } = spawnSync('npx', args, { ...SURROUNDINGS, stdio: 'inherit' });
  if (status !== 0) console.error(`${name}: failed`);
  return status ?? 1;
}
