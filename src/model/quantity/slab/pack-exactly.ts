import { fits, type Lie, type Lies, type Packing, type Room, type Spot } from './packing';

/** A way to cut a set of parts out of a rectangle as small as can be: one part, or two sets side by side. */
type Cutting = Room &
  (
    | { readonly part: number; readonly lie: Lie }
    | { readonly sets: readonly [Cutting, Cutting]; readonly isBeside: boolean }
  );

/** More parts take too long. */
const MOST_EXACT_PARTS = 12;

/**
 * Fewest slabs for parts cut by cuts from edge to edge, found for certain: every such cutting parts a rectangle in two, so that the
 * smallest rectangles of a set of parts follow from those of every two sets it falls into. Null where it is not found in so many steps,
 * or where the parts are too many or one of them fits no slab.
 */
export function packExactly(parts: readonly Lies[], room: Room, most_steps: number): Packing | null {
  if (parts.length > MOST_EXACT_PARTS) return null;
  const all = (1 << parts.length) - 1;
  const cuttings: (readonly Cutting[])[] = [[]];
  const budget = { steps: most_steps };
  for (let set = 1; set <= all; set++) {
    if (isBareOne(set)) cuttings.push(onePart(set, parts, room));
    else cuttings.push(mayFit(set, parts, room, cuttings) ? smallestCuttings(set, room, cuttings, budget) : []);
    if (budget.steps < 0) return null;
  }
  const slabs = fewestSets(all, (set) => cuttings[set]!.length > 0);
  return slabs?.map((set) => spotsOf(cuttings[set]![0]!, 0, 0)) ?? null;
}

/** The smallest rectangles for a set of parts: none is as large as another both ways. Takes its steps from the budget. */
function smallestCuttings(
  set: number,
  room: Room,
  cuttings: readonly (readonly Cutting[])[],
  budget: { steps: number },
): readonly Cutting[] {
  const smallest: Cutting[] = [];
  const lowest = set & -set;
  for (let half = (set - 1) & set; half > 0; half = (half - 1) & set) {
    // Each pair of sets once: the first has the lowest part.
    if (!(half & lowest)) continue;
    for (const a of cuttings[half]!) {
      for (const b of cuttings[set ^ half]!) {
        if (--budget.steps < 0) return smallest;
        const sets = [a, b] as const;
        const [along, across] = [Math.max(a.along, b.along), Math.max(a.across, b.across)];
        keepSmallest(smallest, { along: a.along + b.along, across, sets, isBeside: true }, room);
        keepSmallest(smallest, { along, across: a.across + b.across, sets, isBeside: false }, room);
      }
    }
  }
  return smallest;
}

function keepSmallest(smallest: Cutting[], cutting: Cutting, room: Room): void {
  if (!fits(cutting, room)) return;
  if (smallest.some(({ along, across }) => along <= cutting.along && across <= cutting.across)) return;
  for (let i = smallest.length - 1; i >= 0; i--) {
    if (cutting.along <= smallest[i]!.along && cutting.across <= smallest[i]!.across) smallest.splice(i, 1);
  }
  smallest.push(cutting);
}

const isBareOne = (set: number): boolean => (set & (set - 1)) === 0;

const onePart = (set: number, parts: readonly Lies[], room: Room): readonly Cutting[] => {
  const part = 31 - Math.clz32(set);
  return parts[part]!.filter((lie) => fits(lie, room)).map((lie) => ({ ...lie, part, lie }));
};

/** Is the set small enough at all, and does it fit without any one of its parts? */
function mayFit(set: number, parts: readonly Lies[], room: Room, cuttings: readonly (readonly Cutting[])[]): boolean {
  let area = 0;
  for (let part = 0; part < parts.length; part++) {
    const bit = 1 << part;
    if (!(set & bit)) continue;
    if (cuttings[set ^ bit]!.length === 0) return false;
    area += parts[part]![0]!.along * parts[part]![0]!.across;
  }
  return area <= room.along * room.across * (1 + 1e-9);
}

/** Fewest sets that fit and together make up all; null where one part fits nowhere. */
function fewestSets(all: number, doesFit: (set: number) => boolean): readonly number[] | null {
  const fewest = [0];
  const last = [0];
  for (let set = 1; set <= all; set++) {
    const lowest = set & -set;
    fewest.push(Infinity);
    last.push(0);
    for (let one = set; one > 0; one = (one - 1) & set) {
      if (!(one & lowest) || !doesFit(one) || fewest[set ^ one]! + 1 >= fewest[set]!) continue;
      fewest[set] = fewest[set ^ one]! + 1;
      last[set] = one;
    }
  }
  if (!Number.isFinite(fewest[all]!)) return null;
  const sets: number[] = [];
  for (let set = all; set > 0; set ^= last[set]!) sets.push(last[set]!);
  return sets;
}

function spotsOf(cutting: Cutting, x: number, y: number): readonly Spot[] {
  if ('part' in cutting) return [{ part: cutting.part, x, y, lie: cutting.lie }];
  const [a, b] = cutting.sets;
  return [...spotsOf(a, x, y), ...(cutting.isBeside ? spotsOf(b, x + a.along, y) : spotsOf(b, x, y + a.across))];
}
