import { lazy } from 'react';
import { IdleWarning } from '../../ui/showroom/IdleWarning';
import { useApp, useAppState } from '../context';
import { ApartPane } from '../panes/ApartPane';
import { startOver } from './start-over';

const ShowroomListPane = lazy(() => import('./ShowroomListPane').then((pane) => ({ default: pane.ShowroomListPane })));
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
          <ShowroomListPane />
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
