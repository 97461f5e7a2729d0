import { useState } from 'react';
import { SHOWROOM } from '../words/showroom';
import { useHoldLong } from './use-hold-long';

const HOLD_MS = 3000;

/** `short`: it was tapped, and what to do is said. `sure`: leaving without holding is asked for once more. */
type Step = 'hold' | 'short' | 'sure';

/**
 * Leaves the showroom mode when it is held for three seconds: nobody does that by chance. Who cannot hold gets there by two more answers,
 * each at another place, so that tapping again at the same one leaves nothing.
 */
export function LeaveButton({ onLeave }: { readonly onLeave: () => void }) {
  const [step, setStep] = useState<Step>('hold');
  const { left_ms, handlers } = useHoldLong(HOLD_MS, onLeave, () =>
    setStep((before) => (before === 'hold' ? 'short' : before)),
  );
  return (
    <div className="field">
      <button
        type="button"
        className="button button-outlined showroom-leave"
        aria-describedby="leave-how"
        {...handlers}
      >
        {left_ms === null ? SHOWROOM.leave : SHOWROOM.leaving(Math.ceil(left_ms / 1000))}
      </button>
      <p id="leave-how" className="small quiet">
        {SHOWROOM.leaveHow}
      </p>
      <div role="status" className="showroom-leave-other">
        {step === 'short' && <p className="small">{SHOWROOM.leaveShort}</p>}
        {step === 'sure' && <p className="small">{SHOWROOM.leaveSure}</p>}
      </div>
      {step === 'short' && (
        <button type="button" className="button button-outlined" onClick={() => setStep('sure')}>
          {SHOWROOM.leaveOther}
        </button>
      )}
      {step === 'sure' && (
        <div className="showroom-acts">
          {/* biome-ignore lint/a11y/noAutofocus: what was pressed is gone */}
          <button type="button" className="button button-strong" autoFocus onClick={() => setStep('hold')}>
            {SHOWROOM.stay}
          </button>
          <button type="button" className="button button-outlined" onClick={onLeave}>
            {SHOWROOM.leaveNow}
          </button>
        </div>
      )}
    </div>
  );
}
