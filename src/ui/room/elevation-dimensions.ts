import type { ElevationDrawing } from '../../kitchen/plan/elevation-drawing';
import type { LengthUnit } from '../../model/length-text';
import { chainAlongX, chainAlongY, type Dimension, dimensionWords, FIRST_LINE, GAP } from './dimensions';

/** Space round an elevation for its dimensions, mm. */
export interface ElevationMargins {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Free space between the words of one line of dimensions and the next line, in heights of letters. */
const CLEAR = 0.5;

/**
 * The sizes on an elevation: modules and the whole wall below it, wall units (or windows, where none hang) above, levels
 * beside it; with the space they need. `letter`: height of the words, mm; x from the left, y down from the ceiling.
 */
export function elevationDimensions(
  drawing: ElevationDrawing,
  unit: LengthUnit,
  letter: number,
): { readonly dimensions: readonly Dimension[]; readonly margins: ElevationMargins } {
  const { width_mm: width, height_mm: height, modules, shapes } = drawing;
  const near = FIRST_LINE * letter;
  const marks = (row: 'base' | 'over' | 'tall') =>
    modules.filter((one) => one.row === row).flatMap(({ x, width }) => [x, x + width]);
  const openings = shapes.filter(({ kind, surface }) => surface === 'frame' && (kind === 'window' || kind === 'door'));
  const over = marks('over');
  const below = chainAlongX([...marks('base'), ...marks('tall')], height + near, 'after');
  const belowDeep = depthOf(below, unit, letter);
  const whole = chainAlongX([0, width], height + near + belowDeep, 'after');
  const above = chainAlongX(
    over.length > 0 ? over : openings.flatMap(({ x, width }) => [x, x + width]),
    -near,
    'before',
  );
  const levels =
    drawing.levels_mm.length > 0 ? drawing.levels_mm : openings.flatMap(({ z, height }) => [z, z + height]);
  const beside = chainAlongY(
    [0, ...levels, height].map((level) => height - level),
    -near,
    'before',
  );
  const tall = chainAlongY([0, height], width + near, 'after');
  return {
    dimensions: [...below, ...whole, ...above, ...beside, ...tall],
    margins: {
      left: near + depthOf(beside, unit, letter),
      right: near + (1 + GAP + CLEAR) * letter,
      top: above.length > 0 ? near + depthOf(above, unit, letter) : CLEAR * letter,
      bottom: near + belowDeep + depthOf(whole, unit, letter),
    },
  };
}

/** How far a chain and its words reach from its line, mm. */
function depthOf(chain: readonly Dimension[], unit: LengthUnit, letter: number): number {
  const depths = chain.map((one) => dimensionWords(one, unit, letter)?.depth_mm ?? 0);
  return chain.length > 0 ? Math.max(...depths) + CLEAR * letter : 0;
}
