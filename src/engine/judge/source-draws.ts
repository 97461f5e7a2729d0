import { mulberry32 } from '../random';
import { normalTriples } from '../uncertainty/draws';

/** Errors and curves of one source, draw by draw. */
interface SourceDraws {
  /** Three standard normal numbers a draw. */
  readonly normals: Float64Array;
  /** Evenly spread over 0-1, in random order. */
  readonly picks: Float64Array;
}

/** Seeded by `source` alone: what is in it errs the same way whatever else is in the scheme. */
export function sourceDraws(source: string, draws: number, seed: number): SourceDraws {
  const own = hashOf(`${seed}|${source}`);
  // The even spread needs pairs, and more of them than directions.
  const rows = Math.max(LEAST_ROWS, draws + (draws % 2));
  return { normals: normalTriples(rows, own), picks: evenPicks(draws, mulberry32(~own)) };
}

const LEAST_ROWS = 6;

function evenPicks(count: number, uniform: () => number): Float64Array {
  const picks = Float64Array.from({ length: count }, (_, i) => (i + uniform()) / count);
  for (let i = count - 1; i > 0; i--) {
    const other = Math.floor(uniform() * (i + 1));
    [picks[i], picks[other]] = [picks[other]!, picks[i]!];
  }
  return picks;
}

/** FNV-1a, 32 bits (Fowler, Noll and Vo). */
function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash >>> 0;
}
