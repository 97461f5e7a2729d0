import { type KeyboardEvent, useEffect, useId, useState } from 'react';
import type { HeldChoice, HeldReading } from '../../kitchen/study/held-reading';
import { COMPARISON_WHITES } from '../../kitchen/study/held-whites';
import { isFound, searchable } from '../../model/search-words';
import { shownName } from '../words/built-in';
import { surfaceName } from '../words/engine-words';
import { HELD } from '../words/held';
import { capital, decimal, integer, labText, rgbText } from '../words/numbers';
import { READING, shiftWord } from '../words/reading';

export interface HoldPartProps {
  readonly finishes: readonly { readonly id: string; readonly label: string }[];
  readonly held: HeldChoice | null;
  /** Null while it is worked out. */
  readonly reading: HeldReading | null;
  readonly onHold: (held: HeldChoice | null) => void;
}

/** A white or a finish of the library held at the place that is read, found by its name. */
export function HoldPart({ finishes, held, reading, onHold }: HoldPartProps) {
  const list = useId();
  const problem = useId();
  const [text, setText] = useState('');
  const choices = [
    ...COMPARISON_WHITES.map((id) => ({ choice: { kind: 'white', id } as const, name: HELD.whites[id] })),
    ...finishes.map(({ id, label }) => ({ choice: { kind: 'finish', id } as const, name: shownName(label) })),
  ];
  const nameOf = (choice: HeldChoice) =>
    choices.find((one) => one.choice.kind === choice.kind && one.choice.id === choice.id)?.name ?? choice.id;
  const key = held && `${held.kind} ${held.id}`;
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is held may be put away elsewhere
  useEffect(() => setText(held ? nameOf(held) : ''), [key]);
  const take = (typed: string) => {
    setText(typed);
    const found = choices.find(({ name }) => name.toLowerCase() === typed.trim().toLowerCase());
    if (found) onHold(found.choice);
  };
  /** What is typed and left is taken where it can mean one thing only. */
  const settle = () => {
    const matches = text.trim() === '' ? [] : choices.filter(({ name }) => isFound(text, searchable(name)));
    if (matches.length === 1) take(matches[0]!.name);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') settle();
    if (event.key !== 'Escape') return;
    event.stopPropagation();
    setText('');
    onHold(null);
  };
  const isUnknown = text.trim() !== '' && !choices.some(({ name }) => isFound(text, searchable(name)));
  return (
    <section className="hold-part" aria-label={HELD.title}>
      <h4>{HELD.title}</h4>
      <div className="hold">
        <label className="field">
          <span className="label">{HELD.what}</span>
          <input
            className="input"
            type="text"
            autoComplete="off"
            list={list}
            value={text}
            aria-describedby={isUnknown ? problem : undefined}
            onChange={(event) => take(event.target.value)}
            onFocus={(event) => event.target.select()}
            onBlur={settle}
            onKeyDown={onKeyDown}
          />
        </label>
        <datalist id={list}>
          {choices.map(({ choice, name }) => (
            <option key={`${choice.kind} ${choice.id}`} value={name} />
          ))}
        </datalist>
        {held && (
          <button type="button" className="button button-outlined" onClick={() => onHold(null)}>
            {HELD.away}
          </button>
        )}
      </div>
      <div role="status">
        {isUnknown && <p id={problem}>{HELD.unknown}</p>}
        {!held && !isUnknown && <p className="small quiet">{HELD.perfect}</p>}
        {held && !reading && <p>{HELD.pending}</p>}
        {held && reading && <p>{sentenceOf(nameOf(held), reading)}</p>}
      </div>
      {held && reading && (
        <>
          <HeldNumbers reading={reading} />
          <p className="small quiet">{HELD.note}</p>
        </>
      )}
    </section>
  );
}

function HeldNumbers({ reading }: { readonly reading: HeldReading }) {
  const card = reading.components.find(({ role }) => role === reading.compared[0]) ?? reading.components[0]!;
  const [width, height] = reading.size_m;
  return (
    <dl className="numbers">
      <dt>{HELD.verdict}</dt>
      <dd>{capital(verdictOf(reading))}</dd>
      <dt>{HELD.difference}</dt>
      <dd>{READING.shiftValue(decimal(reading.de00), shiftWord(reading.de00))}</dd>
      <dt>{HELD.card}</dt>
      <dd>{READING.labOf(labText(card.lab_d65))}</dd>
      <dt>{HELD.surface}</dt>
      <dd>{READING.labOf(labText(reading.surface_lab_d65))}</dd>
      <dt>{HELD.onScreen}</dt>
      <dd className="reading-white">
        <svg width="32" height="20" aria-hidden="true">
          <rect x="0.5" y="0.5" width="31" height="19" fill={rgbText(card.srgb8)} stroke="currentColor" />
        </svg>
        {rgbText(card.srgb8)}
      </dd>
      <dt>{HELD.size}</dt>
      <dd>{HELD.sizeValue(integer(1000 * width), integer(1000 * height))}</dd>
    </dl>
  );
}

/** Half of the observers see a difference of colors from here on (Paravina et al. 2015). */
const SEEN_DE00 = 0.8;

function sentenceOf(name: string, { surface, de00, held_looks }: HeldReading): string {
  const beside = READING.mirroredSurface(surfaceName(surface));
  return de00 < SEEN_DE00 ? HELD.alike(name, beside) : HELD.looks(name, held_looks, beside);
}

function verdictOf({ verdict, faulty }: HeldReading): string {
  return (faulty && HELD.faulty[verdict]?.[faulty]) || HELD.verdicts[verdict];
}
