// npm test: installs if needed, then lint, import rules, types, unit tests, build, browser tests. Closes with "N passed, N failed".
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { ensureInstalled, root } from './ensure-installed.mjs';

ensureInstalled();
const { findBrowser } = await import('./find-browser.mjs');
const browser = await findBrowser();
const out = join(root, 'out');
mkdirSync(out, { recursive: true });

let passed = 0;
let failed = 0;

check('lint', 'npx', ['biome', 'check', '--error-on-warnings', '.']);
check('import rules', 'npx', ['depcruise', 'src']);
check('unused code', 'npx', ['knip', '--exclude', 'types', '--no-config-hints']);
check('types', 'npx', ['tsc', '--noEmit']);
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
if (check('build', 'npx', ['vite', 'build', '--logLevel', 'warn'])) {
  suite('browser tests', ['playwright', 'test'], 'browser.json', (report) => [
    report.stats.expected + report.stats.flaky,
    report.stats.unexpected + report.errors.length,
  ]);
}

console.log(`\n${passed} passed, ${failed} failed`);
process.exit(failed ? 1 : 0);

/** One command that counts as one check. */
function check(name, command, args) {
  const ok = execute(name, command, args) === 0;
  if (ok) passed++;
  else failed++;
  return ok;
}

/** A test runner that writes a JSON report; a run without a readable report counts as one failure. */
function suite(name, args, file, count) {
  rmSync(join(out, file), { force: true });
  const status = execute(name, 'npx', args);
  try {
    const [good, bad] = count(JSON.parse(readFileSync(join(out, file), 'utf8')));
    passed += good;
    failed += bad;
    if (good + bad === 0 || (status !== 0 && bad === 0)) failed++;
  } catch {
    failed++;
  }
}

function execute(name, command, args) {
  console.log(`\n== ${name}`);
  const { status } = spawnSync(command, args, {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, UPSTAND_BROWSER: browser },
    shell: process.platform === 'win32',
  });
  if (status !== 0) console.error(`${name}: failed`);
  return status ?? 1;
}
