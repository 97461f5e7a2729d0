import { useState } from 'react';
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
}

/** A frozen copy: when and why, what changed since, and what can be done with it. */
export function RevisionItem({ revision, others, present, onRename, onGoBack, onSave }: RevisionItemProps) {
  const { id, name, at, note } = revision;
  const [renaming, setRenaming] = useState(false);
  const [comparing, setComparing] = useState(false);
  const buttons = [
    [PROJECTS.goBack, onGoBack],
    [PROJECTS.save, onSave],
    [PROJECTS.rename, () => setRenaming(!renaming)],
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
      {comparing && <Compared revision={revision} others={others} present={present} />}
    </li>
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
