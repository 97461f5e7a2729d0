import { ChevronUp } from 'lucide-react';
import type { ReactNode } from 'react';
import { PICTURE } from '../words/picture';
import { useLate } from './use-late';
import { useResting } from './use-resting';
import './picture.css';

export interface PictureStageProps {
  /** The picture itself, or what stands in for it. */
  readonly picture: ReactNode;
  /** True while it is not what is asked for, or its light still gets finer. */
  readonly busy: boolean;
  /** What is asked for is still being worked out: the picture is that of before. */
  readonly isOld: boolean;
  /** A sentence on the picture about what it shows; null for none. */
  readonly note: string | null;
  /** What the picture shows that is not as usual. */
  readonly shown: ReactNode;
  /** One line over the picture, such as a lost graphics context; null for none. */
  readonly message: string | null;
  /** Names over the left and right half while two options are side by side. */
  readonly halves: readonly [left: string, right: string] | null;
  readonly foot: ReactNode;
}

/** What comes sooner than this needs no sign, which would only flicker. */
const PATIENCE_MS = 300;

/** The neutral surround, the picture in it, and the two rows at its foot, which leave a tab while the hand rests. */
export function PictureStage({ picture, busy, isOld, note, shown, message, halves, foot }: PictureStageProps) {
  const { resting, wake } = useResting();
  const isWaiting = useLate(isOld, PATIENCE_MS);
  return (
    <div className="stage" onPointerMove={wake} onPointerDown={wake}>
      {message && (
        <p className="stage-message" role="status">
          {message}
        </p>
      )}
      {halves && (
        <div className="stage-halves" aria-hidden="true">
          <span>{halves[0]}</span>
          <span>{halves[1]}</span>
        </div>
      )}
      <div className="stage-picture" aria-busy={busy}>
        {picture}
        <div className="stage-notes" role="status">
          {shown}
          {note && <p className="stage-note">{note}</p>}
          {isWaiting && <p className="stage-note">{PICTURE.working}</p>}
        </div>
      </div>
      <span className={`stage-tab ${resting ? 'is-resting' : ''}`} aria-hidden="true">
        {PICTURE.rows}
        <ChevronUp className="icon" />
      </span>
      <div className={`stage-foot ${resting ? 'is-resting' : ''}`}>{foot}</div>
    </div>
  );
}

/** Shown in the picture's place until the first light is there. */
export function PicturePlaceholder({ text }: { readonly text: string }) {
  return (
    <div className="stage-waiting" role="status">
      <p>{text}</p>
    </div>
  );
}
