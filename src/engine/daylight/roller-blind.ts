/** Of the light on a light roller cloth that is no blackout this share comes through (common practice, no source). */
const CLOTH_TRANSMITTANCE = 0.25;

/** How far a roller blind is let down, and its cloth. */
export interface LoweredBlind {
  /** Share of the window it covers, from the head down, 0-1. */
  readonly covered: number;
  /** Share of the light on the covered part that comes through, 0-1. */
  readonly transmittance: number;
}

/**
 * The blind that lets `share` (0-1) of a window's light through: a usual cloth let down as far as that needs; where even all of it lets
 * more through, a denser cloth all the way down. What is open and what comes through the cloth sum up to the share.
 */
export const loweredBlind = (share: number): LoweredBlind => ({
  covered: Math.min(1, (1 - share) / (1 - CLOTH_TRANSMITTANCE)),
  transmittance: Math.min(CLOTH_TRANSMITTANCE, share),
});
