import type { SurfaceId } from '../../engine/surface';
import { groutTag, TAG_OF } from './item-tags';
import type { ItemRecord } from './records';

/** What an item is, for as much as it takes to find what was said of it. */
export interface Recorded {
  readonly id: string;
  readonly surfaces: readonly SurfaceId[];
  readonly kind: string;
}

/**
 * What was said of an item for as long as it has a finish. Of surfaces that were items of their own once, it counts what nothing else was
 * said of since: the first of them that says it.
 */
export function recordOfItem(
  { id, surfaces, kind }: Recorded,
  finish: string | null | undefined,
  records: readonly ItemRecord[] = [],
): ItemRecord | undefined {
  const tags = [id, ...surfaces.map((surface) => (kind === 'grout' ? groutTag(surface) : TAG_OF[surface]))];
  const said = [...new Set(tags)].flatMap(
    (tag) => records.find((one) => one.item === tag && one.finish === finish) ?? [],
  );
  return said.length > 0 ? Object.assign({}, ...said.reverse(), { item: id }) : undefined;
}
