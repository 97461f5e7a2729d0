import type { FinishClass, Provenance } from '../../engine/finish/types';
import { failure, type Result, success } from '../../engine/result';
import { checkFinish, mostGloss, THICKNESS_MM } from '../../model/check-finish';
import { lengthText, parseLength } from '../../model/length-text';
import { codeOf } from '../../model/merge-finishes';
import type { Finish, Supply } from '../../model/project';
import { GLOSS_GU, type OwnFinishEntry, ownFinish, provenanceOf } from '../drawer/own-finish';
import { FINISH_FORM } from '../words/libraries';
import { OFF_BY } from '../words/off-by';
import { reread, unitNow } from '../words/spoken';
import { tagsIn, withSupply, withTags } from './bulk-edit';
import { writtenName } from './near-lrv';
import { type PriceFields, priceFields, typedPrice } from './price-fields';

/** A finish as the form shows it: all as typed. */
export interface FinishFields {
  readonly name: string;
  readonly code: string;
  readonly class: FinishClass;
  readonly gloss: string;
  /** Printed beside its color; of a finish of one color only. */
  readonly lrv: string;
  readonly provenance: Provenance;
  readonly uncertainty: string;
  /** In the unit chosen. */
  readonly thickness: string;
  readonly supplier: string;
  readonly price: PriceFields;
  readonly band: Supply['price_band'] | '';
  readonly availability: string;
  readonly lead: string;
  readonly unit: string;
  readonly pack: string;
  readonly tags: string;
  readonly note: string;
}

const thicknessText = ({ thickness_mm }: Pick<Finish, 'thickness_mm'>): string =>
  thickness_mm === undefined ? '' : lengthText(thickness_mm, unitNow());

const text = (value: number | undefined): string => (value === undefined ? '' : String(value));

export function fieldsOf(finish: Finish): FinishFields {
  const { supply = {} } = finish;
  return {
    name: writtenName(finish),
    code: codeOf(finish),
    class: finish.class,
    gloss: text(finish.gloss_gu),
    lrv: finish.components.length === 1 ? text(finish.components[0]!.lrv) : '',
    provenance: finish.provenance,
    uncertainty: text(finish.uncertainty_de00),
    supplier: supply.supplier ?? '',
    thickness: thicknessText(finish),
    price: priceFields(supply.price),
    band: supply.price_band ?? '',
    availability: supply.availability ?? '',
    lead: text(supply.lead_time_weeks),
    unit: supply.unit ?? '',
    pack: text(supply.pack),
    tags: (finish.tags ?? []).join(', '),
    note: finish.note ?? '',
  };
}

export const EMPTY_FIELDS: FinishFields = {
  name: '',
  code: '',
  class: 'paint',
  gloss: String(GLOSS_GU.satin),
  lrv: '',
  provenance: 'declared',
  uncertainty: '',
  supplier: '',
  thickness: '',
  price: priceFields(undefined),
  band: '',
  availability: '',
  lead: '',
  unit: '',
  pack: '',
  tags: '',
  note: '',
};

/** Numbers of the form and their bounds; gloss of metal may be higher. */
const NUMBERS = reread(
  () =>
    ({
      gloss: [0, 1000, FINISH_FORM.gloss],
      lrv: [0, 100, FINISH_FORM.lrv],
      uncertainty: [0, 30, OFF_BY.label],
      lead: [0, 520, FINISH_FORM.lead],
      pack: [0, 100_000, FINISH_FORM.pack],
    }) as const,
);

/**
 * The finish the form makes of one there was (null: a new one, which needs a color), or what is wrong. `color`: another color for it; null
 * leaves it. Its id stays, for others refer to it.
 */
