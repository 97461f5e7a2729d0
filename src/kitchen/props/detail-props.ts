import type { PropMesh, Solid } from '../../engine/light/types';
import { SURFACES, type SurfaceId } from '../../engine/surface';
import type { FineGeometry } from '../fine';
import { coarseSeats } from '../parts/stools';
import type { Plan } from '../plan/types';
import { bevelProps } from './bevels';
import { zoneMarks } from './cooking-marks';
import { counterEdgeProps } from './counter-edges';
import { doorLevers } from './door-lever';
import { gasBurners } from './gas-burners';
import { handleProps } from './handles';
import { append, emptyMesh, type Mesh, toProp } from './mesh';
import { pendantProps } from './pendants';
import { thingsOf } from './place-things';

import { bracketProps } from './shelf-brackets';
import { stoolProps } from './stools';
import { tapProp, tapShade } from './tap';

/** Everything that is not a rectangle: handles, tap, edges, marks, levers, pendants, seats, brackets and things for scale. */
export function detailProps(plan: Plan, fine: Pick<FineGeometry, 'bars' | 'recesses'>): PropMesh[] {
  return [
    ...handleProps(fine.bars),
    tapProp(plan),
    plan.cooktop.kind === 'gas' ? gasBurners(plan) : zoneMarks(plan),
    ...counterEdgeProps(plan),
    ...bevelProps(fine.recesses),
    doorLevers(plan),
    ...pendantProps(plan),
    ...stoolProps(plan),
    ...bracketProps(plan),
    ...thingProps(plan),
  ];
}

/** Boxes that stand for props where they cut off light: the tap, seats, and things for scale. */
export const detailShades = (plan: Plan): Solid[] => [
  tapShade(plan),
  ...coarseSeats(plan),
  ...thingsOf(plan).map(({ shade }) => shade),
];

/** Things for scale, one mesh per finish. */
function thingProps(plan: Plan): PropMesh[] {
  const meshes = new Map<SurfaceId, Mesh>();
  for (const { surface, mesh } of thingsOf(plan)) {
    const whole = meshes.get(surface) ?? emptyMesh();
    meshes.set(surface, whole);
    append(whole, mesh);
  }
  return [...meshes].map(([surface, mesh]) => toProp(mesh, SURFACES.indexOf(surface), `things of ${surface}`));
}
