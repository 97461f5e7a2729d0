import { useEffect, useRef } from 'react';
import { QUESTIONS } from '../words/questions';

interface LeaveQuestionProps {
  readonly onLeave: () => void;
  readonly onStay: () => void;
}

/** Asks before answers are dropped, in place of the ways on; takes the focus. */
export function LeaveQuestion({ onLeave, onStay }: LeaveQuestionProps) {
  const stay = useRef<HTMLButtonElement>(null);
  useEffect(() => stay.current?.focus(), []);
  return (
    <div className="questions-foot" role="alert">
      <p>
        <strong>{QUESTIONS.leave}</strong>
      </p>
      <span className="questions-ways">
        <button ref={stay} type="button" className="button button-strong" onClick={onStay}>
          {QUESTIONS.leaveNo}
        </button>
        <button type="button" className="button button-outlined" onClick={onLeave}>
          {QUESTIONS.leaveYes}
        </button>
      </span>
    </div>
  );
}
