import { UpdatePrompt } from '../../ui/offline/UpdatePrompt';
import { OFFLINE } from '../../ui/words/offline';
import { useApp, useAppState } from '../context';
import { isUnsaved } from '../state';

/** The question whether to update, until it is answered; and, once, that the program now works offline, for who cannot see it under More. */
export function UpdatePane() {
  const { store } = useApp();
  const update = useAppState((state) => (state.isUpdateLater ? null : state.update));
  const unsaved = useAppState(isUnsaved);
  const isNew = useAppState((state) => state.isNewlyOffline);
  return (
    <>
      <p className="hidden-visually" role="status">
        {isNew && OFFLINE.newly}
      </p>
      {update && (
        <UpdatePrompt isUnsaved={unsaved} onUpdate={update} onLater={() => store.setState({ isUpdateLater: true })} />
      )}
    </>
  );
}
