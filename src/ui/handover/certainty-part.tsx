import { UNCERTAINTY_DE00 } from '../../engine/finish/uncertainty';
import { cautionText } from '../../model/caution-words';
import { CAUTIONS } from '../words/cautions';
import { PROVENANCE_WORDS } from '../words/finishes';
import { CERTAINTY } from '../words/handover';
import { offBy } from '../words/off-by';
import { retold } from '../words/spoken';
import type { Block, FlowPart } from './blocks';
import { finishName } from './finish-words';
import type { HandoverOption } from './handover-set';

/** What to heed before ordering, by what is in the option and where the kitchen is. */
export function cautionsPart({ cautions }: HandoverOption): FlowPart {
  const texts = [CAUTIONS.planning, CAUTIONS.screen, ...cautions.map((caution) => retold(cautionText(caution)))];
  return {
    id: 'cautions',
    title: CERTAINTY.cautions,
    blocks: texts.map((text, i) => ({ kind: 'flow', key: text, node: <Numbered number={i + 1} text={text} /> })),
  };
}

/** What the colors rest on, and what nobody can tell from here. */
export function certaintyPart({ items, day, evening }: HandoverOption): FlowPart {
  const questions = [day, evening].flatMap(
    ({ assessment }) => assessment?.warnings.filter(({ code }) => code === 'cannot-tell').map(({ text }) => text) ?? [],
  );
  return {
    id: 'certainty',
    title: CERTAINTY.title,
    blocks: [
      { kind: 'flow', key: 'intro', keeps: true, node: <p>{CERTAINTY.intro}</p> },
      {
        kind: 'table',
        key: 'known',
        label: CERTAINTY.label,
        columns: [
          { head: CERTAINTY.id, width: 1 },
          { head: CERTAINTY.finish, width: 5 },
          { head: CERTAINTY.known, width: 4 },
          { head: CERTAINTY.off, width: 2, align: 'end' },
        ],
        rows: items.map(({ id, finish }) => ({
          key: id,
          cells: [
            id,
            finishName(finish),
            PROVENANCE_WORDS[finish.provenance],
            CERTAINTY.about(offBy(finish.uncertainty_de00 ?? UNCERTAINTY_DE00[finish.provenance])),
          ],
        })),
      },
      { kind: 'flow', key: 'cannot-title', keeps: true, node: <h4>{CERTAINTY.cannotTell}</h4> },
      ...[CERTAINTY.cannotTellMeans, CERTAINTY.metamerism, CERTAINTY.prints].map(text),
      { kind: 'flow', key: 'questions-title', keeps: true, node: <h4>{CERTAINTY.questions}</h4> },
      ...(questions.length > 0 ? [...new Set(questions)].map(retold) : [CERTAINTY.none]).map(text),
    ],
  };
}

const text = (words: string): Block => ({ kind: 'flow', key: words, node: <p>{words}</p> });

function Numbered({ number, text }: { readonly number: number; readonly text: string }) {
  return (
    <p className="sheet-step">
      <span aria-hidden="true">{number}</span>
      <span>{text}</span>
    </p>
  );
}
