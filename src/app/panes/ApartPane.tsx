import { type ReactNode, Suspense } from 'react';
import { ErrorBoundary } from '../../ui/parts/ErrorBoundary';
import { PROBLEMS } from '../../ui/words/problems';
import { useApp } from '../context';
import { saveProject } from '../files';

interface ApartPaneProps {
  /** Puts it away, where it broke. */
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** A pane over the page whose code is fetched when it is wanted: where that fails, or it breaks, the page below goes on. */
export function ApartPane({ onClose, children }: ApartPaneProps) {
  const { store } = useApp();
  return (
    <ErrorBoundary text={PROBLEMS.paneBroke} onSave={() => saveProject(store)} onClose={onClose}>
      <Suspense fallback={null}>{children}</Suspense>
    </ErrorBoundary>
  );
}
