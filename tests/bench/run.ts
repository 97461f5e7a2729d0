import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { cpus, totalmem } from 'node:os';

// npm run bench: every bench in a process of its own, one after the other. Prints medians; nothing fails here.
console.log(
  `${cpus()[0]?.model.trim()}, ${cpus().length} cores, ${Math.round(totalmem() / 2 ** 30)} GiB, Node ${process.version}`,
);
for (const file of readdirSync(import.meta.dirname).filter((name) => name.endsWith('.bench.ts'))) {
  console.log(`\n${file}`);
  spawnSync(process.execPath, ['--import', 'tsx', `${import.meta.dirname}/${file}`], { stdio: 'inherit' });
}
