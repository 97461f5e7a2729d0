import { Plus, X } from 'lucide-react';
import { useState } from 'react';
import type { Run, TallKind } from '../../model/kitchen';
import { inUnit } from '../../model/unit-words';
import { Menu } from '../drawer/Menu';
import { endWords, KITCHEN } from '../words/kitchen';
import { problemAtField } from './field-problem';
import { type KitchenFormProps, LengthFields } from './LengthFields';
import { PickField } from './PickField';

interface RunFormProps extends KitchenFormProps {
  readonly run: Run;
  readonly index: number;
}

/** A run: where it begins and ends, what stands tall at its ends, what hangs over it and what is behind it. */
export function RunForm({ run, index, ...form }: RunFormProps) {
  const { kitchen, unit, onKitchen } = form;
  const put = (next: Run, continues = false) =>
    onKitchen({ ...kitchen, runs: kitchen.runs.map((one) => (one === run ? next : one)) }, continues);
  return (
    <section className="room-part">
      <h3>{KITCHEN.run(run.wall)}</h3>
      <LengthFields
        {...form}
        lengths={(['from', 'to'] as const).map((end) => ({
          path: `runs[${index}].${end}`,
          label: KITCHEN[end](run.wall),
          read: () => run[end],
          most: ({ room }) => (run.wall === 'back' ? room.width : room.depth),
          write: (_, mm) => ({
            ...kitchen,
            runs: kitchen.runs.map((one) => (one === run ? { ...run, [end]: mm } : one)),
          }),
        }))}
      />
      <PickField
        label={KITCHEN.over}
        path={`runs[${index}].over`}
        as="menu"
        words={KITCHEN.overs}
        chosen={run.over}
        unit={unit}
        basis={kitchen}
        onPick={(over) => put({ ...run, over })}
      />
      <PickField
        label={KITCHEN.splash}
        path={`runs[${index}].splash`}
        as="menu"
        words={KITCHEN.splashes}
        chosen={run.splash}
        unit={unit}
        basis={kitchen}
        onPick={(splash) => put({ ...run, splash })}
      />
      {(['from', 'to'] as const).map((end) => (
        <TallList
          key={end}
          end={endWords(run.wall, end)}
          kinds={run[`tall_${end}`]}
          form={form}
          onKinds={(kinds) => put({ ...run, [`tall_${end}`]: kinds })}
        />
      ))}
    </section>
  );
}

interface TallListProps {
  /** Which end, in words. */
  readonly end: string;
  readonly kinds: readonly TallKind[];
  readonly form: KitchenFormProps;
  readonly onKinds: (kinds: readonly TallKind[]) => ReturnType<KitchenFormProps['onKitchen']>;
}

const TALLS = Object.keys(KITCHEN.talls) as readonly TallKind[];

/** The tall units at one end of a run, from the end inward. */
function TallList({ end, kinds, form, onKinds }: TallListProps) {
  const [kind, setKind] = useState<TallKind>('larder');
  const [said, setSaid] = useState<{ readonly words: string; readonly basis: unknown } | null>(null);
  const label = KITCHEN.tallAt(end);
  const set = (next: readonly TallKind[]) => {
    const [problem] = onKinds(next);
    const words = problem && inUnit(problemAtField(problem, label), form.unit);
    setSaid(words ? { words, basis: form.kitchen } : null);
  };
  return (
    <div className="tall-list">
      <p className="label small quiet">{label}</p>
      {kinds.length > 0 && (
        <ul className="tall-units">
          {kinds.map((one, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a unit is its place in the row
            <li key={i}>
              {KITCHEN.talls[one]}
              <button
                type="button"
                className="button button-plain tall-remove"
                aria-label={KITCHEN.removeTallOf(KITCHEN.talls[one], end)}
                onClick={() => set(kinds.filter((_, at) => at !== i))}
              >
                <X className="icon" aria-hidden="true" />
              </button>
            </li>
          ))}
        </ul>
      )}
      <div className="room-row room-add">
        <Menu
          label={KITCHEN.tallToAdd}
          value={kind}
          choices={TALLS.map((one) => [one, KITCHEN.talls[one]])}
          onChoose={setKind}
        />
        <button
          type="button"
          className="button button-outlined"
          aria-label={KITCHEN.addTallOf(KITCHEN.talls[kind], end)}
          onClick={() => set([...kinds, kind])}
        >
          <Plus className="icon" aria-hidden="true" />
          {KITCHEN.addTall}
        </button>
      </div>
      {said && said.basis === form.kitchen && (
        <p className="small field-wrong" role="alert">
          {said.words}
        </p>
      )}
    </div>
  );
}
