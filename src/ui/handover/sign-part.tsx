import { HANDOVER, SIGN } from '../words/handover';
import type { FlowPart } from './blocks';
import { finishName } from './finish-words';
import type { HandoverSet } from './handover-set';
import { revisionText } from './revision-text';

/** What is signed: the schedule of an option in a revision with its number, and the samples. */
export function signPart(set: HandoverSet): FlowPart {
  const { signed, revision, preparedFor, preparedBy } = set;
  const ordered = signed.items.filter(({ state }) => state !== 'fixed');
  return {
    id: 'sign',
    title: SIGN.title,
    blocks: [
      {
        kind: 'flow',
        key: 'what',
        node: revision ? (
          <p>
            {SIGN.what(signed.option.name, revisionText(set))} {set.isNotedSince && SIGN.notedSince}
          </p>
        ) : (
          <>
            <p className="sign-draft">{SIGN.draftMark}</p>
            <p>{SIGN.draft}</p>
          </>
        ),
      },
      { kind: 'flow', key: 'changes', node: <p>{SIGN.changes}</p> },
      { kind: 'flow', key: 'approved', keeps: true, node: <h4>{SIGN.approved}</h4> },
      {
        kind: 'table',
        key: 'samples',
        label: SIGN.approvedLabel,
        look: 'lines',
        columns: [
          { head: SIGN.id, width: 1.2 },
          { head: SIGN.finish, width: 7 },
          { head: SIGN.sample, width: 2.4 },
          { head: SIGN.initials, width: 2.4 },
        ],
        rows: ordered.map(({ id, finish }) => ({ key: id, cells: [id, finishName(finish), '', ''] })),
      },
      {
        kind: 'flow',
        key: 'lines',
        node: (
          <div className="sign-halves">
            <Lines of={SIGN.client} name={preparedFor} />
            <Lines of={SIGN.maker} name={preparedBy} />
          </div>
        ),
      },
      { kind: 'flow', key: 'date', node: <p className="sheet-small">{SIGN.printed(HANDOVER.date(set.date))}</p> },
    ],
  };
}

/** Lines to write on. */
function Lines({ of, name }: { readonly of: string; readonly name: string }) {
  return (
    <div className="sign-lines">
      <h4>{of}</h4>
      {[
        [SIGN.name, name.trim()],
        [SIGN.date, ''],
        [SIGN.signature, ''],
      ].map(([what, said]) => (
        <p key={what} className="sign-line">
          <span>{said}</span>
          <span className="sheet-small">{what}</span>
        </p>
      ))}
    </div>
  );
}
