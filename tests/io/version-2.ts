import { demoText } from './demo';
import type { Loose } from './version-1';

/** A document as version 2 wrote it, its kitchen as text: the L with an island was the only layout. */
const KITCHEN = `{
  "layout": "l-island",
  "name": "L kitchen with island",
  "room": { "width": 4600, "depth": 4000, "height": 2500 },
  "fronts": "five-piece",
  "base": { "depth": 600, "carcass_height": 720, "plinth_height": 150, "plinth_recess": 50 },
  "counter": { "depth": 620, "thickness": 30, "overhang": 20 },
  "wall_units": { "depth": 330, "height": 720, "gap_above_counter": 500 },
  "tall_height": 2300,
  "sink": { "center": 2350 },
  "island": { "x": 1750, "y": 1350, "width": 1800, "depth": 900, "seat_overhang": 250 },
  "site": {
    "latitude_deg": 51.5,
    "longitude_deg": 0,
    "utc_offset_h": 0,
    "bearing_deg": 330,
    "ground": "unknown",
    "facing": "brick"
  },
  "openings": [
    {
      "id": "window",
      "kind": "window",
      "wall": "left",
      "center": 2350,
      "width": 1800,
      "sill": 1050,
      "height": 1200,
      "reveal": 160,
      "leaves": 2,
      "panes": 2,
      "facing_deg": 0
    }
  ],
  "door": { "width": 900, "height": 2050, "from_right": 200 },
  "skirting_height": 90,
  "upstand_height": 100,
  "fixtures": [
    {
      "kind": "hood",
      "id": "hood",
      "group": "hood",
      "beam": { "kind": "spread", "angle_deg": 90 },
      "count": 2,
      "diameter": 60,
      "lumens_each": 250
    }
  ]
}`;

export function version2(change: (project: Loose) => void = () => {}): string {
  const { settings, library, options } = JSON.parse(demoText()) as Loose;
  const project: Loose = {
    type: 'upstand-project',
    version: 2,
    id: 'old-house',
    name: 'Old house',
    note: 'Invented for this test.',
    kitchen: JSON.parse(KITCHEN),
    settings,
    library,
    options,
  };
  change(project);
  return JSON.stringify(project, null, 2);
}
