import type { StoreApi } from 'zustand/vanilla';
import type { Assessment } from '../engine/judge/assessment';
import { type Unsettling, unsettled } from '../engine/judge/unsettled';
import { SURFACES } from '../engine/surface';
import { presentSurfaces } from '../kitchen/present-surfaces';
import { optionById } from '../model/commands';
import { relaidSurfaces, settledAfter } from '../model/decision-path';
import type { Option } from '../model/project';
import { type AppState, chosenOption, documentOf, projectOf } from './state';

/** An option as it was before a change, with its findings. */
interface Before {
  readonly option: Option;
  readonly assessment: Assessment;
}

/**
 * Watches what a change of a finish does to decisions later in the order: once the new findings are there, those that were not
 * there before are told; they go with what mends them, with undo, or when they are dismissed. Only the document counts: what is
 * on trial changes no decision until it is kept.
 */
export function followUnsettled(store: StoreApi<AppState>): () => void {
  let before: Before | null = null;
  /** The chosen option with its findings as the document last was when they were known. */
  let known: Before | null = null;
  const tell = (unsettling: Unsettling | null) => {
    if (store.getState().unsettling !== unsettling) store.setState({ unsettling });
  };
  const forget = () => {
    before = null;
    tell(null);
  };
  return store.subscribe((state, last) => {
    if (last.unsettling && !state.unsettling) before = null;
    const option = keptOption(state);
    if (documentOf(state) !== documentOf(last)) {
      // With another project come its own decisions: nobody has changed one.
      if (documentOf(state).id !== documentOf(last).id || !state.assessments[option.id]) {
        known = null;
        return forget();
      }
      if (before && before.option.id !== option.id) return forget();
      const [was] = documentOf(last).options.filter(({ id }) => id === option.id);
      // Null where no finish changed, or what was found before is not known.
      before ??= known && known.option === was && relaidSurfaces(was, option).length > 0 ? known : null;
    } else if (state.option !== last.option) forget();
    const now = state.assessments[option.id];
    // What was found belongs to what was shown before, or to a trial.
    if (projectOf(state) !== projectOf(last) || state.tryOut || state.stale.includes(option.id)) return;
    if (!now || now.status === 'pending') return;
    known = { option, assessment: now };
    if (!before || (state.assessments === last.assessments && documentOf(state) === documentOf(last))) return;
    if (now.setting.id !== before.assessment.setting.id) return forget();
    const present = state.room ? presentSurfaces(state.room) : SURFACES;
    const changed = relaidSurfaces(before.option, option).filter((one) => present.includes(one));
    const settled = settledAfter(option, present, changed);
    const found = unsettled(before.assessment, now, changed, settled);
    if (found.length === 0) forget();
    else tell({ option: option.id, changed, found });
  });
}

/** The chosen option as it is kept. */
const keptOption = (state: AppState): Option => optionById(documentOf(state), state.option) ?? chosenOption(state);
