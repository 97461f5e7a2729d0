import type { Severity } from './assessment';

/** Larger is worse. */
export const SEVERITY_RANK: Readonly<Record<Severity, number>> = { grave: 2, visible: 1, note: 0 };

/** The severity, or `most` where it would be worse than that. */
export const atMost = (most: Severity, severity: Severity): Severity =>
  SEVERITY_RANK[severity] > SEVERITY_RANK[most] ? most : severity;
