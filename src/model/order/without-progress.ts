import { SURFACES } from '../../engine/surface';
import type { Option, Placement, ProjectDocument, Scheme } from '../project';
import type { ExtraItem, ItemRecord } from './records';

/** A document as it is signed: without what becomes of it afterwards (job, samples, approvals, orders, lots, deliveries). */
export function withoutProgress({ job: _job, samples: _samples, ...document }: ProjectDocument): ProjectDocument {
  return { ...document, options: document.options.map(optionWithoutProgress) };
}

/** The same of one option: what was ordered is decided. */
export function optionWithoutProgress({ items, extras, ...option }: Option): Option {
  const kept = (items ?? []).flatMap((record): readonly ItemRecord[] => {
    const { item, finish, waste_percent, spare_packs, supplier, code, unit, price, note } = record;
    const says = {
      ...(waste_percent !== undefined && { waste_percent }),
      ...(spare_packs !== undefined && { spare_packs }),
      ...(supplier !== undefined && { supplier }),
      ...(code !== undefined && { code }),
      ...(unit !== undefined && { unit }),
      ...(price !== undefined && { price }),
      ...(note !== undefined && { note }),
    };
    return Object.keys(says).length > 0 ? [{ item, finish, ...says }] : [];
  });
  const bare = extras?.map(({ ordered_on: _, ...extra }): ExtraItem => extra);
  return {
    ...option,
    scheme: decided(option.scheme),
    ...(kept.length > 0 && { items: kept }),
    ...(bare && { extras: bare }),
  };
}

/** The very same scheme where nothing is ordered. */
function decided(scheme: Scheme): Scheme {
  if (SURFACES.every((surface) => scheme[surface].state !== 'ordered')) return scheme;
  const entries = Object.entries(scheme).map(([surface, placement]: [string, Placement]) => [
    surface,
    placement.state === 'ordered' ? { ...placement, state: 'decided' } : placement,
  ]);
  return Object.fromEntries(entries) as Scheme;
}
