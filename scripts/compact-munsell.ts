import type { Plugin } from 'vite';

// The table of the Munsell renotation in the munsell package is 400 kB of digits, and two workers carry it. Chromas and hues run nearly
// straight along a row: second differences as bytes are a third of it after compression, and give every number back exactly.

const TABLES = ['mrdCHTable', 'mrdCHTableDark'];
/** Its numbers have five decimals. */
const STEPS = 1e5;

/** Per hue and value a row of C*ab and h_ab, chroma by chroma. */
type Table = [number, number][][][];

/** For Vite, as a plugin of page and workers. */
export const compactMunsell = (): Plugin => ({
  name: 'compact-munsell',
  apply: 'build',
  transform(code, id) {
    if (!id.replaceAll('\\', '/').endsWith('/munsell/dist/src/MRD.js')) return null;
    return { code: compacted(code), map: null };
  },
});

/** The module with its two long tables packed, and what unpacks them. */
export function compacted(code: string): string {
  let out = code;
  for (const name of TABLES) {
    const written = new RegExp(`exports\\.${name} = (\\[.*?\\]);\\r?\\n`, 's').exec(code);
    if (!written) throw new Error(`the munsell package has no ${name} any more`);
    const table = JSON.parse(written[1]!) as Table;
    const packed = packTable(table);
    const values = table[0]!.length;
    if (JSON.stringify(unpackTable(packed, values, STEPS)) !== JSON.stringify(table)) {
      throw new Error(`${name} is not the same after packing`);
    }
    out = out.replace(written[0], () => `exports.${name} = unpackTable('${packed}', ${values}, ${STEPS});\n`);
  }
  return `${out}\n${unpackTable}\n`;
}

/** Hue by hue, value by value, first the chromas, then the angles of a row. */
function packTable(table: Table): string {
  const bytes: number[] = [];
  for (const row of table.flat()) {
    for (const k of [0, 1] as const) {
      let before = 0;
      let rise = 0;
      for (const pair of row) {
        const here = Math.round(pair[k] * STEPS);
        const bend = here - before - rise;
        let left = bend < 0 ? -2 * bend - 1 : 2 * bend;
        for (; left > 127; left = Math.floor(left / 128)) bytes.push(128 + (left % 128));
        bytes.push(left);
        rise = here - before;
        before = here;
      }
    }
  }
  return Buffer.from(bytes).toString('base64');
}

/** Its text is put into the module to run in the browser: so no function in it has a name, which compilers like to keep by helpers. */
function unpackTable(packed: string, values: number, steps: number): Table {
  const bytes = atob(packed);
  const table: Table = [];
  let at = 0;
  for (let hue = 0; hue < 40; hue++) {
    table.push([]);
    for (let value = 0; value < values; value++) {
      const pairs: [number, number][] = [];
      for (let k = 0; k < 2; k++) {
        let here = 0;
        let rise = 0;
        for (let i = 0; i < 26; i++) {
          let number = 0;
          let unit = 1;
          for (; bytes.charCodeAt(at) > 127; unit *= 128) number += (bytes.charCodeAt(at++) - 128) * unit;
          number += bytes.charCodeAt(at++) * unit;
          rise += number % 2 === 0 ? number / 2 : -(number + 1) / 2;
          here += rise;
          if (k === 0) pairs.push([here / steps, 0]);
          else pairs[i]![1] = here / steps;
        }
      }
      table[hue]!.push(pairs);
    }
  }
  return table;
}
