import { Ellipsis } from 'lucide-react';
import { type ReactNode, useId, useState } from 'react';
import { SHOWROOM } from '../words/showroom';
import { LeaveButton } from './LeaveButton';

export interface StaffMenuProps {
  /** Null where the browser cannot. */
  readonly onFullScreen: (() => void) | null;
  readonly isFullScreen: boolean;
  readonly onLeave: () => void;
  readonly about: ReactNode;
}

/** What staff need while the mode is on, one step away. */
export function StaffMenu({ onFullScreen, isFullScreen, onLeave, about }: StaffMenuProps) {
  const panel = useId();
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" className="button" popoverTarget={panel} aria-expanded={open}>
        <Ellipsis className="icon" aria-hidden="true" />
        <span className="bar-word">{SHOWROOM.staffMenu}</span>
      </button>
      <section
        id={panel}
        popover="auto"
        className="more"
        aria-label={SHOWROOM.staffMenu}
        onToggle={(event) => setOpen(event.newState === 'open')}
      >
        {onFullScreen && (
          <button type="button" className="button button-outlined" onClick={onFullScreen}>
            {isFullScreen ? SHOWROOM.notFullScreen : SHOWROOM.fullScreen}
          </button>
        )}
        <LeaveButton onLeave={onLeave} />
        {about}
      </section>
    </>
  );
}
