import type { PairFinding, PairVerdict } from '../../engine/judge/assessment';
import { componentPhrase, sentenceCase } from '../../engine/judge/surface-words';
import type { SurfaceId } from '../../engine/surface';
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
  const fine = pairs.filter((pair) => FINE.includes(pair.verdict) || isStep(pair));
  if (fine.length === 0) return null;
  return (
    <details className="fold">
      <summary>{FINDINGS.fine(fine.length)}</summary>
      <ul className="fold-list small">
        {fine.map((pair) => (
          <li
            key={`${pair.a.surface}-${pair.a.component}-${pair.b.surface}-${pair.b.component}-${pair.basis}`}
            onPointerEnter={() => onPoint([pair.a.surface, pair.b.surface])}
            onPointerLeave={() => onPoint([])}
          >
            {sentenceCase(componentPhrase(pair.a.component, [pair.a.surface]).text)} and{' '}
            {componentPhrase(pair.b.component, [pair.b.surface]).text}{' '}
            {isStep(pair) ? FINDINGS.clearStep : PAIR_WORDS[pair.verdict]}{' '}
            <span className="quiet">
              ({decimal(pair.de00)} dE00, {BASIS_WORDS[pair.basis]})
            </span>
          </li>
        ))}
      </ul>
    </details>
  );
}
