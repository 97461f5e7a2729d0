import { finishComponent } from '../../engine/finish/component';
import type { LaidFinish } from '../../engine/finish/types';

/** A known white that is held beside a color to see which way it leans. */
export type ComparisonWhite = 'neutral-white' | 'off-white' | 'cream';

/**
 * CIELAB under D65, 2 degree. Trade words for ranges of lightness, hue and Munsell chroma (our reading of the ISCC-NBS blocks, NBS
 * SP 440): neutral white L* 93 and over and no undertone one would name; off-white L* 88 and over, 7YR to 9Y, chroma 0.35 to 1.1;
 * cream L* 83 and over, 7YR to 9Y, chroma 1.1 to 3. Each stands near the middle of its range.
 */
const LABS: { readonly [W in ComparisonWhite]: readonly [l: number, a: number, b: number] } = {
  'neutral-white': [95, 0, 0],
  'off-white': [91, 0, 5.5],
  cream: [87, 1, 15],
};

export const COMPARISON_WHITES = Object.keys(LABS) as readonly ComparisonWhite[];

/** A comparison white as a matte paint whose color is known. */
export function laidWhite(id: ComparisonWhite): LaidFinish {
  const made = finishComponent({
    role: 'base',
    share: 1,
    color: { kind: 'lab', lab: LABS[id], illuminant: 'D65', observer_deg: 2 },
    finishClass: 'paint',
    provenance: 'measured',
  });
  if (!made.ok) throw new Error(`${id} is no color of a surface`);
  return { id, label: id, class: 'paint', glossGu: 0, components: [made.value] };
}
