import { DropFrame } from '../../ui/parts/DropFrame';
import { useApp, useAppState } from '../context';
import { dropFiles } from '../drop-file';

/** Files dropped anywhere on the page; a showroom takes none. */
export function DropPane() {
  const { store, actions, projects } = useApp();
  const isShowroom = useAppState((state) => state.showroom !== null);
  return <DropFrame onFiles={isShowroom ? null : (files) => void dropFiles(store, { actions, projects }, files)} />;
}
