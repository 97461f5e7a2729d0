import type { SeenBy } from '../../kitchen/seen-by';

/** Words of whose sight the picture shows. */
export const SEEN_BY_WORDS = {
  label: 'Picture seen by',
  choices: {
    'used-to-it': 'An eye used to the light',
    'notices-it': 'An eye that still notices it',
    'daylight-camera': 'A camera set to daylight',
  } satisfies Record<SeenBy, string>,
  note: 'Only the picture changes. Findings and readings are for an eye used to the light.',
  told: {
    'used-to-it': null,
    'notices-it': 'Seen by an eye that still notices the light; findings by one used to it.',
    'daylight-camera': 'Seen by a camera set to daylight; findings by an eye used to the light.',
  } satisfies Record<SeenBy, string | null>,
  onScreen: {
    'used-to-it': null,
    'notices-it': 'for an eye that still notices the light',
    'daylight-camera': 'for a camera set to daylight',
  } satisfies Record<SeenBy, string | null>,
} as const;
