import type { LightPart } from '../../kitchen/study/light-parts';
import { percent } from '../words/numbers';
import { READING } from '../words/reading';
import { lightFromName } from './light-words';

/** More rows than this say no more. */
const MOST_ROWS = 5;
const LEAST_REST = 0.005;

/** The light at a point by where it comes from: the largest parts as bars, then the rest. */
export function LightBars({ parts }: { readonly parts: readonly LightPart[] }) {
  const shown = parts.slice(0, MOST_ROWS).map(({ from, share }) => ({ name: lightFromName(from), share }));
  const rest = parts.slice(MOST_ROWS).reduce((sum, { share }) => sum + share, 0);
  const rows = rest >= LEAST_REST ? [...shown, { name: READING.rest, share: rest }] : shown;
  return (
    <ul className="light-bars">
      {rows.map(({ name, share }) => (
        <li key={name}>
          <span>{name}</span>
          <span className="light-bar" aria-hidden="true">
            <span style={{ width: percent(share) }} />
          </span>
          <span className="light-share">{percent(share)}</span>
        </li>
      ))}
    </ul>
  );
}
