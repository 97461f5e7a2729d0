import type { SurfaceId } from '../engine/surface';

/** One line of a project's log: what somebody noted, what was decided, what was frozen or gone back to. */
export interface LogEntry {
  /** ISO 8601 with its offset from UTC. */
  readonly at: string;
  readonly kind: 'note' | 'decision' | 'revision';
  readonly text: string;
  /** Ids of what it is about, as they were then: either may be gone by now. */
  readonly option?: string;
  readonly surface?: SurfaceId;
}
