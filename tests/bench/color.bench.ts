import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { CAM16_JMh, ColorSpace, deltaE2000, Lab, Lab_D65, sRGB, to, XYZ_D65 } from 'colorjs.io/fn';
import { converter, differenceCiede2000 as culoriDifference } from 'culori';
import { build } from 'vite';
import { cam16FromXyz } from '../../src/engine/appearance/cam16';
import { viewingConditions } from '../../src/engine/appearance/viewing-conditions';
import { labD65ColumnsFromXyzD65, xyzD65ColumnsFromLabD65 } from '../../src/engine/batch/color-columns';
import { colorRecordColumns, componentColumns } from '../../src/engine/batch/component-columns';
import { componentRecords } from '../../src/engine/batch/component-record';
import { namingColumns } from '../../src/engine/batch/naming-columns';
import { reflectanceColumns } from '../../src/engine/batch/reflectance-columns';
import { differenceCiede2000 } from '../../src/engine/color/difference';
import { encodeSrgb, linearSrgbFromXyzD65 } from '../../src/engine/color/display';
import { labD65FromXyzD65, xyzD65FromLabD65 } from '../../src/engine/color/lab';
import { labD65FromReflectance } from '../../src/engine/color/lab-from-reflectance';
import { D65_2 } from '../../src/engine/color/whites';
import { finishComponent } from '../../src/engine/finish/component';
import type { FinishComponent } from '../../src/engine/finish/types';
import { componentRecord } from '../../src/engine/judge/component-record';
import { labD65FromHueValueChroma, munsellFromLabD65 } from '../../src/engine/naming/munsell';
import { plausibleCurves } from '../../src/engine/plausible/curves';
import { mulberry32 } from '../../src/engine/random';
import type { ReflectanceSpd } from '../../src/engine/spectrum/types';
import { inventedLibrary } from './library';
import { median, report } from './timing';

// Colours by the thousand: a library's records, and the plain conversions beside two general colour libraries.

const COUNT = 10_000;
const library = inventedLibrary(COUNT);

await coldRecords();

median(`records of ${COUNT} finishes, warm`, null, 5, () => componentRecords(library));
const columns = median('  of which columns', null, 5, () => componentColumns(library));
const { lab } = columns;
median('the same from a column of CIELAB', null, 5, () => colorRecordColumns(lab, () => 'stone'));
median('  of which curves', null, 5, () => reflectanceColumns(lab, () => 'stone'));
median('  of which names', null, 5, () => namingColumns(lab));
const components = median('one by one: components', null, 3, () => library.map(finishComponent)).flatMap((made) =>
  made.ok ? [made.value] : [],
);
median('one by one: records', null, 3, () => components.map((component) => componentRecord({ ...component })));
median('records of finishes seen before', null, 5, () => components.map(componentRecord));

const families = components.slice(0, 50);
/** Curves are remembered per spectrum, so each run gets spectra of its own. */
const unseen = (component: FinishComponent): FinishComponent => ({
  ...component,
  spectrum: component.spectrum.slice() as ReflectanceSpd,
});
median('families of plausible curves of 50 colours', null, 5, () =>
  families.map((component) => plausibleCurves(unseen(component), 'stone')),
);

roundTrips();
againstOthers();

