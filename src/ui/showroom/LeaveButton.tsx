import { SHOWROOM } from '../words/showroom';
import { useHoldLong } from './use-hold-long';

const HOLD_MS = 3000;

/** Leaves the showroom mode when it is held for three seconds: nobody does that by chance. */
export function LeaveButton({ onLeave }: { readonly onLeave: () => void }) {
  const { left_ms, handlers } = useHoldLong(HOLD_MS, onLeave);
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
    </div>
  );
}
