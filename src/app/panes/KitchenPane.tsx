import { useMemo } from 'react';
import { drawPlan } from '../../kitchen/plan/plan-drawing';
import { clearanceHints } from '../../model/clearances';
import { planRows } from '../../model/layout/plan-rows';
import type { UserNeed } from '../../model/project';
import { KitchenPanel } from '../../ui/room/KitchenPanel';
import { useApp, useAppState } from '../context';
import { lengthUnitOf, projectOf } from '../state';
import { useLosses } from '../use-losses';
import { usePlanEye } from '../use-plan-eye';

const NO_USERS: readonly UserNeed[] = [];

/** The panel in which the kitchen itself is set. */
export function KitchenPane() {
  const { store, actions } = useApp();
  const kitchen = useAppState((state) => projectOf(state).kitchen);
  const users = useAppState((state) => projectOf(state).users) ?? NO_USERS;
  const yearBuilt = useAppState((state) => projectOf(state).year_built ?? null);
  const unit = useAppState(lengthUnitOf);
  const drawing = useMemo(() => drawPlan(kitchen), [kitchen]);
  const rows = useMemo(() => planRows(kitchen), [kitchen]);
  const hints = useMemo(() => clearanceHints(kitchen, users), [kitchen, users]);
  const { losses, note, read } = useLosses(kitchen);
  return (
    <KitchenPanel
      kitchen={kitchen}
      rows={rows}
      drawing={drawing}
      eye={usePlanEye()}
      hints={hints}
      users={users}
      onUsers={(next) => actions.run({ kind: 'set-users', users: next })}
      yearBuilt={yearBuilt}
      onYearBuilt={(year) => actions.attempt({ kind: 'set-year', year_built: year })}
      unit={unit}
      onUnit={(lengthUnit) => store.setState({ lengthUnit })}
      onKitchen={(next, continues, lost = []) => {
        const before = projectOf(store.getState()).kitchen;
        const problems = actions.attempt({ kind: 'set-kitchen', kitchen: next }, continues);
        if (problems.length === 0) note(before, projectOf(store.getState()).kitchen, lost);
        return problems;
      }}
      losses={losses}
      onLossesRead={read}
      onClose={() => store.setState({ panel: null })}
    />
  );
}
