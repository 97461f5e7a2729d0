import * as v from 'valibot';
import { FINISH_CLASSES } from '../engine/finish/types';
import { LAYOUTS } from '../engine/pattern/types';
import { SURFACES, type SurfaceId } from '../engine/surface';
import type { Kitchen } from '../model/kitchen';
import type { LogEntry } from '../model/log';
import type { CopiedLook } from '../model/look';
import { PRICE_UNITS } from '../model/price';
import { type BeamRecord, type Finish, type Lamp, USERS } from '../model/project';
import type { ProjectInFile } from './empty-surfaces';
import { assumptionsSchema, extraSchema, itemSchema, jobSchema, sampleSchema } from './order-schema';

/**
 * Shapes of the project file: which fields there are and of what kind. Ranges and references are checked by the model.
 * The order of the fields here is the order in the file.
 */
const text = v.string();
const number = v.number();
const size = v.strictTuple([number, number]);
const triple = v.strictTuple([number, number, number]);

const conditions = { illuminant: text, observer_deg: v.picklist([2, 10]) };
const specular = v.optional(v.picklist(['included', 'excluded']));

const givenColor = v.variant('kind', [
  v.object({ kind: v.literal('lab'), lab: triple, ...conditions, specular }),
  v.object({ kind: v.literal('lch'), lch: triple, ...conditions, specular }),
  v.object({ kind: v.literal('xyz'), xyz: triple, ...conditions, specular }),
  v.object({ kind: v.literal('munsell'), munsell: text }),
  v.object({ kind: v.literal('spectrum'), start_nm: number, step_nm: number, reflectance: v.array(number), specular }),
  v.object({ kind: v.literal('hex'), hex: text, space: v.optional(v.picklist(['srgb', 'display-p3'])) }),
  v.object({ kind: v.literal('lrv'), lrv: number, hue: text }),
]);

const pattern = v.variant('kind', [
  v.object({ kind: v.literal('plain') }),
  v.object({ kind: v.literal('veined'), spacing_mm: number, direction_deg: number }),
  v.object({ kind: v.literal('linear'), size_mm: number, direction_deg: number }),
  v.object({ kind: v.literal('fleck'), size_mm: number }),
  v.object({
    kind: v.literal('grain'),
    board_mm: v.optional(size),
    figure: v.optional(v.picklist(['rings', 'pores', 'ray-fleck'])),
  }),
  v.object({ kind: v.literal('cleft'), size_mm: number }),
  v.object({
    kind: v.literal('cloud'),
    size_mm: number,
    gathers: v.optional(v.picklist(['edges', 'anywhere'])),
  }),
  v.object({ kind: v.literal('thread'), size_mm: number }),
  v.object({ kind: v.literal('brushed') }),
]);

const PATTERN_KINDS = ['plain', 'veined', 'linear', 'fleck', 'grain', 'cleft', 'cloud', 'thread', 'brushed'] as const;

const role = v.picklist(['base', 'vein', 'fleck', 'grain', 'cleft', 'pool', 'thread', 'shade', 'cloud', 'grout']);

const provenance = v.picklist(['measured', 'declared', 'photo-with-card', 'photo', 'by-eye', 'screen']);

export const finishSchema = v.object({
  id: text,
  label: text,
  class: v.picklist(FINISH_CLASSES),
  gloss_gu: number,
  components: v.array(v.object({ role, share: number, color: givenColor, lrv: v.optional(number) })),
  pattern,
  variation: v.picklist(['V0', 'V1', 'V2', 'V3', 'V4']),
  piece_mm: v.optional(size),
  slab_mm: v.optional(size),
  thickness_mm: v.optional(number),
  provenance,
  uncertainty_de00: v.optional(number),
  note: v.optional(text),
  tags: v.optional(v.array(text)),
  supply: v.optional(
    v.object({
      supplier: v.optional(text),
      code: v.optional(text),
      unit: v.optional(text),
      pack: v.optional(number),
      lead_time_weeks: v.optional(number),
      price_band: v.optional(v.picklist(['$', '$$', '$$$'])),
      price: v.optional(
        v.object({ amount: number, currency: v.optional(text), per: v.optional(v.picklist(PRICE_UNITS)) }),
      ),
      availability: v.optional(text),
    }),
  ),
  origin: v.optional(v.object({ library: text, name: text, finish: text })),
}) satisfies v.GenericSchema<unknown, Finish>;

