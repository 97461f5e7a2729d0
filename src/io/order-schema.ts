import * as v from 'valibot';
import { type ExtraItem, type ItemRecord, type Job, SAMPLE_STATUSES, type SampleRecord } from '../model/order/records';
import { FITTING_STAGES } from '../model/order/stages';
import { PRICE_UNITS } from '../model/price';
import type { QuantityAssumptions } from '../model/quantity/assumptions';

/** Shapes of what a project file says of ordering. Order of fields here is that in the file. */
const text = v.string();
const number = v.number();
const maybeText = v.optional(text);
const maybeNumber = v.optional(number);

export const jobSchema = v.object({
  prepared_for: maybeText,
  prepared_by: maybeText,
  place: maybeText,
  brief: maybeText,
  starts_on: maybeText,
  margin_days: maybeNumber,
  stage_days: v.optional(
    v.object({
      floor: maybeNumber,
      cabinets: maybeNumber,
      template: maybeNumber,
      counter: maybeNumber,
      backsplash: maybeNumber,
      fittings: maybeNumber,
      paint: maybeNumber,
    }),
  ),
}) satisfies v.GenericSchema<unknown, Job>;

export const assumptionsSchema = v.object({
  floor_reach: v.optional(v.picklist(['under-units', 'to-plinth'])),
  least_opening_m2: maybeNumber,
  paint_behind_units: v.optional(v.boolean()),
  wall_spread_m2_per_l: maybeNumber,
  wall_coats: maybeNumber,
  front_spread_m2_per_l: maybeNumber,
  front_coats: maybeNumber,
  coated_faces: v.optional(v.picklist(['front', 'both'])),
  paint_waste_percent: maybeNumber,
  slab_trim_mm: maybeNumber,
  kerf_mm: maybeNumber,
  shortest_part_mm: maybeNumber,
  seam_clear_mm: maybeNumber,
  match_seams: v.optional(v.boolean()),
  grout_depth_mm: maybeNumber,
  grout_kg_per_l: maybeNumber,
  grout_waste_percent: maybeNumber,
  spare_packs: maybeNumber,
}) satisfies v.GenericSchema<unknown, Partial<QuantityAssumptions>>;

const lot = { batch: maybeText, shade: maybeText, calibre: maybeText, slabs: maybeText };

export const itemSchema = v.object({
  item: text,
  finish: text,
  waste_percent: maybeNumber,
  spare_packs: maybeNumber,
  supplier: maybeText,
  code: maybeText,
  unit: maybeText,
  price: v.optional(
    v.object({
      amount: number,
      currency: maybeText,
      per: v.optional(v.picklist([...PRICE_UNITS, 'all'])),
      of: maybeText,
    }),
  ),
  lead_time_weeks: maybeNumber,
  needed_on: maybeText,
  ordered_on: maybeText,
  lot: v.optional(v.object(lot)),
  delivery: v.optional(
    v.object({ on: text, by: maybeText, outcome: v.picklist(['accepted', 'rejected']), ...lot, note: maybeText }),
  ),
  approved: v.optional(v.object({ by: text, on: text, of: maybeText })),
  note: maybeText,
}) satisfies v.GenericSchema<unknown, ItemRecord>;

export const extraSchema = v.object({
  id: text,
  what: text,
  where: maybeText,
  quantity: maybeNumber,
  unit: maybeText,
  supplier: maybeText,
  code: maybeText,
  price: v.optional(v.object({ amount: number, currency: maybeText, per: v.optional(v.picklist(PRICE_UNITS)) })),
  lead_time_weeks: maybeNumber,
  stage: v.picklist(FITTING_STAGES),
  ordered_on: maybeText,
  note: maybeText,
}) satisfies v.GenericSchema<unknown, ExtraItem>;

export const sampleSchema = v.object({
  finish: text,
  status: v.picklist(SAMPLE_STATUSES),
  on: maybeText,
  batch: maybeText,
  verdicts: v.array(
    v.object({ light: text, by: text, on: text, verdict: v.picklist(['holds', 'fails', 'unsure']), note: maybeText }),
  ),
}) satisfies v.GenericSchema<unknown, SampleRecord>;
