import { BAR } from '../words/top-bar';
import { VIEW } from '../words/view';
import type { ShownAs } from './ViewPanel';
import './view-panel.css';

interface ModeNoticeProps {
  readonly shownAs: ShownAs;
  readonly marksClipped: boolean;
  /** The option or the light that is shown for as long as it is held. */
  readonly held: string | null;
  readonly onUsual: () => void;
}

/** Over the picture while it shows something else than the colors of what is chosen: what, and the way back. */
export function ModeNotice({ shownAs, marksClipped, held, onUsual }: ModeNoticeProps) {
  const told = [VIEW.told[shownAs], marksClipped ? VIEW.clippedTold : null].filter((one) => one !== null);
  return (
    <>
      {held !== null && <p className="stage-note">{BAR.holding(held)}</p>}
      {told.length > 0 && (
        <div className="stage-mode">
          <p>{told.join(' ')}</p>
          <button type="button" className="button button-outlined" onClick={onUsual}>
            {shownAs === 'color' ? VIEW.noMarks : VIEW.toColor}
          </button>
        </div>
      )}
    </>
  );
}
