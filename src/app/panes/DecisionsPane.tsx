import { useMemo } from 'react';
import { likelySurfaces, presentSurfaces } from '../../kitchen/present-surfaces';
import { changesWith } from '../../model/changes-with';
import { decisionPath, settledAfter } from '../../model/decision-path';
import { NO_FINISH } from '../../model/empty-surface';
import { DecisionsPanel } from '../../ui/decisions/DecisionsPanel';
import { shownName } from '../../ui/words/built-in';
import { useApp, useAppState } from '../context';
import { openDrawer } from '../open-drawer';
import { projectOf, shownOption } from '../state';
import { useNarrowings } from '../use-narrowings';
import { UnsettledPane } from './UnsettledPane';

/** The way through the decisions of the option on screen. */
export function DecisionsPane() {
  const { store, actions } = useApp();
  const project = useAppState(projectOf);
  const option = useAppState(shownOption);
  const present = useAppState((state) =>
    state.room ? presentSurfaces(state.room) : likelySurfaces(projectOf(state).kitchen),
  );
  const assessment = useAppState((state) => state.assessments[shownOption(state).id] ?? null);
  const path = useMemo(() => decisionPath(option, present), [option, present]);
  const narrowings = useNarrowings(project, option.id, assessment);
  return (
    <DecisionsPanel
      path={path}
      labelOf={(id) => shownName([NO_FINISH, ...project.library].find((finish) => finish.id === id)?.label ?? id)}
      narrowings={narrowings}
      hangsOn={({ surfaces, state }) =>
        state === 'open' ? [] : settledAfter(option, present, [...surfaces, ...changesWith(option, surfaces[0]!)])
      }
      notice={<UnsettledPane />}
      onChoose={(surface) => openDrawer(store, surface)}
      onState={actions.setState}
      onPoint={(pointed) => store.setState({ pointed })}
      onClose={() => store.setState({ panel: null, pointed: [] })}
    />
  );
}
