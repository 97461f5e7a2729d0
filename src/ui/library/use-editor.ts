import { useRef, useState } from 'react';
import type { Library } from '../../model/library';
import type { Finish } from '../../model/project';
import { LIBRARIES } from '../words/libraries';
import { problemWords } from '../words/problems';
import { type Changed, type Held, type LibraryDoors, type LibraryStep, PROJECT_LIBRARY } from './library-props';

/** Changes of libraries, kept at once, each of which can be undone while the page is open. */
export interface LibraryEditor {
  /** What was last done, undone or refused, for whom does not see it. */
  readonly said: string;
  /** Why the last change was not made; null where it was. */
  readonly refused: string | null;
  /** What undo would take back; null where there is nothing. */
  readonly undoLabel: string | null;
  readonly undo: () => Promise<void>;
  /** Each of these: true where it was done. */
  readonly setFinishes: (library: Library, finishes: readonly Finish[], label: string) => Promise<boolean>;
  readonly rename: (library: Library, name: string, note: string) => Promise<boolean>;
  readonly create: (library: Library, label: string) => Promise<boolean>;
  readonly remove: (library: Library) => Promise<boolean>;
  /** The library that was removed by the last change; null where it was another. */
  readonly removed: string | null;
  readonly say: (words: string) => void;
  /** Goes on, unless something typed would be lost: that asks first. */
  readonly leave: (act: () => void) => void;
  readonly held: Held;
}

export function useEditor({ onPut, onRemove, onProject, steps, onSteps }: LibraryDoors): LibraryEditor {
  const [said, say] = useState('');
  const held = useRef<((act: () => void) => void) | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const finish = (changed: Changed, step: LibraryStep): boolean => {
    setRefused(changed === 'kept' ? null : changed === 'failed' ? LIBRARIES.notKept : LIBRARIES.changedElsewhere);
    if (changed !== 'kept') return false;
    onSteps((before) => [...before, step]);
    say(LIBRARIES.done(step.label));
    return true;
  };
  const replace = async (before: Library, after: Library, label: string) =>
    finish(await onPut(after, before), { label, undo: () => onPut(before, after) });
  const last = steps.at(-1);
  return {
    said,
    refused,
    say,
    held,
    leave: (act) => (held.current ? held.current(act) : act()),
    undoLabel: last?.label ?? null,
    removed: last?.removed ?? null,
    undo: async () => {
      if (!last) return;
      const undone = await last.undo();
      setRefused(undone === 'kept' ? null : undone === 'failed' ? LIBRARIES.notKept : LIBRARIES.cannotUndo(last.label));
      if (undone === 'failed') return;
      // What cannot be taken back any more is no step.
      onSteps((before) => before.filter((step) => step !== last));
      if (undone === 'kept') say(LIBRARIES.undone(last.label));
    },
    setFinishes: async (library, finishes, label) => {
      if (library.id !== PROJECT_LIBRARY) return replace(library, { ...library, finishes }, label);
      const step = onProject(finishes, label);
      if ('problem' in step) {
        setRefused(`${problemWords(step.problem)} ${step.problem.remedy}`);
        return false;
      }
      return finish('kept', { label, undo: async () => (step.undo() ? 'kept' : 'is-another') });
    },
    rename: (library, name, note) => replace(library, { ...library, name, note }, LIBRARIES.labels.rename(name)),
    create: async (library, label) => finish(await onPut(library, null), { label, undo: () => onRemove(library) }),
    remove: async (library) =>
      finish(await onRemove(library), {
        label: LIBRARIES.labels.remove(library.name),
        removed: library.name,
        undo: () => onPut(library, null),
      }),
  };
}
