import { useRef, useState } from 'react';
import type { Library } from '../../model/library';
import type { Finish } from '../../model/project';
import { LIBRARIES } from '../words/libraries';
import { problemWords } from '../words/problems';
import { type Held, type LibraryDoors, PROJECT_LIBRARY } from './library-props';

interface Step {
  readonly label: string;
  /** Name of the library that it removed. */
  readonly removed?: string;
  readonly undo: () => Promise<boolean>;
}

/** Changes of libraries, kept at once, each of which can be undone while the dialog is open. */
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

export function useEditor({ onPut, onRemove, onProject, onUndoProject }: LibraryDoors): LibraryEditor {
  const [steps, setSteps] = useState<readonly Step[]>([]);
  const [said, say] = useState('');
  const held = useRef<((act: () => void) => void) | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const finish = (step: Step | null, why: string = LIBRARIES.notKept): boolean => {
    setRefused(step ? null : why);
    if (!step) return false;
    setSteps((before) => [...before, step]);
    say(LIBRARIES.done(step.label));
    return true;
  };
  const replace = async (before: Library, after: Library, label: string) =>
    finish((await onPut(after)) ? { label, undo: () => onPut(before) } : null);
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
      const isDone = await last.undo();
      setRefused(isDone ? null : LIBRARIES.notKept);
      if (!isDone) return;
      setSteps((before) => before.filter((step) => step !== last));
      say(LIBRARIES.undone(last.label));
    },
    setFinishes: async (library, finishes, label) => {
      if (library.id !== PROJECT_LIBRARY) return replace(library, { ...library, finishes }, label);
      const problem = onProject(finishes, label);
      if (problem) return finish(null, `${problemWords(problem)} ${problem.remedy}`);
      return finish({
        label,
        undo: async () => {
          onUndoProject();
          return true;
        },
      });
    },
    rename: (library, name, note) => replace(library, { ...library, name, note }, LIBRARIES.labels.rename(name)),
    create: async (library, label) =>
      finish((await onPut(library)) ? { label, undo: async () => (await onRemove(library.id)) !== null } : null),
    remove: async (library) => {
      const bringBack = await onRemove(library.id);
      return finish(
        bringBack && { label: LIBRARIES.labels.remove(library.name), removed: library.name, undo: bringBack },
      );
    },
  };
}
