import { surfaceName } from '../../engine/judge/surface-words';
import type { KeptSurface, LaidSurfaceOfLook } from '../../kitchen/carry/lay-look';
import { LOOK } from '../words/look';

interface LaidListProps {
  readonly laid: readonly LaidSurfaceOfLook[];
  readonly kept: readonly KeptSurface[];
}

/** Where the look could not be laid as it was: what stays, and what stands in for it. */
export function LaidList({ laid, kept }: LaidListProps) {
  const lines = [
    ...kept.map(({ surface, why }) => LOOK.kept(surfaceName(surface), LOOK.why[why])),
    ...laid
      .filter((one) => one.how === 'nearest')
      .map(({ surface, label, de00 }) => LOOK.nearest(surfaceName(surface), label, de00)),
    ...laid.filter(({ how }) => how === 'none').map(({ surface }) => LOOK.none(surfaceName(surface))),
  ];
  if (lines.length === 0) return null;
  return (
    <details className="fold">
      <summary>{LOOK.laidHow}</summary>
      <ul className="fold-list small">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </details>
  );
}
