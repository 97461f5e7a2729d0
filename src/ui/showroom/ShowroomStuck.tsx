import { useEffect } from 'react';
import { SHOWROOM } from '../words/showroom';
import { LeaveButton } from './LeaveButton';
import '../styles/tokens.css';
import '../styles/base.css';
import '../styles/controls.css';
import '../parts/error-boundary.css';
import './showroom.css';

interface ShowroomStuckProps {
  readonly why: 'unanswered' | 'unreadable';
  readonly onRetry: () => void;
  readonly onLeave: () => void;
}

/** It is tried again by itself after this long, ms: nobody may be there to press a button. */
const RETRY_MS = 20_000;

/** Shown alone where the mode is on and cannot begin. */
export function ShowroomStuck({ why, onRetry, onLeave }: ShowroomStuckProps) {
  useEffect(() => {
    if (why === 'unreadable') return;
    const timer = window.setTimeout(onRetry, RETRY_MS);
    return () => window.clearTimeout(timer);
  }, [why, onRetry]);
  return (
    <main className="broken">
      <h1>{SHOWROOM.stuck}</h1>
      <p role="alert">{SHOWROOM.stuckWhy[why]}</p>
      <div className="broken-actions">
        <button type="button" className="button button-strong" onClick={onRetry}>
          {SHOWROOM.stuckRetry}
        </button>
      </div>
      <LeaveButton onLeave={onLeave} />
    </main>
  );
}
