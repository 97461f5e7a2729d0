import { UnsettledNotice } from '../../ui/decisions/UnsettledNotice';
import { useApp, useAppState } from '../context';
import { openDrawer } from '../open-drawer';
import { shownOption } from '../state';

/** What a change has unsettled, while that is so; not beside the findings of something that is only tried. */
export function UnsettledPane() {
  const { store } = useApp();
  const unsettling = useAppState((state) =>
    state.unsettling?.option === shownOption(state).id && !state.tryOut ? state.unsettling : null,
  );
  if (!unsettling) return null;
  return (
    <UnsettledNotice
      changed={unsettling.changed}
      found={unsettling.found}
      onOpen={(surface) => openDrawer(store, surface)}
      onPoint={(pointed) => store.setState({ pointed })}
      onLeave={() => store.setState({ unsettling: null })}
    />
  );
}
