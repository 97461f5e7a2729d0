/** When the page was touched last, ms of any clock; null: not since it last started afresh. */
export type LastTouch = number | null;

export interface IdleRules {
  /** Without a touch for this long it starts afresh, ms. */
  readonly after_ms: number;
  /** The warning comes this long before, ms. */
  readonly warning_ms: number;
}

export type IdlePhase =
  /** Nothing to start afresh from. */
  | { readonly kind: 'fresh' }
  | { readonly kind: 'used' }
  | { readonly kind: 'warned'; readonly left_s: number }
  | { readonly kind: 'over' };

const MS_PER_MINUTE = 60_000;
/** Long enough to come back from the counter with a sample (our judgment). */
const WARNING_MS = 30_000;

/** The rules of a number of minutes; a warning never takes more than half of the time. */
export function idleRules(minutes: number): IdleRules {
  const after_ms = minutes * MS_PER_MINUTE;
  return { after_ms, warning_ms: Math.min(WARNING_MS, after_ms / 2) };
}

/** Where it stands. Seconds left are whole, from the length of the warning down to 1. */
export function phaseAt(touched: LastTouch, now_ms: number, { after_ms, warning_ms }: IdleRules): IdlePhase {
  if (touched === null) return { kind: 'fresh' };
  const left_ms = touched + after_ms - now_ms;
  if (left_ms <= 0) return { kind: 'over' };
  return left_ms > warning_ms ? { kind: 'used' } : { kind: 'warned', left_s: Math.ceil(left_ms / 1000) };
}

/** The touch where the clock was set back meanwhile: now at the latest. */
export const notAhead = (touched: LastTouch, now_ms: number): LastTouch =>
  touched === null ? null : Math.min(touched, now_ms);
