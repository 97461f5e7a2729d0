import { type ReactNode, useMemo } from 'react';
import { drawPlan } from '../../kitchen/plan/plan-drawing';
import { daylightOf } from '../../kitchen/study/daylight-of';
import type { BeamRecord } from '../../model/project';
import { DaylightPanel } from '../../ui/room/DaylightPanel';
import { LampsPanel } from '../../ui/room/LampsPanel';
import { openBeam } from '../beam-files';
import { useApp, useAppState } from '../context';
import { projectOf, type RoomPanel, shownSetting } from '../state';
import { usePlanEye } from '../use-plan-eye';
import { DecisionsPane } from './DecisionsPane';
import { KitchenPane } from './KitchenPane';
import { LightPane } from './LightPane';
import { LookPane } from './LookPane';
import { PairsPane } from './PairsPane';
import { ProjectsPane } from './ProjectsPane';
import { ViewPane } from './ViewPane';

const NO_BEAMS: readonly BeamRecord[] = [];

const PANES = {
  view: ViewPane,
  light: LightPane,
  kitchen: KitchenPane,
  daylight: DaylightPane,
  lamps: LampsPane,
  pairs: PairsPane,
  look: LookPane,
  decisions: DecisionsPane,
  projects: ProjectsPane,
} satisfies Record<RoomPanel, () => ReactNode>;

/** The panel that the rows at the picture's foot have opened. */
export function RoomPane({ panel }: { readonly panel: RoomPanel }) {
  const Pane = PANES[panel];
  return <Pane />;
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
