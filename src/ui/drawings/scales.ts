import { type LengthUnit, MM_PER_INCH } from '../../model/length-text';

/** How many times smaller a drawing is than what it shows. */
export interface Scale {
  readonly ratio: number;
  /** What stands for a foot on paper, in inches; null in metric scales. */
  readonly inch: string | null;
}

const metric = (ratio: number): Scale => ({ ratio, inch: null });
const us = (inch: string, ratio: number): Scale => ({ ratio, inch });

/** Scales as scale rulers have them, the largest first (common practice, no source). */
export const SCALES: { readonly [U in LengthUnit]: readonly Scale[] } = {
  mm: [10, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200].map(metric),
  in: [
    us('1', 12),
    us('3/4', 16),
    us('1/2', 24),
    us('3/8', 32),
    us('1/4', 48),
    us('3/16', 64),
    us('1/8', 96),
    us('1/16', 192),
  ],
};

/** A step of the scale bar and how many it has, mm of the kitchen: a meter, or a yard. */
export const BARS: { readonly [U in LengthUnit]: { readonly step: number; readonly steps: number } } = {
  mm: { step: 100, steps: 10 },
  in: { step: 6 * MM_PER_INCH, steps: 6 },
};
