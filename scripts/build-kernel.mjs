// npm run kernel: compiles the light kernel (AssemblyScript) and writes it as text into kernel.data.ts.
// With --check it writes nothing and fails when kernel.data.ts is not what the source compiles to.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import asc from 'assemblyscript/asc';
import { root } from './ensure-installed.mjs';

const SOURCE = 'src/engine/light/kernel/kernel.as.ts';
const data = join(root, 'src/engine/light/kernel/kernel.data.ts');
const FLAGS = ['-O3', '--converge', '--noAssert', '--runtime', 'stub', '--use', 'abort=', '--enable', 'simd'];

const text = textOf(await compile());
if (!process.argv.includes('--check')) {
  writeFileSync(data, text);
} else if (readFileSync(data, 'utf8').replaceAll('\r\n', '\n') !== text) {
  console.error('kernel.data.ts is not what its source compiles to: run npm run kernel.');
  process.exit(1);
}

async function compile() {
  let module = null;
  const { error, stderr } = await asc.main([SOURCE, '--outFile', 'kernel.wasm', ...FLAGS], {
    readFile: (name, folder) => {
      try {
        return readFileSync(join(root, folder, name), 'utf8');
      } catch {
        return null;
      }
    },
    writeFile: (name, contents) => {
      if (name.endsWith('.wasm')) module = contents;
    },
    listFiles: () => [],
  });
  if (error || !module) {
    console.error(stderr.toString() || error);
    process.exit(1);
  }
  return module;
}

function textOf(module) {
  const lines = Buffer.from(module)
    .toString('base64')
    .match(/.{1,118}/g);
  return [
    '// Made by `npm run kernel` from kernel.as.ts: do not edit. A WebAssembly module in base64.',
    'export const KERNEL_BASE64 = `',
    ...lines,
    '`;',
    '',
  ].join('\n');
}
