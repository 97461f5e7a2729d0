import { useRef, useState } from 'react';
import { PROJECTS } from '../words/projects';

/** A project of those kept in this browser. */
interface Kept {
  readonly id: string;
  readonly name: string;
  /** ms since 1970. */
  readonly changed: number;
}

export interface KeptListProps {
  /** Null while the browser is asked. */
  readonly kept: readonly Kept[] | null;
  /** Id of the one that is open. */
  readonly present: string;
  readonly onOpen: (id: string) => void;
  readonly onCopy: (id: string) => Promise<boolean>;
  /** Gives back what brings it back; null where it could not be removed. */
  readonly onRemove: (id: string) => Promise<(() => Promise<void>) | null>;
}

/** All projects kept in this browser, the one changed last first. */
export function KeptList({ kept, present, onOpen, onCopy, onRemove }: KeptListProps) {
  const [told, setTold] = useState('');
  const [back, setBack] = useState<{ readonly name: string; readonly act: () => Promise<void> } | null>(null);
  const bring = useRef<HTMLButtonElement>(null);
  const copy = async ({ id, name }: Kept) => {
    setBack(null);
    if (await onCopy(id)) setTold(PROJECTS.copied(name));
  };
  const remove = async ({ id, name }: Kept) => {
    const act = await onRemove(id);
    if (!act) return;
    setTold(PROJECTS.removed(name));
    setBack({ name, act });
    // The button that was pressed is gone with its project.
    requestAnimationFrame(() => bring.current?.focus());
  };
  return (
    <>
      <ul className="project-list">
        {kept?.map((one) => (
          <li key={one.id} className="project-item">
            <p>
              {one.id === present ? <b>{one.name}</b> : one.name}
              <span className="small quiet">
                {' '}
                {one.id === present ? `${PROJECTS.isOpen}, ` : ''}
                {PROJECTS.changed(one.changed)}
              </span>
            </p>
            <div className="project-row">
              {one.id !== present && <Act word={PROJECTS.open} name={one.name} onAct={() => onOpen(one.id)} />}
              <Act word={PROJECTS.copy} name={one.name} onAct={() => void copy(one)} />
              <Act word={PROJECTS.remove} name={one.name} onAct={() => void remove(one)} />
            </div>
          </li>
        ))}
      </ul>
      {kept?.length === 0 && <p className="small">{PROJECTS.noneKept}</p>}
      <div className="project-row project-told">
        <span className="small" role="status">
          {told}
        </span>
        {back && (
          <button
            ref={bring}
            type="button"
            className="button button-outlined"
            onClick={() => {
              void back.act().then(() => setTold(PROJECTS.broughtBack(back.name)));
              setBack(null);
            }}
          >
            {PROJECTS.bringBack}
          </button>
        )}
      </div>
    </>
  );
}

interface ActProps {
  readonly word: string;
  readonly name: string;
  readonly onAct: () => void;
}

const Act = ({ word, name, onAct }: ActProps) => (
  <button type="button" className="button button-outlined" aria-label={PROJECTS.of(word, name)} onClick={onAct}>
    {word}
  </button>
);
