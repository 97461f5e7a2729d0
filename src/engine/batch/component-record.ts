import type { GivenComponent } from '../finish/component';
import type { Specular } from '../finish/given-color';
import type { ComponentRole, FinishComponent, Provenance } from '../finish/types';
import { ISCC_NBS_NAMES } from '../naming/iscc-nbs';
import { munsellNotation } from '../naming/munsell';
import { UNDERTONE_LEVELS, type UndertoneLevel, undertoneWord } from '../naming/undertone';
import { failure, type Result, success } from '../result';
import { type ComponentColumns, componentColumns } from './component-columns';
import { ROW } from './rows';

/** One colour component as the assessment shows it: plain data, field names of the file format. */
export interface BatchRecord {
  readonly role: ComponentRole;
  readonly share: number;
  readonly lab_d65: readonly [l: number, a: number, b: number];
  readonly lrv: number;
  readonly munsell: string;
  readonly name: string;
  readonly undertone: { readonly word: string; readonly strength: number; readonly level: UndertoneLevel };
  readonly provenance: Provenance;
  readonly uncertainty_de00: number;
  readonly spectrum_source: FinishComponent['spectrumSource'];
  readonly specular: Specular | null;
}

/** Records of a whole library, row by row; the problem where a colour cannot be. */
export function componentRecords(given: readonly GivenComponent[]): readonly Result<BatchRecord>[] {
  const columns = componentColumns(given);
  return given.map((_, row) => recordAt(columns, row));
}

/** The record of one row, made when it is wanted. */
export function recordAt(columns: ComponentColumns, row: number): Result<BatchRecord> {
  if (columns.code[row] !== ROW.ok) return failure(columns.problems.get(row)!);
  const { role, share } = columns.given[row]!;
  const { lab, lrv, names } = columns;
  const at = 3 * row;
  const [hue100, value, chroma] = [names.munsell[at]!, names.munsell[at + 1]!, names.munsell[at + 2]!];
  const block = names.block[row]!;
  const level = UNDERTONE_LEVELS[names.level[row]!]!;
  return success({
    role,
    share,
    lab_d65: [lab[at]!, lab[at + 1]!, lab[at + 2]!],
    lrv: lrv[row]!,
    munsell: munsellNotation(hue100, value, chroma),
    name: ISCC_NBS_NAMES[block - 1]!.name,
    undertone: { word: undertoneWord({ hue100, value, chroma }, block, level), strength: names.strength[row]!, level },
    provenance: columns.provenance[row]!,
    uncertainty_de00: columns.uncertaintyDe00[row]!,
    spectrum_source: columns.spectrumSource[row]!,
    specular: columns.specular[row]!,
  });
}
