import { Plus } from 'lucide-react';
import { useId, useState } from 'react';
import type { Problem } from '../../engine/result';
import type { Kitchen, Opening, Wall } from '../../model/project';
import { Menu } from '../drawer/Menu';
import { Choices } from '../parts/Choices';
import { DAYLIGHT, FIELD, WINDOWS } from '../words/daylight';
import { problemAtField } from './field-problem';
import { NumberField } from './NumberField';
import { newOpening } from './new-opening';

interface WindowListProps {
  readonly kitchen: Kitchen;
  readonly chosen: string | null;
  readonly onChoose: (id: string | null) => void;
  readonly onOpenings: (openings: readonly Opening[]) => readonly Problem[];
}

const WALLS: readonly Wall[] = ['left', 'back', 'right', 'front'];
const PANES = ['1', '2', '3'].map((id) => ({ id, name: id }));

/** The windows of the room: choose one to see and change its measures, add one, take one away. */
export function WindowList({ kitchen, chosen, onChoose, onOpenings }: WindowListProps) {
  const name = useId();
  const [told, setTold] = useState<string | null>(null);
  const { openings } = kitchen;
  const opening = openings.find(({ id }) => id === chosen);
  const add = () => {
    const made = newOpening(kitchen);
    if (!made) return setTold(WINDOWS.noRoom);
    const [problem] = onOpenings([...openings, made]);
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
              {WINDOWS.name(i + 1, one.wall, one.width, one.height)}
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
          onOpening={(next) => onOpenings(openings.map((one) => (one === opening ? next : one)))}
          onRemove={() => {
            onOpenings(openings.filter((one) => one !== opening));
            onChoose(null);
          }}
        />
      )}
    </section>
  );
}

interface WindowFormProps {
  readonly opening: Opening;
  readonly onOpening: (opening: Opening) => readonly Problem[];
  readonly onRemove: () => void;
}

function WindowForm({ opening, onOpening, onRemove }: WindowFormProps) {
  const [refused, setRefused] = useState<string | null>(null);
  const number = (key: 'center' | 'width' | 'height' | 'sill' | 'reveal' | 'leaves' | 'facing_deg', unit?: string) => (
    <NumberField
      label={
        key === 'center'
          ? WINDOWS.centerFrom(WINDOWS.corner[opening.wall])
          : key === 'facing_deg'
            ? WINDOWS.facing
            : WINDOWS[key]
      }
      {...(unit ? { unit } : {})}
      value={opening[key]}
      onValue={(value) => onOpening({ ...opening, [key]: value })}
    />
  );
  const set = (changes: Partial<Opening>, label: string) => {
    const [problem] = onOpening({ ...opening, ...changes });
    setRefused(problem ? problemAtField(problem, label) : null);
  };
  return (
    <div className="room-form">
      <div className="room-fields">
        <Menu
          label={WINDOWS.wall}
          value={opening.wall}
          choices={WALLS.map((wall) => [wall, DAYLIGHT.walls[wall]])}
          onChoose={(wall) => set({ wall }, WINDOWS.wall)}
        />
        <Menu
          label={WINDOWS.kind}
          value={opening.kind}
          choices={[
            ['window', WINDOWS.kinds.window],
            ['glazed-door', WINDOWS.kinds['glazed-door']],
          ]}
          onChoose={(kind) => set(kind === 'glazed-door' ? DOOR : { kind }, WINDOWS.kind)}
        />
      </div>
      {refused && (
        <p className="small field-wrong" role="alert">
          {refused}
        </p>
      )}
      <div className="room-fields">
        {number('width', FIELD.mm)}
        {number('height', FIELD.mm)}
        {number('center', FIELD.mm)}
        {number('sill', FIELD.mm)}
        {number('reveal', FIELD.mm)}
        {number('leaves')}
      </div>
      <div className="field">
        <span className="label">{WINDOWS.panes}</span>
        <Choices
          label={WINDOWS.panes}
          choices={PANES}
          chosen={String(opening.panes)}
          onChoose={(panes) => set({ panes: Number(panes) }, WINDOWS.panes)}
        />
      </div>
      {number('facing_deg', FIELD.deg)}
      <div className="room-row">
        <button type="button" className="button button-outlined" onClick={onRemove}>
          {WINDOWS.remove}
        </button>
      </div>
    </div>
  );
}

/** A door stands on the floor and is as high as doors are. */
const DOOR = { kind: 'glazed-door', sill: 0, height: 2100 } as const;
