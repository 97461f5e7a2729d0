import type { PropMesh } from '../../engine/light/types';
import { SURFACES } from '../../engine/surface';
import { cooktopExtent, cooktopSide } from '../parts/cooktop';
import { boxAt, type Extent, pointAt } from '../parts/side';
import type { Plan } from '../plan/types';
import { box } from './box';
import { ZONES } from './cooking-marks';
import { lathe, type Turned } from './lathe';
import { append, emptyMesh, toProp } from './mesh';

// Measures of a gas cooktop, m. Common practice, no source.

/** Burner: base and cap, over the radius of its zone. */
const BURNER: readonly (readonly Turned[])[] = [
  [
    [0.5, 0],
    [0.5, 0.008],
  ],
  [
    [0.5, 0.008],
    [0.38, 0.01],
  ],
  [
    [0.38, 0.01],
    [0.38, 0.016],
    [0.36, 0.018],
    [0.15, 0.019],
    [0, 0.019],
  ],
];
/** Grates: bar, height of their top over the plate, from the plate's edge, half the gap between the two, depth of the knobs' strip. */
const GRATE = { bar: 0.01, top: 0.042, edge: 0.02, half: 0.004, knobs: 0.075 };
const KNOB: readonly (readonly Turned[])[] = [
  [
    [0.02, 0],
    [0.0195, 0.01],
    [0.017, 0.023],
  ],
  [
    [0.017, 0.023],
    [0, 0.023],
  ],
];
const KNOBS_APART = 0.07;

/** Burners, two grates over them, and a row of knobs at the front. */
export function gasBurners(plan: Plan): PropMesh {
  const side = cooktopSide(plan);
  const { a, d, z } = cooktopExtent(plan);
  const [long, deep] = [a[1] - a[0], d[1] - d[0]];
  const mesh = emptyMesh();
  const front = d[1] - GRATE.knobs;
  // The zones share what the knobs leave.
  const backOf = (share: number): number => front - share * (deep - GRATE.knobs);
  for (const { along, back, radius } of ZONES) {
    const scaled = BURNER.map((facet) => facet.map(([r, h]): Turned => [r * radius, h]));
    append(mesh, lathe(pointAt(side, a[0] + along * long, backOf(back), z[1]), scaled, 20));
  }
  const middle = (a[0] + a[1]) / 2;
  const grates: readonly Extent['a'][] = [
    [a[0] + GRATE.edge, middle - GRATE.half],
    [middle + GRATE.half, a[1] - GRATE.edge],
  ];
  for (const reach of grates) {
    for (const bar of grateBars(reach, [d[0] + GRATE.edge, front], z[1], long, a[0], backOf)) {
      append(mesh, box(...boxAt(side, bar)));
    }
  }
  for (let i = 0; i < ZONES.length; i++) {
    const along = middle + (i - (ZONES.length - 1) / 2) * KNOBS_APART;
    append(mesh, lathe(pointAt(side, along, d[1] - GRATE.knobs / 2, z[1]), KNOB, 14));
  }
  return toProp(mesh, SURFACES.indexOf('appliance'), 'gas burners');
}

/** A frame on four feet, with two bars over each burner that leave its middle free. */
function grateBars(
  reach: Extent['a'],
  d: Extent['d'],
  plate: number,
  long: number,
  start: number,
  backOf: (share: number) => number,
): Extent[] {
  const b = GRATE.bar;
  const z = [plate + GRATE.top - b, plate + GRATE.top] as const;
  const inner = [reach[0] + b, reach[1] - b] as const;
  const bars: Extent[] = [
    { a: reach, d: [d[0], d[0] + b], z },
    { a: reach, d: [d[1] - b, d[1]], z },
    { a: [reach[0], inner[0]], d: [d[0] + b, d[1] - b], z },
    { a: [inner[1], reach[1]], d: [d[0] + b, d[1] - b], z },
  ];
  for (const x of [[reach[0], inner[0]] as const, [inner[1], reach[1]] as const]) {
    for (const y of [[d[0], d[0] + b] as const, [d[1] - b, d[1]] as const]) bars.push({ a: x, d: y, z: [plate, z[0]] });
  }
  for (const { along, back, radius } of ZONES) {
    const x = start + along * long;
    if (x < reach[0] || x > reach[1]) continue;
    const y = backOf(back);
    const free = radius * 0.3;
    const across = [y - b / 2, y + b / 2] as const;
    bars.push({ a: [inner[0], x - free], d: across, z }, { a: [x + free, inner[1]], d: across, z });
  }
  return bars;
}
