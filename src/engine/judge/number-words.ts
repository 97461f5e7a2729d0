/** The size of a number for a sentence, one decimal. */
export const oneDecimal = (value: number): string => Math.abs(value).toFixed(1);

/** "37%" of a share 0-1. */
export const percent = (share: number): string => `${Math.round(100 * share)}%`;

/** The conditions under which colors were compared, as a reason ends. */
export const AS_SAMPLE = 'as a sample, D65, 2 degree';
export const AS_INSTALLED = 'as installed, white of the counter light adapted to D65, 2 degree';
