import { Redo2, Undo2 } from 'lucide-react';
import { BAR } from '../words/top-bar';

export interface UndoButtonsProps {
  /** What undo and redo would do, or null when there is nothing. */
  readonly undoLabel: string | null;
  readonly redoLabel: string | null;
  readonly onUndo: () => void;
  readonly onRedo: () => void;
}

/** One step back, one forward again, each with what it would change in its name. */
export function UndoButtons({ undoLabel, redoLabel, onUndo, onRedo }: UndoButtonsProps) {
  return (
    <>
      <button
        type="button"
        className="button"
        disabled={undoLabel === null}
        title={undoLabel === null ? BAR.undoNothing : BAR.undoOf(undoLabel)}
        aria-label={undoLabel === null ? BAR.undo : BAR.undoOf(undoLabel)}
        onClick={onUndo}
      >
        <Undo2 className="icon" aria-hidden="true" />
        <span className="bar-word">{BAR.undo}</span>
      </button>
      <button
        type="button"
        className="button"
        disabled={redoLabel === null}
        title={redoLabel === null ? BAR.redoNothing : BAR.redoOf(redoLabel)}
        aria-label={redoLabel === null ? BAR.redo : BAR.redoOf(redoLabel)}
        onClick={onRedo}
      >
        <Redo2 className="icon" aria-hidden="true" />
        <span className="bar-word">{BAR.redo}</span>
      </button>
    </>
  );
}
