import { useEffect, useRef, useState } from 'react';
import type { ProjectDocument, Revision } from '../../model/project';
import { whatChanged } from '../../model/what-changed';
import { Menu } from '../drawer/Menu';
import { PROJECTS } from '../words/projects';
import { changeSentence } from '../words/what-changed';
import { NameField } from './NameField';

interface RevisionItemProps {
  readonly revision: Revision;
  /** What it can be compared with besides the present: other revisions. */
  readonly others: readonly Revision[];
  readonly present: ProjectDocument;
  readonly onRename: (name: string) => void;
  readonly onGoBack: () => void;
  readonly onSave: () => void;
  readonly onRemove: () => void;
}

/** A frozen copy: when and why, what changed since, and what can be done with it. */
export function RevisionItem({ revision, others, present, onRename, onGoBack, onSave, onRemove }: RevisionItemProps) {
  const { id, name, at, note } = revision;
  const [renaming, setRenaming] = useState(false);
  const [comparing, setComparing] = useState(false);
  const [removing, setRemoving] = useState(false);
  const buttons = [
    [PROJECTS.goBack, onGoBack],
    [PROJECTS.save, onSave],
    [PROJECTS.rename, () => setRenaming(!renaming)],
    // Asks first: it stands beside what is pressed often.
    [PROJECTS.removeAsking, () => setRemoving(!removing)],
  ] as const;
  return (
    <li className="project-item">
      <p>
        <b>{id}</b> {name}
      </p>
      <p className="small quiet">{PROJECTS.frozen(at)}</p>
      {note !== '' && <p className="small">{note}</p>}
      {renaming && (
        <NameField
          label={PROJECTS.revisionName}
          value={name}
          whenEmpty={PROJECTS.nameEmpty}
          onName={(next) => {
            onRename(next);
            setRenaming(false);
          }}
        />
      )}
      <div className="project-row">
        <button
          type="button"
          className="button button-outlined"
          aria-expanded={comparing}
          aria-label={PROJECTS.of(PROJECTS.whatChanged, id)}
          onClick={() => setComparing(!comparing)}
        >
          {PROJECTS.whatChanged}
        </button>
        {buttons.map(([word, act]) => (
          <button
            key={word}
            type="button"
            className="button button-outlined"
            aria-label={PROJECTS.of(word, id)}
            onClick={act}
          >
            {word}
          </button>
        ))}
      </div>
      {removing && <Removing id={id} onRemove={onRemove} onStay={() => setRemoving(false)} />}
      {comparing && <Compared revision={revision} others={others} present={present} />}
    </li>
  );
}

interface RemovingProps {
  readonly id: string;
  readonly onRemove: () => void;
  readonly onStay: () => void;
}

/** Asks whether a revision is to go; takes the focus, on the answer that changes nothing. */
function Removing({ id, onRemove, onStay }: RemovingProps) {
  const stay = useRef<HTMLButtonElement>(null);
  useEffect(() => stay.current?.focus(), []);
  return (
    <section className="project-changes" aria-label={PROJECTS.of(PROJECTS.remove, id)}>
      <p>{PROJECTS.removeRevision(id)}</p>
      <div className="project-row">
        <button ref={stay} type="button" className="button button-outlined" onClick={onStay}>
          {PROJECTS.keepRevision(id)}
        </button>
        <button
          type="button"
          className="button button-outlined"
          onClick={(event) => {
            // The item goes with its button: the focus moves to the list's part.
            event.currentTarget.closest('.project-part')?.querySelector('input')?.focus();
            onRemove();
          }}
        >
          {PROJECTS.of(PROJECTS.remove, id)}
        </button>
      </div>
    </section>
  );
}

const NOW = 'now';

function Compared({ revision, others, present }: Pick<RevisionItemProps, 'revision' | 'others' | 'present'>) {
  const [wanted, setWanted] = useState(NOW);
  const other = others.find(({ id }) => id === wanted);
  const after = other?.document ?? present;
  const changes = whatChanged(revision.document, after);
  const several = Math.max(revision.document.options.length, after.options.length) > 1;
  const sentences = [...new Set(changes.map((change) => changeSentence(change, several)))];
  return (
    <div className="project-changes">
      {others.length > 0 && (
        <Menu
          label={PROJECTS.compareWith}
          value={other ? wanted : NOW}
          choices={[[NOW, PROJECTS.now], ...others.map(({ id, name }) => [id, `${id} ${name}`] as const)]}
          onChoose={setWanted}
        />
      )}
      <div role="status">
        <ul className="project-sentences">
          {sentences.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
          {sentences.length === 0 && <li>{PROJECTS.nothingChanged}</li>}
        </ul>
      </div>
    </div>
  );
}
