import { lazy, useMemo } from 'react';
import { SURFACES } from '../../engine/surface';
import { presentSurfaces } from '../../kitchen/present-surfaces';
import { ledgeSamples } from '../../ui/ledge/ledge-samples';
import { IdleWarning } from '../../ui/showroom/IdleWarning';
import { ShowroomList } from '../../ui/showroom/ShowroomList';
import { useApp, useAppState } from '../context';
import { ApartPane } from '../panes/ApartPane';
import { LinkPane } from '../panes/LinkPane';
import { projectOf, shownOption } from '../state';
import { startOver } from './start-over';

const ShowroomSetupPane = lazy(() =>
  import('./ShowroomSetupPane').then((pane) => ({ default: pane.ShowroomSetupPane })),
);

/** What lies over the screen in the showroom mode, and the form that sets it up. */
export function ShowroomDialogs() {
  const { store } = useApp();
  const left_s = useAppState((state) => state.startsAfreshIn_s);
  const listing = useAppState((state) => state.listing);
  const settingUp = useAppState((state) => state.settingUpShowroom);
  return (
    <>
      {settingUp && (
        <ApartPane onClose={() => store.setState({ settingUpShowroom: false })}>
          <ShowroomSetupPane />
        </ApartPane>
      )}
      {listing && (
        <ApartPane onClose={() => store.setState({ listing: false })}>
          <ListPane />
        </ApartPane>
      )}
      {left_s !== null && (
        <IdleWarning
          left_s={left_s}
          onGoOn={() => store.setState({ startsAfreshIn_s: null })}
          onStartOver={() => startOver(store)}
        />
      )}
    </>
  );
}

function ListPane() {
  const { store } = useApp();
  const option = useAppState(shownOption);
  const project = useAppState(projectOf);
  const { library } = project;
  const present = useAppState((state) => (state.room ? presentSurfaces(state.room) : SURFACES));
  const samples = useMemo(() => {
    const { upright, flat } = ledgeSamples(option, library, present);
    return [...flat, ...upright];
  }, [option, library, present]);
  return (
    <ShowroomList
      option={option.name}
      samples={samples}
      link={<LinkPane project={project} option={option} />}
      onPrint={() => window.print()}
      onClose={() => store.setState({ listing: false })}
    />
  );
}
