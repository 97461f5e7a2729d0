import type { MeasuredPart, PartKind } from './types';

/** Thinner is nothing that could be made, m. */
const LEAST = 1e-4;

/** One part, m. */
export interface Part {
  readonly kind: PartKind;
  readonly length: number;
  readonly width: number;
}

/** Parts of one kind and size counted together, in the order of the first of them. */
export function grouped(parts: readonly Part[]): MeasuredPart[] {
  const groups = new Map<string, MeasuredPart>();
  for (const { kind, length, width } of parts) {
    const size = { length_mm: toMm(length), width_mm: toMm(width) };
    const key = `${kind} ${size.length_mm} ${size.width_mm}`;
    groups.set(key, { kind, ...size, count: (groups.get(key)?.count ?? 0) + 1 });
  }
  return [...groups.values()];
}

/** Parts that can be made: those of some width and length. */
export const real = <P extends Part>(parts: readonly P[]): P[] =>
  parts.filter(({ length, width }) => length > LEAST && width > LEAST);

/** Metres as millimetres to a tenth. */
export const toMm = (m: number): number => Math.round(m * 1e4) / 10;
