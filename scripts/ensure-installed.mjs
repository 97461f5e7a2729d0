// Installs the exact dependencies of the lock file when they are missing or older than it. Needs only Node and npm.
import { spawnSync } from 'node:child_process';
import { existsSync, lstatSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = join(dirname(fileURLToPath(import.meta.url)), '..');

/** True when `file` is missing or older than `than`. */
export const isStale = (file, than) => !existsSync(file) || statSync(file).mtimeMs < statSync(than).mtimeMs;

export function ensureInstalled() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    fail(`Upstand needs Node 20.19 or newer; this is ${process.versions.node}. Install a newer Node and try again.`);
  }
  if (!isStale(join(root, 'node_modules', '.package-lock.json'), join(root, 'package-lock.json'))) return;
  // Installing empties the folder: one that is linked from elsewhere belongs to somebody else.
  if (lstatSync(join(root, 'node_modules'), { throwIfNoEntry: false })?.isSymbolicLink()) {
    return console.warn(
      'node_modules is a link and older than package-lock.json: run npm ci where it leads to, if needed.',
    );
  }
  console.log('Installing dependencies (once) ...');
  run('npm', ['ci', '--include=dev', '--no-audit', '--no-fund', '--prefer-offline']);
}

/** Runs a command in the project's root; ends the process with its code when it fails. */
export function run(command, args, env = {}) {
  const { status } = spawnSync(command, args, {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, ...env },
    shell: process.platform === 'win32',
  });
  if (status !== 0) process.exit(status ?? 1);
}

export function fail(text) {
  console.error(text);
  process.exit(1);
}
