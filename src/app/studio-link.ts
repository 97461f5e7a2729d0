import type { StoreApi } from 'zustand/vanilla';
import { problemTold } from '../ui/parts/told';
import type { Studio, StudioEvents } from '../workers/studio';
import { type AppState, chosenOption, otherOption, projectOf, shownOption, shownSetting } from './state';

/** What the workers say goes into the state. */
export function studioEvents(store: StoreApi<AppState>): StudioEvents {
  return {
    room: (room) =>
      store.setState((state) => ({
        room,
        light: null,
        looks: {},
        picked: null,
        viewpoint: room.viewpoints.some((one) => one.id === state.viewpoint)
          ? state.viewpoint
          : (room.viewpoints[0]?.id ?? null),
      })),
    light: (light) => store.setState({ light }),
    look: (look) => store.setState((state) => ({ looks: { ...state.looks, [look.option]: look } })),
    assessment: (assessment, isCurrent) =>
      store.setState((state) => ({
        assessments: { ...state.assessments, [assessment.option]: assessment },
        stale: isCurrent ? state.stale.filter((option) => option !== assessment.option) : state.stale,
      })),
    problem: (problem) => store.setState({ told: problemTold(problem) }),
  };
}

/** Tells the studio what is wanted, at once and whenever the document or what is on screen changes. */
export function followState(store: StoreApi<AppState>, studio: Studio): () => void {
  const show = (state: AppState) => {
    const project = projectOf(state);
    const first = shownOption(state).id;
    const second = state.holding ? chosenOption(state).id : otherOption(state).id;
    const options = first === second ? [first] : [first, second];
    studio.show(project, { options, setting: shownSetting(state).id, seenBy: state.seenBy });
  };
  show(store.getState());
  return store.subscribe((state, before) => {
    const documentChanged = state.history.present !== before.history.present || state.setting !== before.setting;
    if (!documentChanged && state.option === before.option && state.seenBy === before.seenBy) return;
    if (documentChanged) store.setState({ stale: projectOf(state).options.map((option) => option.id) });
    show(state);
  });
}
