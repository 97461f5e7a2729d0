import { sentenceCase } from '../../engine/judge/surface-words';
import type { SurfaceId } from '../../engine/surface';
import { laidSentences } from '../../kitchen/carry/laid-words';
import type { KeptSurface, LaidSurfaceOfLook } from '../../kitchen/carry/lay-look';
import { surfacesPhrase } from '../words/engine-words';
import { LOOK } from '../words/look';
import { retold } from '../words/spoken';

interface LaidListProps {
  readonly laid: readonly LaidSurfaceOfLook[];
  readonly kept: readonly KeptSurface[];
}

/** Where the look could not be laid as it was: what stays, and what stands in for it. What is nowhere near stands open. */
export function LaidList({ laid, kept }: LaidListProps) {
  const missing = laidSentences(laid.filter(({ how }) => how === 'none'));
  const lines = [...keptLines(kept), ...laidSentences(laid.filter(({ how }) => how === 'nearest'))];
  return (
    <>
      {missing.map((line) => (
        <p key={line} className="small">
          {retold(line)}
        </p>
      ))}
      {lines.length > 0 && (
        <details className="fold">
          <summary>{LOOK.laidHow}</summary>
          <ul className="fold-list small">
            {lines.map((line) => (
              <li key={line}>{retold(line)}</li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}

function keptLines(kept: readonly KeptSurface[]): readonly string[] {
  const reasons = [...new Set(kept.map(({ why }) => why))];
  return reasons.map((reason) => {
    const surfaces: SurfaceId[] = kept.flatMap(({ surface, why }) => (why === reason ? [surface] : []));
    const { text, plural } = surfacesPhrase(surfaces);
    return LOOK.kept(sentenceCase(text), plural, LOOK.why[reason]);
  });
}
