import { X } from 'lucide-react';
import { use } from 'react';
import type { Problem } from '../../engine/result';
import { PROBLEMS, placeWords, problemWords } from '../words/problems';
import { retold } from '../words/spoken';
import { Locked } from './locked';
import { RefusalWords } from './RefusalWords';
import { SeverityMark } from './SeverityMark';
import type { Told } from './told';
import './banner.css';

export interface BannerProps {
  readonly told: Told;
  readonly onDismiss: () => void;
  readonly onSave: () => void;
}

/** What went wrong, or what was done to a file on the way in: where, and what to do; stays until it is dismissed. */
export function Banner({ told, onDismiss, onSave }: BannerProps) {
  const [first, ...more] = told.list;
  const isProblem = told.kind !== 'notice';
  const isLocked = use(Locked);
  return (
    <div className="banner" role={isProblem ? 'alert' : 'status'}>
      <SeverityMark severity={isProblem ? 'grave' : 'note'} />
      <div className="banner-words">
        {told.kind === 'refused' ? <RefusalWords list={told.list} /> : <Words problem={first} isStrong={isProblem} />}
        {told.kind !== 'refused' && more.length > 0 && (
          <details>
            <summary>{PROBLEMS.more(more.length)}</summary>
            <ul className="banner-more">
              {more.map((problem) => (
                <li key={`${problem.at?.path}-${problem.text}`}>
                  <Words problem={problem} isStrong={false} />
                </li>
              ))}
            </ul>
          </details>
        )}
      </div>
      {told.kind === 'problem' && !isLocked && (
        <button type="button" className="button button-outlined" onClick={onSave}>
          {PROBLEMS.saveWork}
        </button>
      )}
      <button type="button" className="button" onClick={onDismiss} aria-label={PROBLEMS.dismiss}>
        <X className="icon" aria-hidden="true" />
      </button>
    </div>
  );
}

function Words({ problem, isStrong }: { readonly problem: Problem; readonly isStrong: boolean }) {
  const place = placeWords(problem);
  return (
    <>
      <p>
        {isStrong ? <strong>{problemWords(problem)}</strong> : problemWords(problem)}
        {place && <span className="quiet"> {place}</span>}
      </p>
      <p>{retold(problem.remedy)}</p>
    </>
  );
}
