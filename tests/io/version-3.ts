import { demoText } from './demo';
import type { Loose } from './version-1';

/** A document as version 3 wrote it, its kitchen as text: kitchens as runs along walls, and no looks. */
const KITCHEN = `{
  "name": "L kitchen with island",
  "region": "eu",
  "room": { "width": 4600, "depth": 4000, "height": 2500 },
  "runs": [
    { "wall": "left", "from": 910, "to": 4000, "tall_from": [], "tall_to": [], "over": "none", "splash": "upstand" },
    {
      "wall": "back",
      "from": 0,
      "to": 4600,
      "tall_from": [],
      "tall_to": ["fridge", "oven"],
      "over": "units",
      "splash": "backsplash"
    }
  ],
  "island": {
    "x": 1750,
    "y": 1350,
    "width": 1800,
    "depth": 900,
    "seat_overhang": 250,
    "joined": null,
    "waterfall": "none",
    "stools": 3
  },
  "fronts": { "style": "five-piece", "mounting": "overlay", "handle": "bar" },
  "base": { "depth": 600, "carcass_height": 720, "plinth_height": 150, "plinth_recess": 50 },
  "counter": { "depth": 620, "thickness": 30, "overhang": 20, "edge": "eased" },
  "wall_units": { "depth": 330, "height": 720, "gap_above_counter": 500 },
  "tall_height": 2300,
  "sink": { "run": "left", "center": 2350, "bowls": 1, "fit": "inset", "tap": "arch" },
  "cooktop": {
    "run": "back",
    "center": 2010,
    "width": 860,
    "kind": "induction",
    "hood": "canopy",
    "oven_below": false
  },
  "dishwasher": "hidden",
  "fridge": "hidden",
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
  "open_side": null,
  "door": { "width": 900, "height": 2050, "from_right": 200 },
  "skirting_height": 90,
  "upstand_height": 100,
  "fixtures": [
    {
      "kind": "panel",
      "id": "ceiling",
      "group": "ceiling",
      "beam": { "kind": "wide" },
      "count": 6,
      "width": 200,
      "length": 200,
      "lumens_each": 1300
    },
    {
      "kind": "downlight",
      "id": "over-sink",
      "group": "ceiling",
      "beam": { "kind": "spread", "angle_deg": 60 },
      "count": 2,
      "diameter": 80,
      "lumens_each": 450,
      "at": [[320, 2050], [320, 2650]]
    },
    {
      "kind": "under-cabinet",
      "id": "under-cabinet",
      "group": "under-cabinet",
      "beam": { "kind": "wide" },
      "run": "front",
      "width": 20,
      "lumens_per_m": 600
    },
    {
      "kind": "pendant",
      "id": "pendants",
      "group": "pendant",
      "beam": { "kind": "spread", "angle_deg": 100 },
      "count": 3,
      "diameter": 260,
      "height": 1650,
      "lumens_each": 450
    },
    {
      "kind": "hood",
      "id": "hood",
      "group": "hood",
      "beam": { "kind": "spread", "angle_deg": 90 },
      "count": 2,
      "diameter": 60,
      "lumens_each": 250
    }
  ],
  "objects": false
}`;

export function version3(): string {
  const { settings, library, options } = JSON.parse(demoText()) as Loose;
  const project: Loose = {
    type: 'upstand-project',
    version: 3,
    id: 'runs',
    name: 'Kitchen of runs',
    note: 'Invented for this test.',
    kitchen: JSON.parse(KITCHEN),
    settings,
    library,
    options,
  };
  return JSON.stringify(project, null, 2);
}
