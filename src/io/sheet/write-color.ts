import { labD65FromReflectance } from '../../engine/color/lab-from-reflectance';
import { wholeCurve } from '../../engine/finish/component';
import type { GivenColor } from '../../engine/finish/given-color';
import { GRID_COUNT } from '../../engine/spectrum/grid';
import type { ReflectanceSpd } from '../../engine/spectrum/types';
import { givenComponents } from '../../model/given-components';
import type { Finish } from '../../model/project';

/** Cells of a color by their headings. */
export type ColorCells = Readonly<Record<string, string | number | undefined>>;

/** Digits of numbers that were computed. */
const DIGITS = 4;

/** The cells of a finish's color; `isRewritten` where they are not the color as it was given. */
export function carriedColor(finish: Finish): { readonly cells: ColorCells; readonly isRewritten: boolean } {
  const [first, ...more] = finish.components;
  const cells = first && more.length === 0 ? cellsOf(first.color) : null;
  return cells ? { cells, isRewritten: false } : { cells: meanCells(finish), isRewritten: true };
}

/** Null for what a table has no cells for: screen colors of a wider space, LRVs with a word. */
function cellsOf(color: GivenColor): ColorCells | null {
  const beside = 'specular' in color ? { specular: color.specular } : {};
  const under = 'illuminant' in color ? { illuminant: color.illuminant, observer_deg: color.observer_deg } : {};
  switch (color.kind) {
    case 'lab':
      return { lab_l: color.lab[0], lab_a: color.lab[1], lab_b: color.lab[2], ...under, ...beside };
    case 'lch':
      return { lch_l: color.lch[0], lch_c: color.lch[1], lch_h: color.lch[2], ...under, ...beside };
    case 'xyz':
      return { xyz_x: color.xyz[0], xyz_y: color.xyz[1], xyz_z: color.xyz[2], ...under, ...beside };
    case 'munsell':
      return { munsell: color.munsell };
    case 'spectrum': {
      const bands = color.reflectance.map((value, i) => [
        `spd_${Number((color.start_nm + i * color.step_nm).toFixed(3))}`,
        value,
      ]);
      return { ...Object.fromEntries(bands), ...beside };
    }
    case 'hex':
      return color.space === 'display-p3' ? null : { hex: color.hex };
    case 'lrv':
      return null;
  }
}

/** The mean of the area: reflectances by their shares. Nothing where a color cannot be computed. */
function meanCells(finish: Finish): ColorCells {
  const mean = new Float64Array(GRID_COUNT);
  let share = 0;
  for (const given of givenComponents(finish)) {
    const made = wholeCurve(given);
    if (!made.ok) return {};
    share += given.share;
    for (let i = 0; i < GRID_COUNT; i++) mean[i]! += given.share * made.value.whole.rho[i]!;
  }
  if (!(share > 0)) return {};
  const { l, a, b } = labD65FromReflectance(mean.map((value) => value / share) as ReflectanceSpd);
  const rounded = (value: number) => Number(value.toFixed(DIGITS));
  return { lab_l: rounded(l), lab_a: rounded(a), lab_b: rounded(b), illuminant: 'D65', observer_deg: 2 };
}
