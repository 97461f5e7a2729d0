import { TryBar } from '../../ui/try/TryBar';
import { useApp, useAppState } from '../context';
import { projectOf } from '../state';

/** The bar of a change on trial; nothing while there is none. */
export function TryPane() {
  const { actions } = useApp();
  const tryOut = useAppState((state) => state.tryOut);
  const options = useAppState((state) => projectOf(state).options);
  if (!tryOut) return null;
  const name = options.find(({ id }) => id === tryOut.option)?.name ?? '';
  return (
    <TryBar
      label={tryOut.label}
      option={name}
      onKeep={actions.keepTry}
      onDrop={actions.dropTry}
      takesFocus={!tryOut.keepsFocus}
    />
  );
}
