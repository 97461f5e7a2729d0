/** One thing that must hold for a kitchen to be built: where, whether it does, what is wrong if not, what to do. */
export type Check = readonly [path: string, holds: boolean, text: string, remedy: string];

export type Range = readonly [low: number, high: number];

/** Whether two ranges share more than a tenth of a millimetre. */
export const overlap = (a: Range, b: Range): boolean => Math.min(a[1], b[1]) - Math.max(a[0], b[0]) > 0.1;

export const within = (value: number, [low, high]: Range): boolean => value >= low && value <= high;
