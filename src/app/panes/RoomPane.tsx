import { useMemo } from 'react';
import { drawPlan } from '../../kitchen/plan/plan-drawing';
import { daylightOf } from '../../kitchen/study/daylight-of';
import type { BeamRecord } from '../../model/project';
import { DaylightPanel } from '../../ui/room/DaylightPanel';
import { LampsPanel } from '../../ui/room/LampsPanel';
import type { PlanEye } from '../../ui/room/PlanView';
import { openBeam } from '../beam-files';
import { useApp, useAppState } from '../context';
import { projectOf, type RoomPanel, shownSetting } from '../state';
import { LightPane } from './LightPane';
import { ViewPane } from './ViewPane';

const NO_BEAMS: readonly BeamRecord[] = [];

/** The panel that the rows at the picture's foot have opened. */
export function RoomPane({ panel }: { readonly panel: RoomPanel }) {
  switch (panel) {
    case 'view':
      return <ViewPane />;
    case 'light':
      return <LightPane />;
    case 'daylight':
      return <DaylightPane />;
    case 'lamps':
      return <LampsPane />;
  }
}

function DaylightPane() {
  const { store, actions } = useApp();
  const kitchen = useAppState((state) => projectOf(state).kitchen);
  const { daylight } = useAppState(shownSetting);
  const drawing = useMemo(() => drawPlan(kitchen), [kitchen]);
  const figures = useMemo(() => daylightOf(kitchen, daylight), [kitchen, daylight]);
  return (
    <DaylightPanel
      kitchen={kitchen}
      drawing={drawing}
      eye={usePlanEye()}
      daylight={daylight}
      figures={figures}
      onSite={(site, continues) => actions.attempt({ kind: 'set-site', site }, continues)}
      onDaylight={actions.setDaylight}
      onTurnOn={() => actions.switchDaylight(true)}
      onOpenings={(openings) => actions.attempt({ kind: 'set-openings', openings })}
      onClose={() => store.setState({ panel: null })}
    />
  );
}

function LampsPane() {
  const { store, actions } = useApp();
  const kitchen = useAppState((state) => projectOf(state).kitchen);
  const beams = useAppState((state) => projectOf(state).beams) ?? NO_BEAMS;
  const drawing = useMemo(() => drawPlan(kitchen), [kitchen]);
  return (
    <LampsPanel
      kitchen={kitchen}
      drawing={drawing}
      eye={usePlanEye()}
      beams={beams}
      onFixtures={(fixtures, continues) => actions.attempt({ kind: 'set-fixtures', fixtures }, continues)}
      onOpenBeam={(file, fixture) => openBeam(store, actions, file, fixture)}
      onClose={() => store.setState({ panel: null })}
    />
  );
}

/** The chosen viewpoint on the plan, mm. */
function usePlanEye(): PlanEye | null {
  const viewpoint = useAppState((state) => state.room?.viewpoints.find((one) => one.id === state.viewpoint) ?? null);
  return useMemo(
    () =>
      viewpoint && {
        eye: [viewpoint.eye[0] * MM_PER_M, viewpoint.eye[1] * MM_PER_M],
        target: [viewpoint.target[0] * MM_PER_M, viewpoint.target[1] * MM_PER_M],
      },
    [viewpoint],
  );
}

const MM_PER_M = 1000;
