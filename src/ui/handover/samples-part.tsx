import type { SampleRecord } from '../../model/order/records';
import { SAMPLES } from '../words/handover';
import { ORDERING } from '../words/ordering-pages';
import { SAMPLES as STATUS } from '../words/schedule';
import type { FlowPart } from './blocks';
import { finishName, sheenText } from './finish-words';
import type { HandoverItem } from './handover-items';
import { TickBoxes } from './TickBoxes';

/** Rows to tick for every finish that is to be ordered, and how one looks at samples. */
export function samplesPart(items: readonly HandoverItem[], samples: readonly SampleRecord[] = []): FlowPart {
  const sampleOf = (item: HandoverItem) => samples.find(({ finish }) => finish === item.finish.id);
  const wanted = items.filter(({ state }) => state === 'open' || state === 'decided');
  return {
    id: 'samples',
    title: SAMPLES.title,
    blocks: [
      { kind: 'flow', key: 'intro', keeps: true, node: <p>{SAMPLES.intro}</p> },
      wanted.length === 0
        ? { kind: 'flow', key: 'none', node: <p>{SAMPLES.none}</p> }
        : {
            kind: 'table',
            key: 'samples',
            label: SAMPLES.label,
            look: 'forms',
            columns: [
              { head: SAMPLES.id, width: 1.3 },
              { head: SAMPLES.finish, width: 5 },
              { head: SAMPLES.batch, width: 2.4 },
              { head: SAMPLES.byWindow, width: 1.9 },
              { head: SAMPLES.evening, width: 1.9 },
              { head: SAMPLES.verdict, width: 2.3 },
              { head: SAMPLES.who, width: 1.7 },
              { head: SAMPLES.date, width: 1.8 },
            ],
            rows: wanted.map((item) => ({
              key: item.id,
              cells: [
                item.id,
                <>
                  {finishName(item.finish)}
                  <span className="sheet-small">
                    {item.place} · {sheenText(item.finish)}
                  </span>
                  <SoFar sample={sampleOf(item)} />
                </>,
                sampleOf(item)?.batch ?? '',
                <TickBoxes key="window" of={SAMPLES.lights} />,
                <TickBoxes key="evening" of={SAMPLES.lights} />,
                <TickBoxes key="verdict" of={SAMPLES.verdicts} />,
                '',
                '',
              ],
            })),
          },
      { kind: 'flow', key: 'how', node: <HowTo /> },
    ],
  };
}

/** What is known of the sample already: how far it is, and who saw what in which light. */
function SoFar({ sample }: { readonly sample: SampleRecord | undefined }) {
  if (!sample) return null;
  return (
    <span className="sheet-small">
      {[
        ORDERING.sample(STATUS.statuses[sample.status]),
        ...sample.verdicts.map(({ light, by, verdict }) => `${light}: ${STATUS.verdict[verdict]}, ${by}`),
      ].join('; ')}
    </span>
  );
}

function HowTo() {
  return (
    <>
      <h4>{SAMPLES.how}</h4>
      <ol className="sheet-steps">
        {SAMPLES.steps.map((step, i) => (
          <li key={step} className="sheet-step">
            <span aria-hidden="true">{i + 1}</span>
            <span>{step}</span>
          </li>
        ))}
      </ol>
    </>
  );
}
