/** SPECTRAL_NM400, NM_400, SPEC_400, R_400nm: one column for each band (ISO 28178 and its dialects). */
const BAND_NAME = /^([a-z_]*?)_?(\d{3,4}(?:\.\d+)?)_?(?:nm)?$/i;

/** The values of the standard's pair style, each after its SPECTRAL_NM. */
const PAIR_VALUE = /^SPECTRAL_(PCT|DEC|VALUE|POWER)$/i;

/** Where the value of a band stands in a row, and its wavelength or the place of that. */
export interface CgatsBand {
  readonly value: number;
  readonly nm: number | { readonly at: number };
}

/** The bands among the fields of a table, in their order: pairs where it has any, else columns named by wavelength. */
export function bandsOf(fields: readonly string[]): readonly CgatsBand[] {
  const pairs: CgatsBand[] = [];
  const columns: CgatsBand[] = [];
  fields.forEach((name, value) => {
    if (PAIR_VALUE.test(name) && /^SPECTRAL_NM$/i.test(fields[value - 1] ?? '')) {
      pairs.push({ nm: { at: value - 1 }, value });
    }
    const nm = BAND_NAME.exec(name)?.[2];
    if (nm !== undefined) columns.push({ nm: Number(nm), value });
  });
  return pairs.length > 0 ? pairs : columns;
}

/** What stands before the wavelength in the name of a column: alike in all bands of one spectrum. */
export const bandPrefix = (name: string): string => BAND_NAME.exec(name)?.[1]?.toUpperCase() ?? '';
