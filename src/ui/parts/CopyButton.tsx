import { use, useState } from 'react';
import { COPY } from '../words/copy';
import { Locked } from './locked';

interface CopyButtonProps {
  readonly label: string;
  /** Said once the text is on the clipboard. */
  readonly copied: string;
  readonly text: () => string;
  readonly disabled?: boolean;
}

/** Puts a text on the clipboard and says what came of it. */
export function CopyButton({ label, copied, text, disabled }: CopyButtonProps) {
  const [told, setTold] = useState('');
  // The clipboard is the next customer's, too.
  if (use(Locked)) return null;
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(text());
      setTold(copied);
    } catch {
      setTold(COPY.failed);
    }
  };
  return (
    <div className="copy">
      <button type="button" className="button button-outlined" disabled={disabled} onClick={copy}>
        {label}
      </button>
      <span className="small" role="status">
        {told}
      </span>
    </div>
  );
}
