import { useState } from 'react';
import type { Kitchen, OpenSide } from '../../model/kitchen';
import { inUnit } from '../../model/unit-words';
import { DAYLIGHT } from '../words/daylight';
import { KITCHEN } from '../words/kitchen';
import { reread } from '../words/spoken';
import { problemAtField } from './field-problem';
import { type KitchenFormProps, LengthFields } from './LengthFields';
import { openSides } from './new-open-side';
import { PickField } from './PickField';

const WALLS = reread(
  () => ({ front: DAYLIGHT.walls.front, left: DAYLIGHT.walls.left, right: DAYLIGHT.walls.right }) as const,
);
const LENGTHS = reread(
  () =>
    [
      ['from', KITCHEN.openFrom],
      ['to', KITCHEN.openTo],
      ['height', KITCHEN.height],
      ['next_depth', KITCHEN.nextDepth],
    ] as const,
);

/** A wide opening to a next room, or the button that makes one. */
export function OpenSideForm(form: KitchenFormProps) {
  const { kitchen, unit, onKitchen } = form;
  const side = kitchen.open_side;
  const [said, setSaid] = useState<string | null>(null);
  const put = (open_side: OpenSide | null) => onKitchen({ ...kitchen, open_side }, false);
  /** The first that fits; what is wrong with the last where none does. */
  const firstOf = (sides: readonly OpenSide[]) => {
    let problems: ReturnType<typeof put> = [];
    for (const one of sides) {
      problems = put(one);
      if (problems.length === 0) break;
    }
    return problems;
  };
  if (!side) {
    return (
      <>
        <p>{KITCHEN.noOpenSide}</p>
        <div className="room-row">
          <button
            type="button"
            className="button button-outlined"
            onClick={() => {
              const [problem] = firstOf(openSides(kitchen));
              setSaid(problem ? inUnit(problemAtField(problem, KITCHEN.openSide), unit) : null);
            }}
          >
            {KITCHEN.addOpenSide}
          </button>
        </div>
        {said && (
          <p className="small field-wrong" role="alert">
            {said}
          </p>
        )}
      </>
    );
  }
  return (
    <>
      <PickField
        label={KITCHEN.openWall}
        as="menu"
        words={WALLS}
        chosen={side.wall}
        unit={unit}
        basis={kitchen}
        onPick={(wall) => firstOf(openSides(kitchen).filter((one) => one.wall === wall))}
      />
      <LengthFields
        {...form}
        lengths={LENGTHS.map(([key, label]) => ({
          path: `open_side.${key}`,
          label,
          read: () => side[key],
          ...(key === 'from' || key === 'to'
            ? { most: ({ room }: Kitchen) => (side.wall === 'front' ? room.width : room.depth) }
            : {}),
          write: (_, mm) => ({ ...kitchen, open_side: { ...side, [key]: mm } }),
        }))}
      />
      <div className="room-row">
        <button type="button" className="button button-outlined" onClick={() => put(null)}>
          {KITCHEN.closeOpenSide}
        </button>
      </div>
    </>
  );
}
