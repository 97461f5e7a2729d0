import { isccNbsBlock } from '../naming/iscc-nbs';
import { writeMunsell } from '../naming/munsell';
import { levelOf, neutralLimit, UNDERTONE_LEVELS } from '../naming/undertone';
import { ROW, rowsOfTriples } from './rows';

/** Munsell colour, ISCC-NBS block and undertone of many colours; one entry per row in every column. */
export interface NamingColumns {
  /** Hue on the circle of 100, value 0-10, chroma; three numbers per row. */
  readonly munsell: Float64Array;
  /** ISCC-NBS block 1-267: index + 1 in `ISCC_NBS_NAMES`. */
  readonly block: Uint16Array;
  /** Undertone strength U: Munsell chroma over the chroma at which a neutral gets a tinted name. */
  readonly strength: Float64Array;
  /** Index in `UNDERTONE_LEVELS`. */
  readonly level: Uint8Array;
  /** See `ROW`. */
  readonly code: Uint8Array;
}

/**
 * Names of CIELAB colours under D65, 2 degrees (three numbers per row); the same answers as `undertoneOf`, row by row.
 * Rows that `code` already marks are passed over, and further marks are written into it.
 */
export function namingColumns(lab: Float64Array, code: Uint8Array = new Uint8Array(rowsOfTriples(lab))): NamingColumns {
  const count = rowsOfTriples(lab);
  const munsell = new Float64Array(3 * count).fill(Number.NaN);
  const strength = new Float64Array(count).fill(Number.NaN);
  const block = new Uint16Array(count);
  const level = new Uint8Array(count);
  for (let row = 0; row < count; row++) {
    if (code[row] !== ROW.ok) continue;
    const at = 3 * row;
    if (!writeMunsell({ l: lab[at]!, a: lab[at + 1]!, b: lab[at + 2]! }, munsell, at)) {
      code[row] = ROW.notANumber;
      continue;
    }
    const [hue100, value, chroma] = [munsell[at]!, munsell[at + 1]!, munsell[at + 2]!];
    block[row] = isccNbsBlock(hue100, value, chroma);
    strength[row] = chroma / neutralLimit({ hue100, value });
    level[row] = UNDERTONE_LEVELS.indexOf(levelOf(strength[row]!, block[row]!));
  }
  return { munsell, block, strength, level, code };
}
