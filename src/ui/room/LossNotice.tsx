import type { Loss } from '../../model/new-kitchen/losses';
import { LOSSES, lossSentences } from '../words/losses';

interface LossNoticeProps {
  readonly losses: readonly Loss[];
  readonly onDismiss: () => void;
}

/** What the last changes of the kitchen could not keep; read out as it comes. */
export function LossNotice({ losses, onDismiss }: LossNoticeProps) {
  const sentences = lossSentences(losses);
  return (
    <div role="status" className="loss-status">
      {sentences.length > 0 && (
        <div className="loss-notice small">
          <p>
            <strong>{LOSSES.title}</strong> {sentences.join(' ')}
          </p>
          <button type="button" className="button button-outlined" onClick={onDismiss}>
            {LOSSES.dismiss}
          </button>
        </div>
      )}
    </div>
  );
}
