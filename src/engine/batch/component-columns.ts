import { finishComponent, type GivenComponent } from '../finish/component';
import type { Specular } from '../finish/given-color';
import type { FinishClass, FinishComponent, Provenance } from '../finish/types';
import type { Problem } from '../result';
import { GRID_COUNT } from '../spectrum/grid';
import { type NamingColumns, namingColumns } from './naming-columns';
import { lrvColumn, reflectanceColumns } from './reflectance-columns';
import { ROW } from './rows';

/** What is computed of many colours, column by column. */
export interface ColorRecordColumns {
  /** CIELAB under D65, 2 degrees; three numbers per row. */
  readonly lab: Float64Array;
  /** 81 numbers per row, 380-780 nm at 5 nm. */
  readonly rho: Float64Array;
  /** Light reflectance value, 0-100. */
  readonly lrv: Float64Array;
  readonly names: NamingColumns;
  /** See `ROW`. */
  readonly code: Uint8Array;
}

/** Curve, light reflectance value and names of CIELAB colours under D65, 2 degrees; `classAt` says what a row is made of. */
export function colorRecordColumns(lab: Float64Array, classAt: (row: number) => FinishClass): ColorRecordColumns {
  const { rho, code } = reflectanceColumns(lab, classAt);
  return { lab, rho, lrv: lrvColumn(rho), names: namingColumns(lab, code), code };
}

/** Columns of finish components, with what is known of each beside its colour. */
export interface ComponentColumns extends ColorRecordColumns {
  readonly given: readonly GivenComponent[];
  readonly provenance: readonly Provenance[];
  readonly uncertaintyDe00: Float64Array;
  readonly spectrumSource: readonly FinishComponent['spectrumSource'][];
  readonly specular: readonly (Specular | null)[];
  /** Of the rows that are not `ok`. */
  readonly problems: ReadonlyMap<number, Problem>;
}

/** Components of a whole library in columns; the same numbers as `finishComponent` and the records made of it, row by row. */
export function componentColumns(given: readonly GivenComponent[]): ComponentColumns {
  const count = given.length;
  const lab = new Float64Array(3 * count).fill(Number.NaN);
  const rho = new Float64Array(GRID_COUNT * count).fill(Number.NaN);
  const uncertaintyDe00 = new Float64Array(count).fill(Number.NaN);
  const code = new Uint8Array(count);
  const spectrumSource = new Array<FinishComponent['spectrumSource']>(count).fill('lhtss');
  const specular = new Array<Specular | null>(count).fill(null);
  const problems = new Map<number, Problem>();
  const provenance = given.map((one, row) => {
    const made = finishComponent(one);
    if (!made.ok) {
      problems.set(row, made.problem);
      code[row] = ROW.notMade;
      return one.provenance;
    }
    const { labD65, spectrum } = made.value;
    lab[3 * row] = labD65.l;
    lab[3 * row + 1] = labD65.a;
    lab[3 * row + 2] = labD65.b;
    rho.set(spectrum, GRID_COUNT * row);
    uncertaintyDe00[row] = made.value.uncertaintyDe00;
    spectrumSource[row] = made.value.spectrumSource;
    specular[row] = made.value.specular ?? null;
    return made.value.provenance;
  });
  return {
    given,
    lab,
    rho,
    lrv: lrvColumn(rho),
    names: namingColumns(lab, code),
    code,
    provenance,
    uncertaintyDe00,
    spectrumSource,
    specular,
    problems,
  };
}
