import { splitContacts } from '../engine/light/split-contacts';
import type { FineRect, Solid } from '../engine/light/types';
import { Assembly, type Bar, type Recess } from './parts/assembly';
import { addBacksplash, addUpstand } from './parts/backsplash';
import { addBaseUnits } from './parts/base-units';
import { addBlinds } from './parts/blinds';
import { addCooktop } from './parts/cooktop';
import { addCounters } from './parts/counters';
import { cutFineRect } from './parts/cut-holes';
import { addDoor, addSkirting, doorHole } from './parts/door';
import { addHood } from './parts/hood';
import { addIsland } from './parts/island';
import { addLampFaces } from './parts/lamps';
import { addOutside, addShell } from './parts/shell';
import { addShelves } from './parts/shelves';
import { addSink } from './parts/sink';
import { addTallUnits } from './parts/tall-units';
import { addWallUnits } from './parts/wall-units';
import { addWaterfall } from './parts/waterfall';
import { addFineOpenings } from './parts/window';
import type { Plan } from './plan/types';

/** The room as one sees it: visible faces only, with the solids they belong to and the handles to fit. */
export interface FineGeometry {
  readonly rects: readonly FineRect[];
  readonly solids: readonly Solid[];
  readonly bars: readonly Bar[];
  readonly recesses: readonly Recess[];
}

/** Every part at the detail one sees. */
export function buildFine(plan: Plan): FineGeometry {
  const parts = new Assembly();
  addOutside(parts, plan);
  addShell(parts, plan, { front: [doorHole(plan)] });
  addFineOpenings(parts, plan);
  addDoor(parts, plan);
  addSkirting(parts, plan);
  addLampFaces(parts, plan);
  addBaseUnits(parts, plan);
  addTallUnits(parts, plan);
  addWallUnits(parts, plan);
  addCounters(parts, plan);
  addSink(parts, plan);
  addBacksplash(parts, plan);
  addUpstand(parts, plan);
  addCooktop(parts, plan);
  addHood(parts, plan);
  addIsland(parts, plan);
  addWaterfall(parts, plan);
  addShelves(parts, plan);
  addBlinds(parts, plan);
  const { solids, bars, recesses } = parts;
  return { rects: splitContacts(parts.rects, solids, cutFineRect), solids, bars, recesses };
}
