/** A number for a sentence: one decimal, a true minus sign never needed since sizes are shown. */
export const oneDecimal = (value: number): string => Math.abs(value).toFixed(1);

/** "37 %" of a share 0-1. */
export const percent = (share: number): string => `${Math.round(100 * share)} %`;

/** How far to trust the limits: "published" or "our judgement", and under which conditions colors were compared. */
export const AS_SAMPLE = 'as a sample, D65, 2 degree';
export const AS_INSTALLED = 'as installed, white of the worktop light adapted to D65, 2 degree';
