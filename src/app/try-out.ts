import type { StoreApi } from 'zustand/vanilla';
import type { Assessment } from '../engine/judge/assessment';
import type { Problem } from '../engine/result';
import type { SurfaceId } from '../engine/surface';
import { applyCommand } from '../model/apply-command';
import type { Command } from '../model/commands';
import { record } from '../model/history';
import { takingIn } from '../model/take-in';
import { refusalTold } from '../ui/parts/told';
import { offeredIn } from './offered';
import { type AppState, documentOf, withHistory } from './state';

/** Where a change is tried, and what becomes of the drawer. */
export interface TryPlace {
  /** Unless the chosen one. */
  readonly option?: string;
  /** The drawer stays open: one goes on trying from it. */
  readonly keepsDrawer?: boolean;
  /** The focus stays where it is, too, instead of going to what keeps or drops the trial. */
  readonly keepsFocus?: boolean;
  /** The drawer closes for as long as the trial lasts, and opens again when it is dropped. */
  readonly reopens?: SurfaceId;
}

/** What one can do with a change before it is made. Any other change of the document drops it. */
export interface TryActions {
  /** Puts a change on trial in place of one that is; what is wrong with it is told, and handed back. */
  readonly tryChange: (commands: readonly Command[], label: string, place?: TryPlace) => readonly Problem[];
  /** Makes the change: one step to undo. */
  readonly keepTry: () => void;
  readonly dropTry: () => void;
}

export function createTryActions(store: StoreApi<AppState>): TryActions {
  return {
    tryChange: (commands, label, { option, keepsDrawer = false, keepsFocus = false, reopens } = {}) => {
      const state = store.getState();
      const project = documentOf(state);
      const together: Command = { kind: 'together', label, commands };
      const tried = applyCommand(project, takingIn(project, together, label, offeredIn(state, project)));
      if (!tried.ok) {
        const { problem, more } = tried;
        store.setState({ told: refusalTold(problem, more) });
        return [problem, ...(more ?? [])];
      }
      const id = option ?? state.option;
      const before = findingsWithout(state, id);
      store.setState({
        tryOut: { project: tried.value, label, option: id, keepsFocus, reopens: reopens ?? null, before },
        ...(keepsDrawer ? {} : { drawer: null }),
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
    dropTry: () => store.setState(withoutTry),
  };
}

/** The trial is over, and what it closed opens again. */
export const withoutTry = ({ tryOut, drawer }: AppState): Pick<AppState, 'tryOut' | 'drawer'> => ({
  tryOut: null,
  drawer: tryOut?.reopens ?? drawer,
});

/** What is found in an option as it is kept; null where that is not known yet. */
function findingsWithout({ tryOut, assessments, stale }: AppState, option: string): Assessment | null {
  if (tryOut) return tryOut.option === option ? tryOut.before : null;
  const found = assessments[option];
  return found && found.status !== 'pending' && !stale.includes(option) ? found : null;
}
