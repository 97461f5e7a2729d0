import { Component, type ReactNode } from 'react';
import { PROBLEMS } from '../words/problems';
import { Locked } from './locked';
import './error-boundary.css';

interface ErrorBoundaryProps {
  readonly text: string;
  readonly onSave: () => void;
  /** Of a part that lies over the page: puts it away. */
  readonly onClose?: () => void;
  readonly children: ReactNode;
}

/** Keeps a bug in one part from taking the rest down: says so, saves the work, tries again. */
export class ErrorBoundary extends Component<ErrorBoundaryProps, { readonly broken: boolean }> {
  static override contextType = Locked;
  declare context: boolean;
  override state = { broken: false };

  static getDerivedStateFromError() {
    return { broken: true };
  }

  override render() {
    if (!this.state.broken) return this.props.children;
    const { text, onSave, onClose } = this.props;
    return (
      <div className={onClose ? 'broken broken-over' : 'broken'} role="alert">
        <p>{text}</p>
        <div className="broken-actions">
          {!this.context && (
            <button type="button" className="button button-strong" onClick={onSave}>
              {PROBLEMS.saveWork}
            </button>
          )}
          {onClose ? (
            <button type="button" className="button button-outlined" onClick={onClose}>
              {PROBLEMS.close}
            </button>
          ) : (
            <button type="button" className="button button-outlined" onClick={() => this.setState({ broken: false })}>
              {PROBLEMS.retry}
            </button>
          )}
          {/* What was not to be had once is not asked for again before that. */}
          <button type="button" className="button button-outlined" onClick={() => location.reload()}>
            {PROBLEMS.reload}
          </button>
        </div>
      </div>
    );
  }
}
