import type { StoreApi } from 'zustand/vanilla';
import type { Assessment } from '../engine/judge/assessment';
import { type Unsettling, unsettled } from '../engine/judge/unsettled';
import { SURFACES } from '../engine/surface';
import { presentSurfaces } from '../kitchen/present-surfaces';
import { relaidSurfaces, settledAfter } from '../model/decision-path';
import type { Option } from '../model/project';
import { type AppState, chosenOption, projectOf } from './state';

/** An option as it was before a change, with its findings. */
interface Before {
  readonly option: Option;
  readonly assessment: Assessment;
}

/**
 * Watches what a change of a finish does to decisions later in the order: once the new findings are there, those that were not
 * there before are told; they go with what mends them, with undo, or when they are dismissed.
 */
export function followUnsettled(store: StoreApi<AppState>): () => void {
  let before: Before | null = null;
  const tell = (unsettling: Unsettling | null) => {
    if (store.getState().unsettling !== unsettling) store.setState({ unsettling });
  };
  const forget = () => {
    before = null;
    tell(null);
  };
  return store.subscribe((state, last) => {
    if (last.unsettling && !state.unsettling) before = null;
    if (projectOf(state) !== projectOf(last)) {
      const option = chosenOption(state);
      // With another project come its own decisions: nobody has changed one.
      if (projectOf(state).id !== projectOf(last).id || !state.assessments[option.id]) return forget();
      if (before && before.option.id !== option.id) return forget();
      before ??= beforeChange(last, option);
    } else if (state.option !== last.option) return forget();
    if (!before || state.assessments === last.assessments) return;
    const { option, assessment } = before;
    const now = state.assessments[option.id];
    if (!now || now.status === 'pending' || state.stale.includes(option.id)) return;
    if (now.setting.id !== assessment.setting.id) return forget();
    const present = state.room ? presentSurfaces(state.room) : SURFACES;
    const changed = relaidSurfaces(option, chosenOption(state)).filter((one) => present.includes(one));
    const settled = settledAfter(chosenOption(state), present, changed);
    const found = unsettled(assessment, now, changed, settled);
    if (found.length === 0) forget();
    else tell({ option: option.id, changed, found });
  });
}

/** Null where no finish changed, or what was found before is not known. */
function beforeChange(last: AppState, now: Option): Before | null {
  const option = projectOf(last).options.find(({ id }) => id === now.id);
  const assessment = last.assessments[now.id];
  if (!option || !assessment || assessment.status === 'pending' || last.stale.includes(now.id)) return null;
  return relaidSurfaces(option, now).length > 0 ? { option, assessment } : null;
}
