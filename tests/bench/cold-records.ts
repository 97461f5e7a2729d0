// Run by color.bench.ts in a process of its own, as one bundled file: nothing is compiled or set up before.
import { componentRecords } from '../../src/engine/batch/component-record';
import { inventedLibrary } from './library';

const loaded_ms = performance.now();
const given = inventedLibrary(10_000);
const begun_ms = performance.now();
const failed = componentRecords(given).filter((record) => !record.ok).length;
const done_ms = performance.now();
const { user, system } = process.cpuUsage();
console.log(
  JSON.stringify({ records_ms: done_ms - begun_ms, loaded_ms, done_ms, cpu_ms: (user + system) / 1000, failed }),
);
