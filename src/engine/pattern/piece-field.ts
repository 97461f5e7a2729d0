import { mulberry32 } from '../random';
import type { PieceGrid } from './pieces';
import type { PatternSpec, PieceField } from './types';

/** Common practice, no source: end joints of boards in neighbouring rows lie at least this far apart (short boards: 2/9 of their length), mm. */
const MIN_STAGGER_MM = 300;

/** Rows of boards before their end joints fall as before; what the boards show never repeats. */
const STAGGERED_ROWS = 32;

/** How the pieces of a grid are laid out over a field in the spec's layout. */
export function pieceField(spec: PatternSpec, { columns, rows, module_mm }: PieceGrid): PieceField {
  const kind = spec.layout === 'herringbone' || spec.layout === 'hexagon' ? spec.layout : 'rows';
  return {
    kind,
    columns,
    rows,
    module_m: [module_mm[0] / 1000, module_mm[1] / 1000],
    offsets: offsetsOf(spec, module_mm[0]),
    seed: spec.seed >>> 0,
  };
}

function offsetsOf(spec: PatternSpec, length_mm: number): readonly number[] {
  switch (spec.layout) {
    case 'running-bond':
      return [0, 1 / 2];
    case 'third-offset':
      return [0, 1 / 3, 2 / 3];
    case 'planks':
      return staggeredRows(length_mm, spec.seed);
    default:
      return [0];
  }
}

/** Seeded offsets so that neighbouring rows, the last and the first too, keep their end joints apart. */
function staggeredRows(length_mm: number, seed: number): readonly number[] {
  const random = mulberry32(seed ^ 0x51a66e12);
  const apart = Math.min(MIN_STAGGER_MM / length_mm, 1 / 4.5);
  const distance = (a: number, b: number): number => {
    const d = Math.abs(a - b) % 1;
    return Math.min(d, 1 - d);
  };
  const offset: number[] = [];
  for (let r = 0; r < STAGGERED_ROWS; r++) {
    const before = offset[r - 1];
    const after = r === STAGGERED_ROWS - 1 ? offset[0] : undefined;
    const twoBack = offset[r - 2];
    let best = -1;
    // The best of some throws: clear of both neighbours, and if possible of the row after next (no visible staircase).
    for (let i = 0; i < 120; i++) {
      const candidate = random();
      const clear = Math.min(
        before === undefined ? 1 : distance(candidate, before),
        after === undefined ? 1 : distance(candidate, after),
      );
      const further = twoBack === undefined ? 1 : distance(candidate, twoBack);
      const score = (clear >= apart ? 1e9 : clear) + Math.min(further, apart / 2) + random() * apart * 0.3;
      if (score > best) {
        best = score;
        offset[r] = candidate;
      }
    }
  }
  return offset;
}