export function finishOfFields(
  fields: FinishFields,
  before: Finish | null,
  color: OwnFinishEntry | null,
  library: readonly Finish[],
): Result<Finish> {
  const name = fields.name.trim();
  if (name === '' && before) return failure({ code: 'empty-text', text: FINISH_FORM.noName, remedy: '' });
  const read = { gloss: 0, lrv: 0, uncertainty: 0, lead: 0, pack: 0 } as Record<keyof typeof NUMBERS, number | null>;
  for (const [field, [least, most, label]] of Object.entries(NUMBERS)) {
    const key = field as keyof typeof NUMBERS;
    const typed = fields[key].trim().replace(',', '.');
    const number = typed === '' ? null : Number(typed);
    const isWrong = number === null ? key === 'gloss' : !(number >= least && number <= most);
    if (isWrong) {
      const text = FINISH_FORM.wrongNumber(label, least, key === 'gloss' ? mostGloss(fields.class) : most);
      return failure({ code: 'out-of-range', text, remedy: '' });
    }
    read[key] = number;
  }
  const thickness = typedThickness(fields.thickness, before);
  if (!thickness.ok) return thickness;
  const price = typedPrice(fields.price);
  if (!price.ok) return price;
  const made = color ? ownFinish(entryOf(fields, color), library) : null;
  if (made && !made.ok) return made;
  const start = before ?? made?.value;
  if (!start) return failure({ code: 'no-color', text: '', remedy: '' });
  const { uncertainty_de00: _u, note: _n, thickness_mm: _t, ...rest } = start;
  const note = fields.note.trim();
  const id = before ? before.id : freeCode(fields.code.trim(), start.id, library);
  const bare: Finish = {
    ...rest,
    id,
    label: `${name || writtenName(start)}, ${id}`,
    class: fields.class,
    gloss_gu: read.gloss ?? start.gloss_gu,
    components: made ? made.value.components : withPrinted(start.components, read.lrv),
    provenance: color ? provenanceOf({ ...color, provenance: fields.provenance }) : fields.provenance,
    ...(read.uncertainty !== null && { uncertainty_de00: read.uncertainty }),
    ...(thickness.value !== null && { thickness_mm: thickness.value }),
    ...(note !== '' && { note }),
  };
  const code = fields.code.trim();
  const finish = withSupply(withTags(bare, tagsIn(fields.tags)), {
    supplier: fields.supplier.trim() || undefined,
    code: code === '' || code === id ? undefined : code,
    price: price.value,
    price_band: fields.band || undefined,
    availability: fields.availability.trim() || undefined,
    lead_time_weeks: read.lead ?? undefined,
    unit: fields.unit.trim() || undefined,
    pack: read.pack ?? undefined,
  });
  const [problem, ...more] = checkFinish(finish, FINISH_FORM.what);
  return problem ? failure(problem, more) : success(finish, made?.notices);
}

/** In mm; what was not changed stays as exact as it was. */
function typedThickness(typed: string, before: Finish | null): Result<number | null> {
  if (typed.trim() === '') return success(null);
  if (before && typed === thicknessText(before)) return success(before.thickness_mm ?? null);
  const mm = parseLength(typed, unitNow());
  const [least, most] = THICKNESS_MM;
  if (mm !== null && mm >= least && mm <= most) return success(mm);
  return failure({ code: 'out-of-range', text: FINISH_FORM.wrongThickness, remedy: '' });
}

const entryOf = (fields: FinishFields, color: OwnFinishEntry): OwnFinishEntry => ({
  ...color,
  name: fields.name,
  class: fields.class,
  // Metal may have more than a color typed in; the form checks it by itself.
  gloss: String(Math.min(100, Number(fields.gloss.replace(',', '.')) || 0)),
  provenance: fields.provenance,
});

/** The printed LRV belongs to a finish of one color; of several, each may have its own, which stays. */
function withPrinted(components: Finish['components'], lrv: number | null): Finish['components'] {
  const [only, ...others] = components;
  if (!only || others.length > 0) return components;
  const { lrv: _, ...bare } = only;
  return [{ ...bare, ...(lrv !== null && { lrv }) }];
}

/** The code is the id of a new finish where it is free. */
const freeCode = (code: string, otherwise: string, library: readonly Finish[]): string =>
  code === '' || library.some(({ id }) => id === code) ? otherwise : code;
