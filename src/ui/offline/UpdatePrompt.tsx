import { OFFLINE } from '../words/offline';
import '../parts/banner.css';

export interface UpdatePromptProps {
  readonly isUnsaved: boolean;
  readonly onUpdate: () => void;
  readonly onLater: () => void;
}

/** Asks whether to go over to a newer version; nothing happens by itself. */
export function UpdatePrompt({ isUnsaved, onUpdate, onLater }: UpdatePromptProps) {
  return (
    <section className="banner" aria-label={OFFLINE.region}>
      <div className="banner-words" role="status">
        <p>
          <strong>{OFFLINE.ready}</strong>
        </p>
        <p>{isUnsaved ? OFFLINE.unsaved : OFFLINE.keepsWork}</p>
      </div>
      <button type="button" className="button button-strong" onClick={onUpdate}>
        {OFFLINE.update}
      </button>
      <button type="button" className="button button-outlined" onClick={onLater}>
        {OFFLINE.later}
      </button>
    </section>
  );
}
