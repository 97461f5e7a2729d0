import type { SeenBy } from '../../kitchen/seen-by';
import { spoken } from './spoken';

/** Words of whose sight the picture shows. */
export const SEEN_BY_WORDS = spoken({
  label: 'Show the picture as seen by',
  choices: {
    'used-to-it': 'Eyes used to the light (findings use this)',
    'notices-it': 'Eyes that still notice the light',
    'daylight-camera': 'A camera set to daylight',
  } satisfies Record<SeenBy, string>,
  note: 'Only the picture changes, not findings and readings.',
  daylight: 'In daylight all three look the same; under warm lamps they differ.',
  told: {
    'used-to-it': null,
    'notices-it': 'Seen by eyes that still notice the light; findings by eyes used to it.',
    'daylight-camera': 'Seen by a camera set to daylight; findings by eyes used to the light.',
  } satisfies Record<SeenBy, string | null>,
  onScreen: {
    'used-to-it': null,
    'notices-it': 'for eyes that still notice the light',
    'daylight-camera': 'for a camera set to daylight',
  } satisfies Record<SeenBy, string | null>,
} as const);
