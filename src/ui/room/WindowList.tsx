import { Plus } from 'lucide-react';
import { useId, useState } from 'react';
import type { Problem } from '../../engine/result';
import type { Kitchen, Opening, Wall } from '../../model/kitchen';
import { Menu } from '../drawer/Menu';
import { Choices } from '../parts/Choices';
import { DAYLIGHT, FIELD, WINDOWS } from '../words/daylight';
import { problemAtField } from './field-problem';
import { LENGTH, type Measure } from './measures';
import { NumberField } from './NumberField';
import { fittedOpening, newOpening } from './new-opening';

interface WindowListProps {
  readonly kitchen: Kitchen;
  readonly chosen: string | null;
  readonly onChoose: (id: string | null) => void;
  readonly onOpenings: (openings: readonly Opening[]) => readonly Problem[];
}

const WALLS: readonly Wall[] = ['left', 'back', 'right', 'front'];
const PANES = ['1', '2', '3'].map((id) => ({ id, name: id }));

/** The windows of the room: choose one to see and change its measures, add one, take one away. */
export function WindowList(props: WindowListProps) {
  const { kitchen, chosen, onChoose } = props;
  const name = useId();
  const [told, setTold] = useState<string | null>(null);
  const { openings } = kitchen;
  const change = (next: readonly Opening[]): readonly Problem[] => {
    const problems = props.onOpenings(next);
    if (problems.length === 0) setTold(null);
    return problems.map((problem) => withNumbers(problem, next));
  };
  const opening = openings.find(({ id }) => id === chosen);
  const add = () => {
    const made = newOpening(kitchen);
    if (!made) return setTold(WINDOWS.noRoom);
    const [problem] = change([...openings, made]);
    setTold(problem ? problemAtField(problem, WINDOWS.kinds.window) : null);
    if (!problem) onChoose(made.id);
  };
  return (
    <section className="room-part">
      <h3>{WINDOWS.title}</h3>
      {openings.length === 0 && <p>{WINDOWS.none}</p>}
      <ul className="room-list">
        {openings.map((one, i) => (
          <li key={one.id}>
            <label className="room-item">
              <input type="radio" name={name} checked={one.id === chosen} onChange={() => onChoose(one.id)} />
              {WINDOWS.name(one.kind, i + 1, one.wall, one.width, one.height)}
            </label>
          </li>
        ))}
      </ul>
      <div className="room-row">
        <button type="button" className="button button-outlined" onClick={add}>
          <Plus className="icon" aria-hidden="true" />
          {WINDOWS.add}
        </button>
      </div>
      {told && (
        <p className="small field-wrong" role="alert">
          {told}
        </p>
      )}
      {opening && (
        <WindowForm
          key={opening.id}
          opening={opening}
          kitchen={kitchen}
          onOpening={(next) => change(openings.map((one) => (one === opening ? next : one)))}
          onRemove={() => {
            change(openings.filter((one) => one !== opening));
            onChoose(null);
          }}
        />
      )}
    </section>
  );
}

/** The windows a problem names, by their numbers in the list. */
const withNumbers = (problem: Problem, openings: readonly Opening[]): Problem => ({
  ...problem,
  text: openings.reduce((text, { id }, i) => text.replace(`"${id}"`, String(i + 1)), problem.text),
});

interface WindowFormProps {
  readonly kitchen: Kitchen;
  readonly opening: Opening;
  readonly onOpening: (opening: Opening) => readonly Problem[];
  readonly onRemove: () => void;
}

function WindowForm({ kitchen, opening, onOpening, onRemove }: WindowFormProps) {
  const [said, setSaid] = useState<Said | null>(null);
  // What was said of the window before it changed holds no longer.
  const told = said?.of === opening ? said : null;
  const number = (
    key: 'center' | 'width' | 'height' | 'sill' | 'reveal' | 'leaves' | 'facing_deg',
    kind: { unit?: string; measure?: Measure } = {},
  ) => (
    <NumberField
      label={
        key === 'center'
          ? WINDOWS.centerFrom(WINDOWS.corner[opening.wall])
          : key === 'facing_deg'
            ? WINDOWS.facing
            : WINDOWS[key]
      }
      {...kind}
      value={opening[key]}
      path={`openings[${kitchen.openings.indexOf(opening)}].${key}`}
      basis={opening}
      onValue={(value) => onOpening({ ...opening, [key]: value })}
    />
  );
  const set = (changed: Opening, label: string) => {
    const [problem] = onOpening(changed);
    if (problem) setSaid({ of: opening, words: problemAtField(problem, label), isRefused: true });
    else if (changed.wall !== opening.wall && label !== WINDOWS.wall) {
      setSaid({ of: changed, words: WINDOWS.moved(DAYLIGHT.walls[changed.wall].toLowerCase()), isRefused: false });
    }
  };
  return (
    <div className="room-form">
      <div className="room-fields">
        <Menu
          label={WINDOWS.wall}
          value={opening.wall}
          choices={WALLS.map((wall) => [wall, DAYLIGHT.walls[wall]])}
          onChoose={(wall) => set(fittedOpening(kitchen, { ...opening, wall }, false), WINDOWS.wall)}
        />
        <Menu
          label={WINDOWS.kind}
          value={opening.kind}
          choices={[
            ['window', WINDOWS.kinds.window],
            ['glazed-door', WINDOWS.kinds['glazed-door']],
          ]}
          onChoose={(kind) => set(fittedOpening(kitchen, { ...opening, ...KINDS[kind] }, true), WINDOWS.kind)}
        />
      </div>
      {told && (
        <p className="small field-wrong" role={told.isRefused ? 'alert' : 'status'}>
          {told.words}
        </p>
      )}
      <div className="room-fields">
        {number('width', { measure: LENGTH })}
        {number('height', { measure: LENGTH })}
        {number('center', { measure: LENGTH })}
        {number('sill', { measure: LENGTH })}
        {number('reveal', { measure: LENGTH })}
        {number('leaves')}
      </div>
      <div className="field">
        <span className="label">{WINDOWS.panes}</span>
        <Choices
          label={WINDOWS.panes}
          choices={PANES}
          chosen={String(opening.panes)}
          onChoose={(panes) => set({ ...opening, panes: Number(panes) }, WINDOWS.panes)}
        />
      </div>
      <div className="room-facing">
        {number('facing_deg', { unit: FIELD.facingDeg })}
        <p className="small quiet">{WINDOWS.facingMeans(opening.facing_deg)}</p>
      </div>
      <div className="room-row">
        <button type="button" className="button button-outlined" onClick={onRemove}>
          {WINDOWS.remove}
        </button>
      </div>
    </div>
  );
}

/** A door stands on the floor and is as high as doors are; a window stands above the counter. */
const KINDS = {
  'glazed-door': { kind: 'glazed-door', sill: 0, height: 2100 },
  window: { kind: 'window', sill: 1050, height: 1200 },
} as const;

interface Said {
  /** The window it was said of. */
  readonly of: Opening;
  readonly words: string;
  readonly isRefused: boolean;
}
