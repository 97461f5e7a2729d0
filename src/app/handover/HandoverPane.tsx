import { useEffect, useMemo, useState } from 'react';
import { SURFACES } from '../../engine/surface';
import { cautionsOf } from '../../kitchen/cautions-of';
import { presentSurfaces } from '../../kitchen/present-surfaces';
import { documentIn } from '../../model/change-log';
import { unitOfRegion } from '../../model/length-text';
import type { Project } from '../../model/project';
import { whatChanged } from '../../model/what-changed';
import { type HandoverChoices, HandoverDialog } from '../../ui/handover/HandoverDialog';
import { handoverItems } from '../../ui/handover/handover-items';
import { handoverParts, onePageParts } from '../../ui/handover/handover-parts';
import type { HandoverOption, HandoverSet } from '../../ui/handover/handover-set';
import { revisionText } from '../../ui/handover/revision-text';
import { HANDOVER } from '../../ui/words/handover';
import { settingShortName } from '../../ui/words/picture';
import { useApp, useAppState } from '../context';
import { type AppState, chosenOption, documentOf, lengthUnitOf } from '../state';
import { usePaints } from '../use-option-paints';
import { frozenRevision } from './frozen-revision';
import { orderingParts } from './ordering-parts';
import { useViews } from './use-views';

/**
 * The handover set of the project as it is now, gathered and shown as it will print. At first only that it comes: a pane whose code has just
 * come is drawn in slices that begin anew with every change, and while light is worked out one change comes before the slices of a whole
 * set are done. What a timer asks for is drawn in one go.
 */
export function HandoverPane() {
  const [isThere, setThere] = useState(false);
  useEffect(() => {
    let timer = 0;
    // Not before the words are on screen.
    const frame = requestAnimationFrame(() => {
      timer = window.setTimeout(() => setThere(true));
    });
    return () => {
      cancelAnimationFrame(frame);
      window.clearTimeout(timer);
    };
  }, []);
  return isThere ? (
    <WholeSet />
  ) : (
    <p className="handover-coming" role="status">
      {HANDOVER.coming}
    </p>
  );
}

function WholeSet() {
  const { store, actions } = useApp();
  const project = useAppState(documentOf);
  const unit = useAppState(lengthUnitOf);
  const present = useAppState((state) => (state.room ? presentSurfaces(state.room) : SURFACES));
  const paintOf = usePaints();
  const [choices, setChoices] = useState(() => usualChoices(store.getState()));
  const [date] = useState(() => new Date());
  const viewpoint = useViewpoint();

  const optionIds = choices.onePage ? [choices.signed] : choices.options;
  const settings = [...new Set([choices.day, choices.evening])];
  const wanted = settings.flatMap((setting) => optionIds.map((option) => ({ option, setting })));
  const views = useViews(wanted);
  const revision = useMemo(() => frozenRevision(project), [project]);

  const settingOf = (id: string) => project.settings.find((one) => one.id === id) ?? project.settings[0]!;
  const options = project.options
    .filter(({ id }) => optionIds.includes(id))
    .map((option): HandoverOption => {
      const view = (id: string) => {
        const got = views.of(option.id, id);
        return { setting: settingOf(id), picture: got?.picture ?? null, assessment: got?.assessment ?? null };
      };
      const day = view(choices.day);
      return {
        option,
        items: handoverItems(option, project.library, present),
        day,
        evening: view(choices.evening),
        cautions: cautionsOf(project, option, day.assessment),
      };
    });
  const set: HandoverSet = {
    project,
    revision,
    isNotedSince: revision !== null && whatChanged(revision.document, documentIn(project)).length > 0,
    date,
    signed: options.find(({ option }) => option.id === choices.signed) ?? options[0]!,
    options,
    preparedFor: project.job?.prepared_for ?? '',
    preparedBy: project.job?.prepared_by ?? '',
    viewpoint,
    unit,
    present,
    paintOf: (finish, laying) => paintOf(finish, laying, true),
  };
  const { next } = views;
  return (
    <HandoverDialog
      options={project.options}
      settings={project.settings}
      choices={choices}
      onChoices={(change) => setChoices((before) => ({ ...before, ...change }))}
      job={project.job ?? {}}
      onJob={(job, continues) => actions.run({ kind: 'set-job', job }, continues)}
      freezing={revision === null ? { revisions: project.revisions?.length ?? 0, onFreeze: actions.freeze } : null}
      parts={choices.onePage ? onePageParts(set, choices.paper) : handoverParts(set, choices.paper, orderingParts(set))}
      running={HANDOVER.running(project.name, revisionText(set))}
      progress={
        next && {
          option: project.options.find(({ id }) => id === next.option)?.name ?? '',
          setting: settingShortName(settingOf(next.setting).name),
          done: views.done,
          of: wanted.length,
          isStopped: views.isStopped,
        }
      }
      onStop={views.stop}
      onGoOn={views.goOn}
      onPrint={() => window.print()}
      onClose={() => store.setState({ handover: false })}
    />
  );
}

/** Letter where inches are usual; all options, the chosen one to sign; the first light with daylight and the first without. */
function usualChoices(state: AppState): HandoverChoices {
  const project: Project = documentOf(state);
  const { settings, options, kitchen } = project;
  const day = settings.find(({ daylight }) => daylight !== null) ?? settings[0]!;
  const evening = settings.find(({ daylight }) => daylight === null) ?? settings.find((one) => one !== day) ?? day;
  const chosen = chosenOption(state).id;
  return {
    paper: unitOfRegion(kitchen.region) === 'in' ? 'letter' : 'a4',
    options: options.map(({ id }) => id),
    signed: options.some(({ id }) => id === chosen) ? chosen : options.at(-1)!.id,
    day: day.id,
    evening: evening.id,
    onePage: false,
  };
}

/** From where one looks, for as long as the set is open. */
function useViewpoint(): HandoverSet['viewpoint'] {
  const name = useAppState((state) => state.room?.viewpoints.find(({ id }) => id === state.viewpoint)?.name ?? null);
  const isMoved = useAppState((state) => state.movedEye !== null);
  return useMemo(() => (name === null ? null : { name, isMoved }), [name, isMoved]);
}