const placement = v.object({
  finish: text,
  state: v.picklist(['fixed', 'open', 'decided', 'ordered']),
  laying: v.object({
    layout: v.picklist(LAYOUTS),
    joint_mm: v.optional(number),
    grout: v.optional(text),
    direction_deg: v.optional(v.picklist([0, 45, 90])),
    start: v.optional(v.picklist(['centered', 'corner'])),
    slab: v.optional(v.object({ match: v.picklist(['bookmatch', 'slip']), shift_mm: number })),
  }),
});

/** Absent or null: nothing is chosen yet. */
const chosen = v.nullish(placement);

const scheme = v.object(
  Object.fromEntries(SURFACES.map((surface) => [surface, chosen])) as { [S in SurfaceId]: typeof chosen },
);

const group = v.object({ level: number, light: text, dims: v.optional(v.literal('warm')) });

const daylight = v.object({
  sky: v.picklist(['overcast', 'clear']),
  month: number,
  day: number,
  hour: number,
  blind: number,
  sky_lx: v.optional(number),
  light: v.optional(text),
});

/** Lamps with a spectrum of their own. */
const lamp = v.object({
  id: text,
  label: text,
  start_nm: number,
  step_nm: number,
  power: v.array(number),
  note: v.optional(text),
}) satisfies v.GenericSchema<unknown, Lamp>;

const beamRecord = v.object({
  id: text,
  label: text,
  lumens: number,
  vertical_deg: v.array(number),
  horizontal_deg: v.array(number),
  candela: v.array(v.array(number)),
  note: v.optional(text),
}) satisfies v.GenericSchema<unknown, BeamRecord>;

const material = v.picklist(['unknown', 'paving', 'greenery', 'brick', 'snow', 'soil', 'light-render']);

const beam = v.variant('kind', [
  v.object({ kind: v.literal('wide') }),
  v.object({ kind: v.literal('spread'), angle_deg: number }),
  v.object({ kind: v.literal('file'), beam: text, turn_deg: number }),
]);
const switched = { id: text, group: v.picklist(['ceiling', 'under-cabinet', 'pendant', 'hood']), beam };
const at = v.optional(v.array(size));

const fixture = v.variant('kind', [
  v.object({ kind: v.literal('downlight'), ...switched, count: number, diameter: number, lumens_each: number, at }),
  v.object({
    kind: v.literal('panel'),
    ...switched,
    count: number,
    width: number,
    length: number,
    lumens_each: number,
    at,
  }),
  v.object({
    kind: v.literal('pendant'),
    ...switched,
    count: number,
    diameter: number,
    height: number,
    lumens_each: number,
    at,
  }),
  v.object({
    kind: v.literal('strip'),
    ...switched,
    run: v.picklist(['above-wall-units', 'toe-kick']),
    width: number,
    lumens_per_m: number,
  }),
  v.object({
    kind: v.literal('under-cabinet'),
    ...switched,
    run: v.picklist(['front', 'middle', 'back']),
    width: number,
    lumens_per_m: number,
  }),
  v.object({ kind: v.literal('hood'), ...switched, count: number, diameter: number, lumens_each: number }),
]);

const runWall = v.picklist(['left', 'back', 'right']);
const tallKind = v.picklist(['larder', 'oven', 'fridge']);

