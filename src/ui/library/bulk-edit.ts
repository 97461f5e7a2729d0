import type { Provenance } from '../../engine/finish/types';
import type { Finish, Supply } from '../../model/project';

/** A change of several finishes at once. */
export type BulkChange =
  | { readonly kind: 'add-tag' | 'remove-tag'; readonly tag: string }
  | { readonly kind: 'price'; readonly band: Supply['price_band'] | null }
  | { readonly kind: 'availability'; readonly words: string }
  | { readonly kind: 'provenance'; readonly provenance: Provenance }
  | { readonly kind: 'remove' };

/** The finishes with those of the ids changed; the same objects where nothing changes. */
export function bulkEdit(finishes: readonly Finish[], ids: ReadonlySet<string>, change: BulkChange): readonly Finish[] {
  if (change.kind === 'remove') return finishes.filter(({ id }) => !ids.has(id));
  return finishes.map((finish) => (ids.has(finish.id) ? changed(finish, change) : finish));
}

function changed(finish: Finish, change: Exclude<BulkChange, { kind: 'remove' }>): Finish {
  switch (change.kind) {
    case 'add-tag':
      return finish.tags?.includes(change.tag) ? finish : withTags(finish, [...(finish.tags ?? []), change.tag]);
    case 'remove-tag':
      return finish.tags?.includes(change.tag)
        ? withTags(
            finish,
            finish.tags.filter((tag) => tag !== change.tag),
          )
        : finish;
    case 'price':
      return withSupply(finish, { price_band: change.band ?? undefined });
    case 'availability':
      return withSupply(finish, { availability: change.words.trim() || undefined });
    case 'provenance':
      return { ...finish, provenance: change.provenance };
  }
}

/** The finish with other tags; none where there are none. */
export function withTags({ tags: _, ...finish }: Finish, tags: readonly string[]): Finish {
  return tags.length > 0 ? { ...finish, tags } : finish;
}

/** Values that are absent afterwards are given as undefined. */
export type SupplyChange = { readonly [K in keyof Supply]?: Supply[K] | undefined };

/** The finish with other supply; what is undefined goes, and all of it where nothing is left. */
export function withSupply({ supply, ...finish }: Finish, change: SupplyChange): Finish {
  const entries = Object.entries({ ...supply, ...change }).filter(([, value]) => value !== undefined);
  return entries.length > 0 ? { ...finish, supply: Object.fromEntries(entries) as Supply } : finish;
}

/** Tags as typed, parted by commas or semicolons: trimmed, each once. */
export const tagsIn = (text: string): readonly string[] => [
  ...new Set(
    text
      .split(/[,;]/)
      .map((tag) => tag.trim())
      .filter(Boolean),
  ),
];
