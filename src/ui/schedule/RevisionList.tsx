import { useEffect, useRef } from 'react';
import { withoutProgress } from '../../model/order/without-progress';
import type { ProjectDocument, Revision } from '../../model/project';
import { whatChanged } from '../../model/what-changed';
import { FreezeForm } from '../revisions/FreezeForm';
import { PROJECTS } from '../words/projects';
import { REVISIONS } from '../words/schedule-revisions';
import { changeSentence } from '../words/what-changed';
import type { ScheduleDoors } from './schedule-props';

interface RevisionListProps {
  readonly doors: ScheduleDoors;
  /** Somebody came here to freeze one: the name is asked for. */
  readonly isAsked: boolean;
}

/** The frozen revisions, latest first, each with what changed from the one before it; and a way to freeze another. */
export function RevisionList({ doors, isAsked }: RevisionListProps) {
  const { revisions, present, isFrozen } = doors;
  const name = useRef<HTMLInputElement>(null);
  const latest = revisions.at(-1);
  useEffect(() => {
    if (isAsked) name.current?.focus();
  }, [isAsked]);
  return (
    <div className="revisions">
      <section>
        <p className="small">{REVISIONS.intro}</p>
        {isFrozen ? (
          <p>
            <b>{latest && REVISIONS.unchanged(latest.id)}</b>
          </p>
        ) : (
          <FreezeForm ref={name} usual={PROJECTS.revisionUsual(revisions.length + 1)} onFreeze={doors.onFreeze} />
        )}
      </section>
      <ol className="revisions-list" aria-label={PROJECTS.revisions}>
        {latest === undefined && <li className="quiet">{REVISIONS.none}</li>}
        {latest && !isFrozen && (
          <li>
            <h3>{REVISIONS.now}</h3>
            <Changes before={latest} after={present} />
          </li>
        )}
        {[...revisions].reverse().map((revision, i) => (
          <li key={revision.id}>
            <h3>
              {revision.id} {revision.name}
            </h3>
            <p className="small quiet">{REVISIONS.frozen(revision.at)}</p>
            {revision.note !== '' && <p>{revision.note}</p>}
            <Changes before={revisions[revisions.length - 2 - i] ?? null} after={revision.document} />
            <button
              type="button"
              className="button button-outlined"
              aria-label={REVISIONS.lookAtOne(revision.id)}
              onClick={() => doors.onLookAt(revision.id)}
            >
              {REVISIONS.lookAt}
            </button>
          </li>
        ))}
      </ol>
    </div>
  );
}

/** What is signed of two documents compared, in sentences. */
function Changes({ before, after }: { readonly before: Revision | null; readonly after: ProjectDocument }) {
  if (!before) return <p className="small">{REVISIONS.first}</p>;
  const changes = whatChanged(withoutProgress(before.document), withoutProgress(after));
  const several = Math.max(before.document.options.length, after.options.length) > 1;
  const sentences = [...new Set(changes.map((change) => changeSentence(change, several)))];
  return (
    <>
      <p className="small quiet">{REVISIONS.since(before.id)}</p>
      <ul className="small">
        {sentences.length === 0 && <li>{PROJECTS.nothingChanged}</li>}
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </>
  );
}
