import { spawnSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export interface Ran {
  readonly exit: number | null;
  readonly out: string;
  readonly messages: string;
}

/** Runs the command line as a user would, in a process of its own. */
export function upstand(...args: readonly string[]): Ran {
  const ran = spawnSync(process.execPath, ['--import', 'tsx', 'src/cli/main.ts', ...args], {
    encoding: 'utf8',
  });
  return { exit: ran.status, out: ran.stdout, messages: ran.stderr };
}

const folder = mkdtempSync(join(tmpdir(), 'upstand-'));

/** A file with this text; gives its path. */
export function fileWith(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}
