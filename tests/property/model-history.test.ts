import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  type History,
  record,
  redo,
  redoLabel,
  STEPS_KEPT,
  startHistory,
  undo,
  undoLabel,
} from '../../src/model/history';

interface Doc {
  readonly n: number;
}

it('behaves like a list of documents with a cursor', () => {
  // The naive model: every document ever current, and where we stand among them.
  fc.assert(
    fc.property(fc.array(fc.constantFrom('do', 'undo', 'redo'), { maxLength: 60 }), (moves) => {
      let history: History<Doc> = startHistory({ n: 0 });
      let list = [history.present];
      let cursor = 0;
      let count = 0;
      for (const move of moves) {
        if (move === 'do') {
          const next = { n: ++count };
          history = record(history, next, `step ${count}`);
          list = [...list.slice(0, cursor + 1), next];
          cursor++;
        } else if (move === 'undo') {
          history = undo(history);
          cursor = Math.max(0, cursor - 1);
        } else {
          history = redo(history);
          cursor = Math.min(list.length - 1, cursor + 1);
        }
        expect(history.present).toBe(list[cursor]);
        expect(undoLabel(history)).toBe(cursor > 0 ? `step ${list[cursor]!.n}` : null);
        expect(redoLabel(history)).toBe(cursor < list.length - 1 ? `step ${list[cursor + 1]!.n}` : null);
      }
    }),
  );
});

it('joins what continues into one step, ignores the same document, and keeps a bounded past', () => {
  const start = { n: 0 };
  let history = record(startHistory<Doc>(start), { n: 1 }, 'dim');
  history = record(history, { n: 2 }, 'dim', true);
  expect(history.past).toHaveLength(1);
  expect(undo(history).present).toBe(start);
  expect(record(history, history.present, 'nothing')).toBe(history);

  for (let n = 3; n < STEPS_KEPT + 10; n++) history = record(history, { n }, 'more');
  expect(history.past).toHaveLength(STEPS_KEPT);
});
