import { ViewPanel } from '../../ui/picture/ViewPanel';
import { useApp } from '../context';

/** The panel of how one looks at the room. */
export function ViewPane() {
  const { store } = useApp();
  return <ViewPanel onClose={() => store.setState({ panel: null })} />;
}
