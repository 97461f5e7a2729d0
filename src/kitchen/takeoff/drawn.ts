import type { Solid } from '../../engine/light/types';
import { Assembly } from '../parts/assembly';
import { addBacksplash, addUpstand } from '../parts/backsplash';
import { addBaseUnits } from '../parts/base-units';
import { addCounters } from '../parts/counters';
import { addDoor } from '../parts/door';
import { addHood } from '../parts/hood';
import { addIsland } from '../parts/island';
import { addOutside } from '../parts/shell';
import { addShelves } from '../parts/shelves';
import { addTallUnits } from '../parts/tall-units';
import { addWallUnits } from '../parts/wall-units';
import { addWaterfall } from '../parts/waterfall';
import { addFineOpenings } from '../parts/window';
import type { Plan } from '../plan/types';

/** What stands before walls and on the floor, as it is drawn, by what it hides them as. */
export interface Drawn {
  readonly plan: Plan;
  readonly units: Assembly;
  readonly tall: Assembly;
  readonly hood: Assembly;
  readonly island: Assembly;
  /** Upstands and tile. */
  readonly splash: Assembly;
  /** They hide next to nothing of their wall, which is painted before they hang. */
  readonly shelves: Assembly;
  /** Windows, glazed doors and the door of the room; no skirting. */
  readonly joinery: Assembly;
  /** Floor, walls and ceiling as solids. */
  readonly outside: Assembly;
}

/** Draws the parts of a kitchen, each kind by itself. */
export function drawParts(plan: Plan): Drawn {
  const draw = (...adds: readonly ((parts: Assembly, plan: Plan) => void)[]): Assembly => {
    const parts = new Assembly();
    for (const add of adds) add(parts, plan);
    return parts;
  };
  return {
    plan,
    units: draw(addBaseUnits, addWallUnits, addCounters),
    tall: draw(addTallUnits),
    hood: draw(addHood),
    island: draw(addIsland, addWaterfall),
    splash: draw(addBacksplash, addUpstand),
    shelves: draw(addShelves),
    joinery: draw(addFineOpenings, addDoor),
    outside: draw(addOutside),
  };
}

/** All that is made of furniture. */
export const furniture = ({ units, tall, hood, island, shelves }: Drawn): readonly Assembly[] => [
  units,
  tall,
  hood,
  island,
  shelves,
];

/** All solids that may hide a face. */
export const allSolids = (drawn: Drawn): readonly Solid[] =>
  [...furniture(drawn), drawn.splash, drawn.joinery, drawn.outside].flatMap(({ solids }) => solids);
