import { Component, type ReactNode } from 'react';
import { PROBLEMS } from '../words/problems';
import { Locked } from './locked';
import './error-boundary.css';

interface ErrorBoundaryProps {
  readonly text: string;
  readonly onSave: () => void;
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
    return (
      <div className="broken" role="alert">
        <p>{this.props.text}</p>
        <div className="broken-actions">
          {!this.context && (
            <button type="button" className="button button-strong" onClick={this.props.onSave}>
              {PROBLEMS.saveWork}
            </button>
          )}
          <button type="button" className="button button-outlined" onClick={() => this.setState({ broken: false })}>
            {PROBLEMS.retry}
          </button>
        </div>
      </div>
    );
  }
}