const kitchenSchema = v.object({
  name: text,
  region: v.picklist(['eu', 'uk', 'us']),
  room: v.object({ width: number, depth: number, height: number }),
  runs: v.array(
    v.object({
      wall: runWall,
      from: number,
      to: number,
      tall_from: v.array(tallKind),
      tall_to: v.array(tallKind),
      over: v.picklist(['units', 'shelf', 'none']),
      splash: v.picklist(['upstand', 'backsplash', 'backsplash-to-ceiling']),
    }),
  ),
  island: v.nullable(
    v.object({
      x: number,
      y: number,
      width: number,
      depth: number,
      seat_overhang: number,
      joined: v.nullable(v.picklist(['left', 'right'])),
      waterfall: v.picklist(['none', 'left', 'right', 'both']),
      stools: number,
    }),
  ),
  fronts: v.object({
    style: v.picklist(['flat', 'five-piece']),
    mounting: v.picklist(['overlay', 'inset']),
    handle: v.picklist(['bar', 'knob', 'edge', 'none']),
  }),
  base: v.object({ depth: number, carcass_height: number, plinth_height: number, plinth_recess: number }),
  counter: v.object({
    depth: number,
    thickness: number,
    overhang: number,
    edge: v.picklist(['eased', 'pencil', 'bevel', 'half-bullnose', 'full-bullnose', 'mitred']),
  }),
  wall_units: v.object({ depth: number, height: number, gap_above_counter: number }),
  tall_height: number,
  sink: v.object({
    run: runWall,
    center: number,
    bowls: v.picklist([1, 2]),
    fit: v.picklist(['inset', 'undermount', 'apron']),
    tap: v.picklist(['arch', 'straight']),
  }),
  cooktop: v.object({
    run: runWall,
    center: number,
    width: number,
    kind: v.picklist(['induction', 'gas']),
    hood: v.picklist(['canopy', 'built-in', 'none']),
    oven_below: v.boolean(),
  }),
  dishwasher: v.picklist(['hidden', 'free-standing', 'none']),
  fridge: v.picklist(['hidden', 'free-standing']),
  site: v.object({
    latitude_deg: number,
    longitude_deg: number,
    utc_offset_h: number,
    bearing_deg: number,
    ground: material,
    facing: material,
  }),
  openings: v.array(
    v.object({
      id: text,
      kind: v.picklist(['window', 'glazed-door']),
      wall: v.picklist(['left', 'back', 'right', 'front']),
      center: number,
      width: number,
      sill: number,
      height: number,
      reveal: number,
      leaves: number,
      panes: number,
      facing_deg: number,
      blind: v.optional(v.literal('roller')),
    }),
  ),
  open_side: v.nullable(
    v.object({
      wall: v.picklist(['front', 'left', 'right']),
      from: number,
      to: number,
      height: number,
      next_depth: number,
    }),
  ),
  door: v.object({ width: number, height: number, from_right: number }),
  skirting_height: number,
  upstand_height: number,
  fixtures: v.array(fixture),
  objects: v.boolean(),
}) satisfies v.GenericSchema<unknown, Kitchen>;

export const lookSchema = v.object({
  id: text,
  name: text,
  source: v.picklist(['scheme', 'picture']),
  note: v.optional(text),
  surfaces: v.array(
    v.object({
      surface: v.picklist(SURFACES),
      finish: v.optional(text),
      class: v.optional(v.picklist(FINISH_CLASSES)),
      gloss_gu: v.optional(number),
      pattern: v.optional(v.picklist(PATTERN_KINDS)),
      pattern_mm: v.optional(number),
      colors: v.array(v.object({ role, share: number, color: givenColor, provenance })),
    }),
  ),
}) satisfies v.GenericSchema<unknown, CopiedLook>;

/** A project without its log and its revisions. */
const documentFields = {
  type: v.literal('upstand-project'),
  version: v.literal(9),
  id: text,
  name: text,
  note: text,
  users: v.optional(v.array(v.picklist(USERS))),
  year_built: v.optional(number),
  kitchen: kitchenSchema,
  settings: v.array(
    v.object({
      id: text,
      name: text,
      daylight: v.nullable(daylight),
      lamps: v.object({ ceiling: group, 'under-cabinet': group, pendant: group, hood: group }),
    }),
  ),
  lamps: v.optional(v.array(lamp)),
  beams: v.optional(v.array(beamRecord)),
  library: v.array(finishSchema),
  options: v.array(
    v.object({
      id: text,
      name: text,
      note: v.optional(text),
      scheme,
      items: v.optional(v.array(itemSchema)),
      extras: v.optional(v.array(extraSchema)),
    }),
  ),
  looks: v.optional(v.array(lookSchema)),
  job: v.optional(jobSchema),
  quantities: v.optional(assumptionsSchema),
  samples: v.optional(v.array(sampleSchema)),
};

const logEntry = v.object({
  at: text,
  kind: v.picklist(['note', 'decision', 'revision']),
  text,
  option: v.optional(text),
  surface: v.optional(v.picklist(SURFACES)),
}) satisfies v.GenericSchema<unknown, LogEntry>;

export const projectSchema = v.object({
  ...documentFields,
  log: v.optional(v.array(logEntry)),
  revisions: v.optional(
    v.array(v.object({ id: text, name: text, at: text, note: text, document: v.object(documentFields) })),
  ),
}) satisfies v.GenericSchema<unknown, ProjectInFile>;
