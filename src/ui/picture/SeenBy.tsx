import { useId } from 'react';
import { SEEN_BY, type SeenBy as Seer } from '../../kitchen/seen-by';
import { SEEN_BY_WORDS } from '../words/seen-by';
import './seen-by.css';

export interface SeenByProps {
  readonly seenBy: Seer;
  /** The light on screen is daylight, to which a camera is set and eyes are used. */
  readonly isDaylight: boolean;
  readonly onSeenBy: (seenBy: Seer) => void;
}

/** Whose sight the picture shows: each choice in full words, one below the other. */
export function SeenBy({ seenBy, isDaylight, onSeenBy }: SeenByProps) {
  const name = useId();
  const note = useId();
  return (
    <fieldset className="seen-by" aria-describedby={note}>
      <legend>{SEEN_BY_WORDS.label}</legend>
      {SEEN_BY.map((one) => (
        <label key={one} className="check">
          <input type="radio" name={name} value={one} checked={one === seenBy} onChange={() => onSeenBy(one)} />
          {SEEN_BY_WORDS.choices[one]}
        </label>
      ))}
      <p id={note} className="small quiet">
        {SEEN_BY_WORDS.note}
        {isDaylight && ` ${SEEN_BY_WORDS.daylight}`}
      </p>
    </fieldset>
  );
}

/** Over the picture while it is not that of the usual eye: whose it is, and that findings are not. */
export function SeenByNotice({ seenBy }: Pick<SeenByProps, 'seenBy'>) {
  const told = SEEN_BY_WORDS.told[seenBy];
  return <div role="status">{told !== null && <p className="stage-seen-by">{told}</p>}</div>;
}
