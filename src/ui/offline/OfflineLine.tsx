import { OFFLINE } from '../words/offline';

export interface OfflineLineProps {
  readonly state: keyof typeof OFFLINE.states;
  /** It was kept just now. */
  readonly isNew: boolean;
  /** Null while developing. */
  readonly version: string | null;
  /** Null while there is no newer version. */
  readonly onUpdate: (() => void) | null;
}

/** Whether the program works without a network, and which version it is. */
export function OfflineLine({ state, isNew, version, onUpdate }: OfflineLineProps) {
  return (
    <div className="field">
      <p className="small quiet">
        {isNew ? OFFLINE.newly : OFFLINE.states[state]} {version && OFFLINE.version(version)}
      </p>
      {onUpdate && (
        <>
          <p className="small">{OFFLINE.ready}</p>
          <button type="button" className="button button-outlined" onClick={onUpdate}>
            {OFFLINE.update}
          </button>
        </>
      )}
    </div>
  );
}
