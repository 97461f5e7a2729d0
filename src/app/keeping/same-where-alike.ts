import type { Library } from '../../model/library';
import { sameData } from '../../model/same-data';

/** A library as it is now, with the very objects of before where nothing changed: what is known of these stays known. */
export function sameWhereAlike(old: Library, now: Library): Library {
  const known = new Map(old.finishes.map((finish) => [finish.id, finish]));
  const finishes = now.finishes.map((finish) => {
    const its = known.get(finish.id);
    return its && sameData(its, finish) ? its : finish;
  });
  const isSame = finishes.length === old.finishes.length && finishes.every((finish, i) => finish === old.finishes[i]);
  return isSame && old.name === now.name && old.note === now.note ? old : { ...now, finishes };
}
