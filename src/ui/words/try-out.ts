/** Words of a change on trial. */
export const TRY = {
  region: 'Change on trial',
  trying: (label: string, option: string) => `Trying in ${option}: ${label}.`,
  unkept: 'Shown and judged as if it were made. Nothing is changed until you keep it.',
  keep: 'Keep',
  drop: 'Drop',
  caption: (label: string) => `On trial, not kept: ${label}.`,
} as const;
