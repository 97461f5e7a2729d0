/** Words round copying to the clipboard. */
export const COPY = {
  failed: 'The browser did not allow copying.',
} as const;
