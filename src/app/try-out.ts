import type { StoreApi } from 'zustand/vanilla';
import type { Problem } from '../engine/result';
import { applyCommand } from '../model/apply-command';
import type { Command } from '../model/commands';
import { record } from '../model/history';
import { problemTold } from '../ui/parts/told';
import { type AppState, documentOf, withHistory } from './state';

/** What one can do with a change before it is made. Any other change of the document drops it. */
export interface TryActions {
  /** Puts a change on trial in place of one that is; what is wrong with it is told, and handed back. `option`: unless the chosen one. */
  readonly tryChange: (commands: readonly Command[], label: string, option?: string) => readonly Problem[];
  /** Makes the change: one step to undo. */
  readonly keepTry: () => void;
  readonly dropTry: () => void;
}

export function createTryActions(store: StoreApi<AppState>): TryActions {
  return {
    tryChange: (commands, label, option) => {
      const state = store.getState();
      const tried = applyCommand(documentOf(state), { kind: 'together', label, commands });
      if (!tried.ok) {
        const { problem, more } = tried;
        store.setState({ told: problemTold(problem, more) });
        return [problem, ...(more ?? [])];
      }
      store.setState({
        tryOut: { project: tried.value, label, option: option ?? state.option },
        drawer: null,
        pointed: [],
      });
      return [];
    },
    keepTry: () => {
      const state = store.getState();
      if (!state.tryOut) return;
      const { project, label } = state.tryOut;
      store.setState(withHistory(state, record(state.history, project, label)));
    },
    dropTry: () => store.setState({ tryOut: null }),
  };
}
