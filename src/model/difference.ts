/**
 * The difference between two immutable documents as plain JSON data. It is one of
 * - `{ set }`: another value altogether;
 * - `{ members, gone, order }`: an object of which some members changed or came, some went; `order` only where the members of the result
 *   do not stand as they would (those that stay, then those that came);
 * - `{ at, cut, put }`: an array of which `cut` items from `at` on made way for others;
 * - `{ items }`: an array of which single items changed, by index.
 * Identical references are not looked into, so what two documents share costs nothing. A member that is undefined counts as absent.
 */
export type Difference =
  | { readonly set: unknown }
  | {
      readonly members: readonly (readonly [name: string, difference: Difference])[];
      readonly gone?: readonly string[];
      readonly order?: readonly string[];
    }
  | { readonly at: number; readonly cut: number; readonly put: readonly unknown[] }
  | { readonly items: readonly (readonly [index: number, difference: Difference])[] };

type Members = Readonly<Record<string, unknown>>;

/** What leads from one JSON value to another; null where they are equal. */
export function differenceOf(from: unknown, to: unknown): Difference | null {
  if (from === to) return null;
  if (Array.isArray(from) && Array.isArray(to)) return betweenArrays(from, to);
  if (isObject(from) && isObject(to)) return betweenObjects(from, to);
  return { set: to };
}

const isObject = (value: unknown): value is Members =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Equal by value, member order included; stops at the first that differs. */
function isSame(one: unknown, other: unknown): boolean {
  if (one === other) return true;
  if (Array.isArray(one) && Array.isArray(other)) {
    return one.length === other.length && one.every((item, i) => isSame(item, other[i]));
  }
  if (!isObject(one) || !isObject(other)) return false;
  const names = namesOf(one);
  const others = namesOf(other);
  return (
    names.length === others.length && names.every((name, i) => name === others[i] && isSame(one[name], other[name]))
  );
}

const has = (object: Members, name: string): boolean => Object.hasOwn(object, name) && object[name] !== undefined;

const namesOf = (object: Members): readonly string[] =>
  Object.keys(object).filter((name) => object[name] !== undefined);

function betweenObjects(from: Members, to: Members): Difference | null {
  const members: [string, Difference][] = [];
  const before = namesOf(from);
  const names = namesOf(to);
  for (const name of names) {
    const difference = has(from, name) ? differenceOf(from[name], to[name]) : { set: to[name] };
    if (difference) members.push([name, difference]);
  }
  const gone = before.filter((name) => !has(to, name));
  const usual = [...before.filter((name) => has(to, name)), ...names.filter((name) => !has(from, name))];
  const isUsual = usual.every((name, i) => name === names[i]);
  if (members.length === 0 && gone.length === 0 && isUsual) return null;
  return { members, ...(gone.length > 0 && { gone }), ...(!isUsual && { order: names }) };
}

function betweenArrays(from: readonly unknown[], to: readonly unknown[]): Difference | null {
  const most = Math.min(from.length, to.length);
  let head = 0;
  while (head < most && isSame(from[head], to[head])) head++;
  let tail = 0;
  while (tail < most - head && isSame(from.at(-1 - tail), to.at(-1 - tail))) tail++;
  if (from.length !== to.length) {
    return { at: head, cut: from.length - tail - head, put: to.slice(head, to.length - tail) };
  }
  const items: [number, Difference][] = [];
  for (let i = head; i < to.length - tail; i++) {
    const difference = differenceOf(from[i], to[i]);
    if (difference) items.push([i, difference]);
  }
  return items.length > 0 ? { items } : null;
}

/**
 * The value a difference leads to; it shares with `from` what did not change. Undefined where the difference is no difference or does not
 * fit: it may come out of a store that somebody else wrote to.
 */
export function applyDifference(from: unknown, difference: unknown): unknown {
  if (!isObject(difference)) return undefined;
  if (Object.hasOwn(difference, 'set')) return difference['set'];
  if (Array.isArray(difference['members'])) {
    return isObject(from) ? changeMembers(from, difference['members'], difference) : undefined;
  }
  if (!Array.isArray(from)) return undefined;
  if (Array.isArray(difference['items'])) return changeItems(from, difference['items']);
  const { at, cut, put } = difference;
  if (!isCount(at) || !isCount(cut) || !Array.isArray(put) || at + cut > from.length) return undefined;
  return [...from.slice(0, at), ...put, ...from.slice(at + cut)];
}

const isCount = (value: unknown): value is number => Number.isInteger(value) && (value as number) >= 0;

const isPair = (value: unknown): value is readonly [unknown, unknown] => Array.isArray(value) && value.length === 2;

/** Through a map: a name such as `__proto__` is a member like any other there, and in an object made of its entries. */
function changeMembers(from: Members, members: readonly unknown[], { gone = [], order }: Members): Members | undefined {
  const all = new Map(namesOf(from).map((name) => [name, from[name]]));
  if (!Array.isArray(gone)) return undefined;
  for (const name of gone) if (!all.delete(name as string)) return undefined;
  for (const member of members) {
    if (!isPair(member) || typeof member[0] !== 'string') return undefined;
    const value = applyDifference(all.get(member[0]), member[1]);
    if (value === undefined) return undefined;
    all.set(member[0], value);
  }
  if (order === undefined) return Object.fromEntries(all);
  if (!Array.isArray(order) || order.length !== all.size || !order.every((name) => all.has(name))) return undefined;
  // A name that stands twice would take the place of another.
  if (new Set(order).size !== all.size) return undefined;
  return Object.fromEntries(order.map((name) => [name, all.get(name)]));
}

function changeItems(from: readonly unknown[], items: readonly unknown[]): readonly unknown[] | undefined {
  const all = [...from];
  for (const item of items) {
    if (!isPair(item) || !isCount(item[0]) || item[0] >= all.length) return undefined;
    const value = applyDifference(all[item[0]], item[1]);
    if (value === undefined) return undefined;
    all[item[0]] = value;
  }
  return all;
}
