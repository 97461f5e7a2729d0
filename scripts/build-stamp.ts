import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

const SOURCES = ['src', 'shaders', 'demo-data', 'scenes', 'public', 'index.html', 'package-lock.json'];

/** The version and what tells this build from others: the same sources give the same stamp. */
export function buildStamp(): string {
  const root = resolve(import.meta.dirname, '..');
  const hash = createHash('sha256');
  for (const source of SOURCES) {
    for (const file of filesOf(root, source)) hash.update(file).update(readFileSync(join(root, file)));
  }
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };
  return `${version}-${hash.digest('hex').slice(0, 7)}`;
}

/** The file itself, or all files under a folder, in the order of their names. */
function filesOf(root: string, name: string): readonly string[] {
  if (name.includes('.')) return [name];
  return readdirSync(join(root, name), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(root.length + 1)
        .replaceAll('\\', '/'),
    )
    .sort();
}
