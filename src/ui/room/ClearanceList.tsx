import { Check, TriangleAlert } from 'lucide-react';
import { useId, useState } from 'react';
import type { ClearanceHint } from '../../model/clearances/types';
import type { Kitchen } from '../../model/kitchen';
import { type LengthUnit, lengthWords } from '../../model/length-text';
import { USERS, type UserNeed } from '../../model/project';
import { CLEARANCES, clearanceWords, SOURCES } from '../words/clearances';

interface ClearanceListProps {
  readonly kitchen: Kitchen;
  readonly hints: readonly ClearanceHint[];
  readonly unit: LengthUnit;
  readonly users: readonly UserNeed[];
  readonly onUsers: (users: readonly UserNeed[]) => void;
  /** A hint is pointed at or has the focus: it is to be drawn on the plan. */
  readonly onPoint: (hint: ClearanceHint | null) => void;
  /** A hint was chosen: the plan is to be seen. */
  readonly onShow: () => void;
}

/** What planners recommend, held against the kitchen: what misses it first, the rest folded. */
export function ClearanceList(props: ClearanceListProps) {
  const { kitchen, hints, unit, users } = props;
  const counts = new Map<string, number>();
  const told = hints.map((hint) => {
    const nth = counts.get(hint.code) ?? 0;
    counts.set(hint.code, nth + 1);
    const figures = { measured: lengthWords(hint.measured_mm, unit), wanted: lengthWords(hint.wanted_mm, unit) };
    return { hint, key: `${hint.code}-${nth}`, words: clearanceWords(hint, kitchen, nth, figures) };
  });
  const [short, fine] = (['short', 'fine'] as const).map((level) => told.filter(({ hint }) => hint.level === level));
  const list = (some: typeof told) => (
    <ul className="clearances">
      {some.map(({ hint, key, words }) => (
        <Clearance key={key} hint={hint} words={words} onPoint={props.onPoint} onShow={props.onShow} />
      ))}
    </ul>
  );
  return (
    <section className="room-part" aria-label={CLEARANCES.title}>
      <h3>{CLEARANCES.title}</h3>
      <p>{CLEARANCES.short(short!.length)}</p>
      {list(short!)}
      <details className="fold">
        <summary>{CLEARANCES.fine(fine!.length)}</summary>
        {list(fine!)}
      </details>
      <details className="fold">
        <summary>{CLEARANCES.users}</summary>
        {USERS.map((need) => (
          <label key={need} className="check">
            <input
              type="checkbox"
              checked={users.includes(need)}
              onChange={(event) => {
                const others = users.filter((one) => one !== need);
                props.onUsers(event.target.checked ? [...others, need] : others);
              }}
            />
            {CLEARANCES.needs[need]}
          </label>
        ))}
      </details>
      <p className="small quiet">{CLEARANCES.notLaw}</p>
    </section>
  );
}

interface ClearanceProps extends Pick<ClearanceListProps, 'onPoint' | 'onShow'> {
  readonly hint: ClearanceHint;
  readonly words: string;
}

function Clearance({ hint, words, onPoint, onShow }: ClearanceProps) {
  const source = useId();
  const [open, setOpen] = useState(false);
  const isShort = hint.level === 'short';
  const Mark = isShort ? TriangleAlert : Check;
  return (
    <li className="clearance" onPointerEnter={() => onPoint(hint)} onPointerLeave={() => onPoint(null)}>
      <Mark className="mark" role="img" aria-label={isShort ? CLEARANCES.isShort : CLEARANCES.isFine} />
      <button
        type="button"
        className="clearance-words small"
        aria-expanded={open}
        aria-controls={source}
        onFocus={() => onPoint(hint)}
        onBlur={() => onPoint(null)}
        onClick={() => {
          setOpen(!open);
          onShow();
        }}
      >
        {words}
      </button>
      <p id={source} className="clearance-source small quiet" hidden={!open}>
        {CLEARANCES.source(SOURCES[hint.source])}
      </p>
    </li>
  );
}
