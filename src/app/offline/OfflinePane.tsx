import { OfflineLine } from '../../ui/offline/OfflineLine';
import { useAppState } from '../context';

const version = () => document.querySelector<HTMLMetaElement>('meta[name="version"]')?.content ?? null;

export function OfflinePane() {
  const offline = useAppState((state) => state.offline);
  const isNew = useAppState((state) => state.isNewlyOffline);
  const update = useAppState((state) => state.update);
  return <OfflineLine state={offline} isNew={isNew} version={version()} onUpdate={update} />;
}
