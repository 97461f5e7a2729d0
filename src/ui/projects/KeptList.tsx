import { useEffect, useRef, useState } from 'react';
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
  /** What was removed and can be brought back, the last first. */
  readonly removed: readonly Kept[];
  /** Id of the one that is open. */
  readonly present: string;
  /** The one that is open is the demo, not kept. */
  readonly isDemo: boolean;
  readonly onOpen: (id: string) => void;
  readonly onCopy: (id: string) => Promise<boolean>;
  /** False: it could not be removed. */
  readonly onRemove: (id: string) => Promise<boolean>;
  /** False: it could not be brought back. */
  readonly onBringBack: (id: string) => Promise<boolean>;
  readonly onDemo: () => void;
}

/** All projects kept in this browser, the one changed last first, and those that were just removed. */
export function KeptList(props: KeptListProps) {
  const { kept, removed, present, isDemo, onOpen, onCopy, onRemove, onBringBack, onDemo } = props;
  const [told, setTold] = useState('');
  const list = useRef<HTMLDivElement>(null);
  /** The button that was pressed goes with its project: what brings that back takes the focus when it comes. */
  const goesOn = useRef<string | null>(null);
  useEffect(() => {
    const [last] = removed;
    if (!last || last.id !== goesOn.current) return;
    goesOn.current = null;
    list.current?.querySelector<HTMLElement>('[data-removed] button')?.focus();
  }, [removed]);
  const copy = async ({ id, name }: Kept) => {
    if (await onCopy(id)) setTold(PROJECTS.copied(name));
  };
  const remove = async ({ id, name }: Kept) => {
    goesOn.current = id;
    if (await onRemove(id)) setTold(PROJECTS.removed(name));
    else goesOn.current = null;
  };
  const bringBack = async ({ id, name }: Kept) => {
    if (await onBringBack(id)) setTold(PROJECTS.broughtBack(name));
  };
  return (
    <div ref={list} className="project-part">
      {isDemo && <p>{kept?.length === 0 ? PROJECTS.demoOnly : PROJECTS.demoOpen}</p>}
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
        {removed.map((one) => (
          <li key={one.id} className="project-item" data-removed>
            <p className="quiet">{PROJECTS.removed(one.name)}</p>
            <div className="project-row">
              <Act word={PROJECTS.bringBack} name={one.name} onAct={() => void bringBack(one)} />
            </div>
          </li>
        ))}
      </ul>
      {removed.length > 0 && <p className="small quiet">{PROJECTS.removedNote}</p>}
      {kept?.length === 0 && !isDemo && <p className="small">{PROJECTS.noneKept}</p>}
      {!isDemo && (
        <div className="project-row">
          <button type="button" className="button button-outlined" onClick={onDemo}>
            {PROJECTS.openDemo}
          </button>
        </div>
      )}
      <p className="hidden-visually" role="status">
        {told}
      </p>
    </div>
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
