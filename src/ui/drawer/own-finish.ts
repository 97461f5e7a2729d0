import type { FinishClass, Provenance } from '../../engine/finish/types';
import { failure, type Problem, type Result, success } from '../../engine/result';
import { parseColorValue } from '../../io/color-value';
import type { Finish } from '../../model/project';
import { TYPE_IN } from '../words/drawer';

export type OwnKind = 'lab' | 'hex' | 'lrv';
export type OwnSheen = 'flat' | 'satin' | 'gloss';

/** What somebody typed about a finish that is not in the library. */
export interface OwnFinishEntry {
  readonly kind: OwnKind;
  readonly value: string;
  readonly name: string;
  readonly class: FinishClass;
  readonly sheen: OwnSheen;
  /** Counts for Lab numbers only; a hex code is always a screen color, an LRV with a word is judged by eye. */
  readonly provenance: Provenance;
  /** Size of one piece, mm, where the finish comes in tiles. */
  readonly piece_mm?: Finish['piece_mm'];
}

/** Middle of the MPI gloss levels that go by these names, gloss units at 60 degrees. */
const GLOSS_GU: { readonly [S in OwnSheen]: number } = { flat: 4, satin: 28, gloss: 78 };

/** The sheen word whose level lies nearest, on a scale where doubling counts as one step. */
export function sheenNear(glossGu: number): OwnSheen {
  const away = (sheen: OwnSheen) => Math.abs(Math.log((glossGu + 1) / (GLOSS_GU[sheen] + 1)));
  return (Object.keys(GLOSS_GU) as OwnSheen[]).reduce((best, sheen) => (away(sheen) < away(best) ? sheen : best));
}

/** A finish of one plain color from what was typed, or what is wrong with it. */
export function ownFinish(entry: OwnFinishEntry, library: readonly Finish[]): Result<Finish> {
  const typed = parseColorValue(withPrefix(entry.kind, entry.value));
  if (!typed.ok) return failure(withoutPrefix(entry, typed.problem));
  const id = freeId(library);
  return success({
    id,
    label: `${entry.name.trim() || TYPE_IN.unnamed}, ${id}`,
    class: entry.class,
    gloss_gu: GLOSS_GU[entry.sheen],
    components: [{ role: 'base', share: 1, color: typed.value.color }],
    pattern: { kind: 'plain' },
    variation: 'V0',
    ...(entry.piece_mm && { piece_mm: entry.piece_mm }),
    provenance: entry.kind === 'lab' ? entry.provenance : typed.value.provenance,
  });
}

/** The kind is chosen apart, so the numbers alone are enough; a value typed with its prefix is left as it is. */
function withPrefix(kind: OwnKind, value: string): string {
  const text = value.trim();
  if (/^(lab|munsell|lrv|hex)\s*:/i.test(text)) return text;
  return `${kind}:${text}`;
}

/** The problem in terms of what was typed: without the prefix that stands for the kind. */
function withoutPrefix({ kind, value }: OwnFinishEntry, problem: Problem): Problem {
  const bare = (text: string) => text.replaceAll(`${kind}:`, '');
  return value.includes(':') ? problem : { ...problem, text: bare(problem.text), remedy: bare(problem.remedy) };
}

function freeId(library: readonly Finish[]): string {
  const taken = new Set(library.map((finish) => finish.id));
  for (let n = 1; ; n++) {
    const id = `OWN-${String(n).padStart(2, '0')}`;
    if (!taken.has(id)) return id;
  }
}
