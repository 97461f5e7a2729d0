import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

/** Each import that must be refused, with the rule that refuses it. */
const FORBIDDEN: readonly [from: string, code: string, rule: string][] = [
  ['src/engine/a.ts', "import '../model/x';", 'layer-engine'],
  ['src/engine/b.ts', "import 'react';", 'engine-is-pure'],
  ['src/engine/c.ts', "import 'node:fs';", 'engine-is-pure'],
  ['src/model/a.ts', "import '../kitchen/x';", 'layer-model'],
  ['src/kitchen/a.ts', "import '../io/x';", 'layer-kitchen'],
  ['src/io/a.ts', "import '../kitchen/x';", 'layer-io'],
  ['src/workers/a.ts', "import '../view/x';", 'layer-workers'],
  ['src/view/a.ts', "import '../ui/x';", 'layer-view'],
  ['src/ui/a.ts', "import '../app/x';", 'layer-ui'],
  ['src/ui/b.ts', "import 'three';", 'three-only-in-view'],
  ['src/cli/a.ts', "import '../workers/x';", 'layer-cli'],
  ['src/app/a.ts', "import '../cli/x';", 'layer-app'],
  ['src/io/loop-a.ts', "import './loop-b';", 'no-circular'],
];

const ALLOWED: readonly [from: string, code: string][] = [
  ['src/kitchen/ok.ts', "import '../engine/x'; import '../model/x';"],
  ['src/app/ok.ts', "import '../view/x'; import '../ui/x'; import '../workers/x';"],
  ['src/view/ok.ts', "import 'three';"],
  ['src/engine/ok.ts', "import 'culori/fn'; import 'munsell';"],
];

interface Violation {
  from: string;
  rule: { name: string };
}

describe('the import rule', () => {
  let folder = '';
  let violations: Violation[] = [];

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'upstand-layers-'));
    const write = (path: string, text: string) => {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), text);
    };
    for (const layer of ['engine', 'model', 'kitchen', 'io', 'workers', 'view', 'ui', 'cli', 'app']) {
      write(`src/${layer}/x.ts`, 'export {};');
    }
    write('src/io/loop-b.ts', "import './loop-a';");
    for (const [path, code] of [...FORBIDDEN, ...ALLOWED]) write(path, code);
    write('tsconfig.json', '{ "compilerOptions": { "module": "ESNext", "moduleResolution": "bundler" } }');
    for (const name of ['culori', 'munsell', 'react', 'three']) {
      write(`node_modules/${name}/package.json`, JSON.stringify({ name, main: 'index.js', type: 'module' }));
      for (const file of ['index.js', 'fn.js']) write(`node_modules/${name}/${file}`, 'export {};');
    }
    violations = cruise(folder);
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it.each(FORBIDDEN)('refuses %s: %s', (from, _code, rule) => {
    expect(violations.filter((violation) => violation.from === from).map((violation) => violation.rule.name)).toContain(
      rule,
    );
  });

  it.each(ALLOWED)('allows %s: %s', (from) => {
    expect(violations.filter((violation) => violation.from === from)).toEqual([]);
  });
});

function cruise(cwd: string): Violation[] {
  const bin = resolve('node_modules/dependency-cruiser/bin/dependency-cruise.mjs');
  const args = [bin, '--config', resolve('.dependency-cruiser.cjs'), '--output-type', 'json', 'src'];
  try {
    return JSON.parse(execFileSync(process.execPath, args, { cwd, encoding: 'utf8' })).summary.violations;
  } catch (error) {
    return JSON.parse((error as { stdout: string }).stdout).summary.violations;
  }
}
