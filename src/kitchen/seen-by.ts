/**
 * Whose sight the picture shows: an eye used to the light (D = 1), an eye that still notices it (D of CIECAM16 for the
 * room's luminance), a camera set to daylight (D = 0 from D65). Findings and readings are always those of the first.
 */
export type SeenBy = 'used-to-it' | 'notices-it' | 'daylight-camera';

export const SEEN_BY: readonly SeenBy[] = ['used-to-it', 'notices-it', 'daylight-camera'];
