import { X } from 'lucide-react';
import type { Problem } from '../../engine/result';
import { PROBLEMS, placeWords } from '../words/problems';
import { SeverityMark } from './SeverityMark';
import './problem-banner.css';

export interface ProblemBannerProps {
  readonly problem: Problem;
  readonly onDismiss: () => void;
  readonly onSave: () => void;
}

/** What went wrong, where, and what to do; stays until it is dismissed. */
export function ProblemBanner({ problem, onDismiss, onSave }: ProblemBannerProps) {
  const place = placeWords(problem.at);
  return (
    <div className="problem" role="alert">
      <SeverityMark severity="grave" />
      <div className="problem-words">
        <p>
          <strong>{problem.text}</strong>
          {place && <span className="quiet"> {place}</span>}
        </p>
        <p>{problem.remedy}</p>
      </div>
      <button type="button" className="button button-outlined" onClick={onSave}>
        {PROBLEMS.saveWork}
      </button>
      <button type="button" className="button" onClick={onDismiss} aria-label={PROBLEMS.dismiss}>
        <X className="icon" aria-hidden="true" />
      </button>
    </div>
  );
}
