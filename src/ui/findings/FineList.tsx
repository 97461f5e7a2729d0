import type { Basis, PairFinding, PairVerdict } from '../../engine/judge/assessment';
import { sentenceCase } from '../../engine/judge/surface-words';
import type { SurfaceId } from '../../engine/surface';
import { componentPhrase } from '../words/engine-words';
import { BASIS_WORDS, FINDINGS, PAIR_WORDS } from '../words/findings';
import { decimal } from '../words/numbers';

interface FineListProps {
  readonly pairs: readonly PairFinding[];
  readonly onPoint: (surfaces: readonly SurfaceId[]) => void;
}

const FINE: readonly PairVerdict[] = ['same', 'match', 'agree', 'relates'];

/** Whites that nothing relates but a clear step in lightness. */
const isStep = (pair: PairFinding): boolean => pair.verdict === 'none';

/** What was looked at and found fine, folded away. */
export function FineList({ pairs, onPoint }: FineListProps) {
  const fine = onBothBases(pairs.filter((pair) => FINE.includes(pair.verdict) || isStep(pair)));
  if (fine.length === 0) return null;
  return (
    <details className="fold">
      <summary>{FINDINGS.fine(fine.length)}</summary>
      <ul className="fold-list small">
        {fine.map(({ key, pair, bases }) => (
          <li
            key={key}
            onPointerEnter={() => onPoint([pair.a.surface, pair.b.surface])}
            onPointerLeave={() => onPoint([])}
          >
            {FINDINGS.finePair(
              sentenceCase(componentPhrase(pair.a.component, [pair.a.surface]).text),
              componentPhrase(pair.b.component, [pair.b.surface]).text,
              isStep(pair) ? FINDINGS.clearStep : PAIR_WORDS[pair.verdict],
            )}{' '}
            <span className="quiet">
              ({bases.map(([basis, de00]) => FINDINGS.fineBasis(decimal(de00), BASIS_WORDS[basis])).join('; ')})
            </span>
          </li>
        ))}
      </ul>
    </details>
  );
}

interface FinePair {
  readonly key: string;
  readonly pair: PairFinding;
  /** On what it was judged so, with the difference there. */
  readonly bases: readonly (readonly [basis: Basis, de00: number])[];
}

/** Two colors that come out alike as samples and in place, once. */
function onBothBases(pairs: readonly PairFinding[]): FinePair[] {
  const found = new Map<string, FinePair>();
  for (const pair of pairs) {
    const { a, b, verdict, basis, de00 } = pair;
    const key = [a.surface, a.component, b.surface, b.component, verdict].join('-');
    const known = found.get(key);
    found.set(key, { key, pair: known?.pair ?? pair, bases: [...(known?.bases ?? []), [basis, de00]] });
  }
  return [...found.values()];
}
