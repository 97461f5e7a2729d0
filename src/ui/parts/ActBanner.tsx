import { X } from 'lucide-react';
import { PROBLEMS } from '../words/problems';
import { SeverityMark } from './SeverityMark';
import './banner.css';

export interface ActBannerProps {
  readonly text: string;
  readonly remedy?: string;
  /** What only a program's maker wants to know. */
  readonly detail?: string | null;
  /** Something is wrong, or about to be. */
  readonly isGrave: boolean;
  readonly acts: readonly { readonly name: string; readonly act: () => void }[];
  /** Null: it stays until something is done about it. */
  readonly onDismiss: (() => void) | null;
}

/** Something to be told over the page, and what can be done about it there and then. */
export function ActBanner({ text, remedy, detail, isGrave, acts, onDismiss }: ActBannerProps) {
  return (
    <div className="banner" role={isGrave ? 'alert' : 'status'}>
      <SeverityMark severity={isGrave ? 'grave' : 'note'} />
      <div className="banner-words">
        <p>{isGrave ? <strong>{text}</strong> : text}</p>
        {remedy && <p>{remedy}</p>}
        {detail && <p className="small quiet">{detail}</p>}
      </div>
      {acts.map(({ name, act }) => (
        <button key={name} type="button" className="button button-outlined" onClick={act}>
          {name}
        </button>
      ))}
      {onDismiss && (
        <button type="button" className="button" onClick={onDismiss} aria-label={PROBLEMS.dismiss}>
          <X className="icon" aria-hidden="true" />
        </button>
      )}
    </div>
  );
}