/** Bundled as the product is, in a fresh process: loading, tables and compilation on the way count. */
async function coldRecords(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'upstand-bench-'));
  try {
    await build({
      configFile: false,
      logLevel: 'silent',
      ssr: { noExternal: true },
      build: { ssr: join(import.meta.dirname, 'cold-records.ts'), outDir: folder, emptyOutDir: true },
    });
    const runs = Array.from({ length: 5 }, () => {
      const run = spawnSync(process.execPath, [join(folder, 'cold-records.js')], { encoding: 'utf8' });
      return JSON.parse(run.stdout) as Record<'records_ms' | 'done_ms' | 'cpu_ms' | 'failed', number>;
    });
    report(
      `records of ${COUNT} finishes, cold`,
      2000,
      runs.map((run) => run.records_ms),
    );
    report(
      '  with starting the process and loading',
      null,
      runs.map((run) => run.done_ms),
    );
    report(
      '  processor time of all threads',
      null,
      runs.map((run) => run.cpu_ms),
    );
    console.log(`  ${runs[0]!.failed} of the library failed`);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function roundTrips(): void {
  const count = 100_000;
  const random = mulberry32(100);
  const triples = new Float64Array(3 * count);
  for (let row = 0; row < count; row++) {
    const [l, reach] = [5 + 90 * random(), row % 2 ? 3 : 15];
    triples.set([l, reach * (2 * random() - 1), reach * (2 * random() - 1)], 3 * row);
  }
  const at = (values: Float64Array, row: number) => ({
    l: values[3 * row]!,
    a: values[3 * row + 1]!,
    b: values[3 * row + 2]!,
  });
  const worst = (back: (row: number) => ReturnType<typeof at> | null) => {
    let greatest = 0;
    let without = 0;
    for (let row = 0; row < count; row++) {
      const there = back(row);
      if (there) greatest = Math.max(greatest, differenceCiede2000(at(triples, row), there));
      else without++;
    }
    return `greatest ${greatest.toExponential(1)} CIEDE2000${without ? `, ${without} outside the object colour solid` : ''}`;
  };
  const again = labD65ColumnsFromXyzD65(xyzD65ColumnsFromLabD65(triples).values).values;
  const { rho, code } = reflectanceColumns(triples, () => 'stone');
  console.log(`\n${count} colours there and back`);
  console.log(`  tristimulus values: ${worst((row) => at(again, row))}`);
  console.log(
    `  plausible curve:    ${worst((row) =>
      code[row] ? null : labD65FromReflectance(rho.subarray(81 * row, 81 * row + 81) as ReflectanceSpd),
    )}`,
  );
  console.log(
    `  Munsell:            ${worst((row) => {
      const { hue100, value, chroma } = munsellFromLabD65(at(triples, row));
      return labD65FromHueValueChroma(hue100, value, chroma);
    })}`,
  );
}

/** Ours and theirs in turn in one run, so that what else the machine does meets both. */
function againstOthers(): void {
  const random = mulberry32(5);
  const labs = Array.from({ length: 5000 }, () => ({
    l: 5 + 90 * random(),
    a: 40 * (random() - 0.5),
    b: 40 * (random() - 0.5),
  }));
  const xyzs = labs.map(xyzD65FromLabD65);
  const culoriLabs = labs.map((one) => ({ mode: 'lab65' as const, ...one }));
  const culoriXyzs = xyzs.map(({ x, y, z }) => ({ mode: 'xyz65' as const, x: x / 100, y: y / 100, z: z / 100 }));
  for (const space of [XYZ_D65, Lab_D65, Lab, sRGB, CAM16_JMh]) ColorSpace.register(space);
  const plain = (space: ColorSpace, coords: [number, number, number]) => ({ space, coords, alpha: 1 });
  const jsLabs = labs.map(({ l, a, b }) => plain(Lab_D65, [l, a, b]));
  const jsXyzs = xyzs.map(({ x, y, z }) => plain(XYZ_D65, [x / 100, y / 100, z / 100]));
  const jsOldLabs = labs.map(({ l, a, b }) => plain(Lab, [l, a, b]));
  const toXyz65 = converter('xyz65');
  const toLab65 = converter('lab65');
  const toRgb = converter('rgb');
  const culoriDe00 = culoriDifference();
  const conditions = viewingConditions({ white: D65_2, la_cd_m2: 40, yb: 20 });
  const pairs = <T>(list: readonly T[], difference: (first: T, second: T) => number) =>
    list.reduce((sum, one, i) => sum + difference(one, list[(i + 1) % list.length]!), 0);

  console.log('\ntimes the speed of culori and colorjs.io (above 1 we are faster)');
  compare('CIELAB to XYZ', () => labs.map(xyzD65FromLabD65), {
    culori: () => culoriLabs.map((one) => toXyz65(one)),
    'colorjs.io': () => jsLabs.map((one) => to(one, XYZ_D65)),
  });
  compare('XYZ to CIELAB', () => xyzs.map(labD65FromXyzD65), {
    culori: () => culoriXyzs.map((one) => toLab65(one)),
    'colorjs.io': () => jsXyzs.map((one) => to(one, Lab_D65)),
  });
  const srgbOf = (xyz: (typeof xyzs)[number]) => {
    const { r, g, b } = linearSrgbFromXyzD65(xyz);
    return { r: encodeSrgb(r), g: encodeSrgb(g), b: encodeSrgb(b) };
  };
  compare('XYZ to sRGB', () => xyzs.map(srgbOf), {
    culori: () => culoriXyzs.map((one) => toRgb(one)),
    'colorjs.io': () => jsXyzs.map((one) => to(one, sRGB)),
  });
  compare('CIEDE2000', () => pairs(labs, differenceCiede2000), {
    culori: () => pairs(culoriLabs, culoriDe00),
    'colorjs.io': () => pairs(jsOldLabs, (first, second) => deltaE2000(first, second)),
  });
  compare('CAM16', () => xyzs.map((one) => cam16FromXyz(one, conditions)), {
    'colorjs.io': () => jsXyzs.map((one) => to(one, CAM16_JMh)),
  });
}

function compare(name: string, ours: () => unknown, others: Readonly<Record<string, () => unknown>>): void {
  const timed = (work: () => unknown) => {
    const start = performance.now();
    work();
    return performance.now() - start;
  };
  const middle = (values: number[]) => values.sort((a, b) => a - b)[values.length >> 1]!;
  const parts = Object.entries(others).map(([library, theirs]) => {
    for (let i = 0; i < 3; i++) [ours, theirs].forEach(timed);
    const ratios = Array.from({ length: 15 }, () => timed(theirs) / timed(ours));
    return `${library} ${middle(ratios).toFixed(1)}`;
  });
  console.log(`  ${name.padEnd(16)} ${parts.join('   ')}`);
}
