import { type FormEvent, useId, useState } from 'react';
import type { FinishClass, Provenance } from '../../engine/finish/types';
import type { ComponentRecord } from '../../engine/judge/assessment';
import type { Problem } from '../../engine/result';
import type { Finish } from '../../model/project';
import { Choices } from '../parts/Choices';
import { Swatch } from '../swatch/Swatch';
import { flatPaint } from '../swatch/swatch-color';
import { TYPE_IN } from '../words/drawer';
import { undertoneLabel } from '../words/findings';
import { CLASS_WORDS, PROVENANCE_WORDS } from '../words/finishes';
import { capital, decimal, labText } from '../words/numbers';
import { shiftWord } from '../words/reading';
import { finishFacts } from './finish-facts';
import { type OwnFinishEntry, type OwnKind, type OwnSheen, ownFinish, sheenNear } from './own-finish';

interface TypeInProps {
  readonly library: readonly Finish[];
  /** What lies there now; a tile typed in takes its size and sheen from a tile it replaces. */
  readonly current: Finish;
  readonly classes: readonly FinishClass[];
  readonly onUse: (finish: Finish) => void;
}

const KINDS: readonly { readonly id: OwnKind; readonly name: string }[] = [
  { id: 'lab', name: TYPE_IN.kinds.lab },
  { id: 'hex', name: TYPE_IN.kinds.hex },
  { id: 'lrv', name: TYPE_IN.kinds.lrv },
];
const SHEENS: readonly { readonly id: OwnSheen; readonly name: string }[] = [
  { id: 'flat', name: TYPE_IN.sheens.flat },
  { id: 'satin', name: TYPE_IN.sheens.satin },
  { id: 'gloss', name: TYPE_IN.sheens.gloss },
];
const PROVENANCES: readonly Provenance[] = ['measured', 'declared', 'photo-with-card', 'photo', 'by-eye'];

/** What comes in tiles. */
const TILE_CLASSES: readonly FinishClass[] = ['glazed', 'porcelain'];

/** A color from outside the library, and what that means for how sure the answers can be, before it is used. */
export function TypeIn({ library, current, classes, onUse }: TypeInProps) {
  const [entry, setEntry] = useState<OwnFinishEntry>({
    kind: 'lab',
    value: '',
    name: '',
    class: classes.includes(current.class) ? current.class : (classes[0] ?? 'paint'),
    sheen: sheenNear(current.gloss_gu),
    provenance: 'declared',
  });
  const id = useId();
  const change = (changes: Partial<OwnFinishEntry>) => setEntry({ ...entry, ...changes });
  const piece_mm = TILE_CLASSES.includes(entry.class) && entry.class === current.class ? current.piece_mm : undefined;
  const made = entry.value.trim() === '' ? null : ownFinish({ ...entry, piece_mm }, library);
  const facts = made?.ok ? finishFacts(made.value) : null;
  const problem = made && !made.ok ? made.problem : facts && !facts.ok ? facts.problem : null;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (made?.ok && facts?.ok) onUse(made.value);
  };
  return (
    <form className="type-in" onSubmit={submit} noValidate>
      <div className="type-in-fields">
        <Choices label={TYPE_IN.kind} choices={KINDS} chosen={entry.kind} onChoose={(kind) => change({ kind })} />
        <div className="field">
          <label htmlFor={`${id}-value`}>{TYPE_IN.labels[entry.kind]}</label>
          <input
            id={`${id}-value`}
            className="input"
            value={entry.value}
            placeholder={TYPE_IN.hints[entry.kind]}
            aria-invalid={problem !== null}
            aria-describedby={`${id}-meaning`}
            autoComplete="off"
            spellCheck={false}
            onChange={(event) => change({ value: event.target.value })}
          />
        </div>
        <div className="field">
          <label htmlFor={`${id}-name`}>{TYPE_IN.name}</label>
          <input
            id={`${id}-name`}
            className="input"
            value={entry.name}
            placeholder={TYPE_IN.nameHint}
            maxLength={60}
            onChange={(event) => change({ name: event.target.value })}
          />
        </div>
        <label className="field">
          <span className="label">{TYPE_IN.class}</span>
          <select
            className="select"
            value={entry.class}
            onChange={(event) => change({ class: event.target.value as FinishClass })}
          >
            {classes.map((one) => (
              <option key={one} value={one}>
                {CLASS_WORDS[one]}
              </option>
            ))}
          </select>
        </label>
        <label className="field">
          <span className="label">{TYPE_IN.provenance}</span>
          <select
            className="select"
            value={entry.kind === 'lab' ? entry.provenance : entry.kind === 'hex' ? 'screen' : 'by-eye'}
            disabled={entry.kind !== 'lab'}
            onChange={(event) => change({ provenance: event.target.value as Provenance })}
          >
            {(entry.kind === 'hex' ? (['screen'] as const) : PROVENANCES).map((one) => (
              <option key={one} value={one}>
                {capital(PROVENANCE_WORDS[one])}
              </option>
            ))}
          </select>
        </label>
        <div className="field">
          <span className="label">{TYPE_IN.sheen}</span>
          <Choices
            label={TYPE_IN.sheen}
            choices={SHEENS}
            chosen={entry.sheen}
            onChoose={(sheen) => change({ sheen })}
          />
        </div>
      </div>
      <div className="type-in-meaning" id={`${id}-meaning`} aria-live="polite">
        <h3>{TYPE_IN.meaning}</h3>
        {problem && <ProblemText problem={problem} />}
        {!made && <p className="small">{TYPE_IN.empty}</p>}
        {made?.ok && facts?.ok && <Meaning finish={made.value} facts={facts.value} />}
        <button type="submit" className="button button-strong" disabled={!made?.ok || !facts?.ok}>
          {TYPE_IN.use}
        </button>
      </div>
    </form>
  );
}

const ProblemText = ({ problem }: { readonly problem: Problem }) => (
  <div className="small">
    <p>
      <strong>{problem.text}</strong>
    </p>
    <p>{problem.remedy}</p>
  </div>
);

/** From here on the uncertainty swallows most differences between whites, one sigma in CIEDE2000 units. */
const WIDE_DE00 = 4;

function Meaning({ finish, facts }: { readonly finish: Finish; readonly facts: ComponentRecord }) {
  return (
    <div className="meaning small">
      <Swatch paint={flatPaint(facts.lab_d65, finish.gloss_gu)} width={72} height={72} />
      <div>
        <p>
          <strong>{capital(facts.name)}</strong>
        </p>
        <p>{TYPE_IN.numbers(labText(facts.lab_d65), decimal(facts.lrv), undertoneLabel(facts))}</p>
        {finish.piece_mm && <p>{TYPE_IN.pieces(...finish.piece_mm)}</p>}
      </div>
      <p className="meaning-wide">
        {TYPE_IN.uncertain(
          PROVENANCE_WORDS[finish.provenance],
          decimal(facts.uncertainty_de00),
          shiftWord(facts.uncertainty_de00),
        )}{' '}
        {finish.provenance === 'screen' && TYPE_IN.screen} {facts.uncertainty_de00 >= WIDE_DE00 && TYPE_IN.wide}
      </p>
    </div>
  );
}
