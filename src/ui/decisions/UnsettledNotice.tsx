import { useEffect, useRef } from 'react';
import type { Unsettled } from '../../engine/judge/unsettled';
import type { SurfaceId } from '../../engine/surface';
import { pointing } from '../parts/pointing';
import { SeverityMark } from '../parts/SeverityMark';
import { DECISIONS } from '../words/decisions';
import { surfaceName } from '../words/engine-words';
import { retold } from '../words/spoken';
import './decisions.css';

interface UnsettledNoticeProps {
  readonly changed: readonly SurfaceId[];
  readonly found: readonly Unsettled[];
  readonly onOpen: (surface: SurfaceId) => void;
  readonly onPoint: (surfaces: readonly SurfaceId[]) => void;
  readonly onLeave: () => void;
}

/** What a change has unsettled among later decisions, with the reason and a way to each; nothing is changed by itself. */
export function UnsettledNotice({ changed, found, onOpen, onPoint, onLeave }: UnsettledNoticeProps) {
  const notice = useRef<HTMLElement>(null);
  // It comes at the top of a list that may be scrolled.
  // Some browsers answer a scroll with a promise, which is no way to clean up.
  useEffect(() => {
    notice.current?.scrollIntoView({ block: 'nearest' });
  }, []);
  return (
    <section ref={notice} className="unsettled" role="status">
      <p className="unsettled-head">
        <SeverityMark severity="visible" /> {DECISIONS.unsettled(changed, found.length)}
      </p>
      <ul>
        {found.map(({ surface, warnings }) => (
          <li key={surface} {...pointing([surface], onPoint)}>
            <p className="small">
              <b>{surfaceName(surface)}.</b> {warnings.map(({ text }) => retold(text)).join(' ')}
            </p>
            <button type="button" className="button button-plain" onClick={() => onOpen(surface)}>
              {DECISIONS.of(DECISIONS.change, surfaceName(surface))}
            </button>
          </li>
        ))}
      </ul>
      <button type="button" className="button button-outlined" onClick={onLeave}>
        {DECISIONS.leave}
      </button>
    </section>
  );
}
