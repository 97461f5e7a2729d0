// Builds the app when a source is newer than what was built.
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { isStale, root, run } from './ensure-installed.mjs';

const SOURCES = [
  'src',
  'shaders',
  'demo-data',
  'scenes',
  'public',
  'index.html',
  'package-lock.json',
  'vite.config.ts',
];

export function buildIfNeeded() {
  const built = join(root, 'dist', 'index.html');
  if (!SOURCES.some((name) => filesOf(join(root, name)).some((file) => isStale(built, file)))) return;
  console.log('Building ...');
  run('npx', ['vite', 'build', '--logLevel', 'warn']);
}

/** All files under a path (or the file itself); an absent path has none. */
function filesOf(path) {
  const stat = statSync(path, { throwIfNoEntry: false });
  if (!stat) return [];
  if (!stat.isDirectory()) return [path];
  return readdirSync(path, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath ?? entry.path, entry.name));
}
