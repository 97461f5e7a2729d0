// npm start: installs if needed, builds if needed, serves the app with the demo project, prints the address.
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { ensureInstalled, isStale, root, run } from './ensure-installed.mjs';

ensureInstalled();
if (needsBuild()) {
  console.log('Building ...');
  run('npx', ['vite', 'build', '--logLevel', 'warn']);
}
const { preview } = await import('vite');
const server = await preview({
  root,
  preview: {
    port: Number(process.env.PORT) || 4173,
    strictPort: Boolean(process.env.PORT),
    host: process.env.HOST || 'localhost',
  },
});
console.log(`\nUpstand is ready with the demo project: ${server.resolvedUrls.local[0]}\nStop it with Ctrl+C.`);

function needsBuild() {
  const built = join(root, 'dist', 'index.html');
  const sources = [
    'src',
    'shaders',
    'demo-data',
    'scenes',
    'public',
    'index.html',
    'package-lock.json',
    'vite.config.ts',
  ];
  return sources.some((name) => filesOf(join(root, name)).some((file) => isStale(built, file)));
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
