import type { ShortlistHead } from '../engine/judge/shortlist/types';

/** What there is to know of a list here. */
interface List extends Pick<ShortlistHead, 'held_against'> {
  /** How many finishes are left out as yet. */
  readonly pending: number;
}

export interface ShortlistAsking<T extends List> {
  /** The list with what was seen in a setting, or as samples for null, of all finishes or as many as are there at once; null while that cannot be told. */
  readonly read: (setting: string | null, isWhole: boolean) => Promise<T | null>;
  /** Where the best are to be judged in place, in this order. */
  readonly settings: readonly string[];
  /** Resolves when there may be another answer; whoever asks for the next one waits for this one no more. */
  readonly changed: () => Promise<void>;
  readonly isWanted: () => boolean;
  /** Told each list, and null where none can be told for now. */
  readonly take: (list: T | null, hasMore: boolean) => void;
}

/**
 * Asks for a shortlist step by step: as samples, what is there at once and then all, then setting by setting. What cannot be told is asked
 * again once something changed, and not before: an option that cannot be laid stays so until somebody lays something else.
 */
export async function followShortlist<T extends List>(asking: ShortlistAsking<T>): Promise<void> {
  const { read, settings, changed, isWanted, take } = asking;
  const steps: (readonly [setting: string | null, isWhole: boolean])[] = [
    [null, false],
    [null, true],
    ...settings.map((setting) => [setting, true] as const),
  ];
  let last: T | null = null;
  for (const [setting, isWhole] of steps) {
    if (setting === null && isWhole && last?.pending === 0) continue;
    // From before it is read: what changes meanwhile is not in the answer.
    let change = changed();
    let list = await read(setting, isWhole);
    while (!list) {
      if (!isWanted()) return;
      if (setting === null && !isWhole) take(null, false);
      await change;
      if (!isWanted()) return;
      change = changed();
      list = await read(setting, isWhole);
    }
    if (!isWanted()) return;
    last = list;
    const hasMore = list.held_against.length > 0 && setting !== settings.at(-1);
    take(list, hasMore);
    if (!hasMore && list.pending === 0) return;
  }
}
