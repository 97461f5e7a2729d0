/** Which finishes of a list are chosen, by id, and from where a range is drawn with Shift. */
export interface Chosen {
  readonly ids: ReadonlySet<string>;
  readonly from: string | null;
}

export const NONE_CHOSEN: Chosen = { ids: new Set(), from: null };

/** One more or one less. */
export function toggleRow({ ids }: Chosen, id: string): Chosen {
  const next = new Set(ids);
  if (!next.delete(id)) next.add(id);
  return { ids: next, from: id };
}

/** All from the one chosen last to this one, as they are shown, besides those chosen before. */
export function chooseTo(chosen: Chosen, id: string, shown: readonly string[]): Chosen {
  const at = shown.indexOf(id);
  const from = chosen.from === null ? -1 : shown.indexOf(chosen.from);
  if (at < 0 || from < 0) return toggleRow(chosen, id);
  const range = shown.slice(Math.min(at, from), Math.max(at, from) + 1);
  return { ids: new Set([...chosen.ids, ...range]), from: id };
}

/** All that are shown, or none of them where all were chosen; others stay as they were. */
export function toggleAll({ ids }: Chosen, shown: readonly string[]): Chosen {
  const next = new Set(ids);
  const isFull = shown.length > 0 && shown.every((id) => next.has(id));
  for (const id of shown) {
    if (isFull) next.delete(id);
    else next.add(id);
  }
  return { ids: next, from: null };
}
