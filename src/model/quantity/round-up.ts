/** What floating point leaves in sums and conversions, in parts of one: 8.000000001 packs are 8. */
const DUST = 1e-6;

/** The next whole number, 0 or more; what is a whole number but for the dust of floating point stays it. */
export const roundUp = (value: number): number => Math.max(0, Math.ceil(value - DUST));

/** A net quantity with its waste in percent, in the same unit. */
export const withWaste = (net: number, waste_percent: number): number => net * (1 + waste_percent / 100);
