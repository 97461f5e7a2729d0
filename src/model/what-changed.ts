import { SURFACES, type SurfaceId } from '../engine/surface';
import { NO_FINISH } from './empty-surface';
import type { Kitchen } from './kitchen';
import type { Option, Placement, Project, ProjectDocument } from './project';
import { isSameValue } from './same-value';

/** Things of a document that have an id and a name. */
export type NamedThing = 'option' | 'setting' | 'look' | 'lamp' | 'beam';

/** One thing that differs between two documents, with names to speak of it: those of the later one where it has it. */
export type Change =
  | { readonly kind: 'project-name'; readonly before: string; readonly after: string }
  | { readonly kind: 'project-note' }
  | { readonly kind: 'users' }
  | { readonly kind: 'year' }
  | { readonly kind: 'kitchen'; readonly parts: readonly (keyof Kitchen)[] }
  | { readonly kind: 'came' | 'went' | 'changed'; readonly what: NamedThing; readonly names: readonly string[] }
  | { readonly kind: 'renamed'; readonly what: NamedThing; readonly before: string; readonly after: string }
  | { readonly kind: 'option-note'; readonly option: string }
  /** What is said of the items of an option, or of what it orders besides. */
  | { readonly kind: 'option-order'; readonly option: string; readonly tags: readonly string[] }
  | { readonly kind: 'job' | 'quantities' | 'samples' }
  | PlacementChange
  | { readonly kind: 'finishes'; readonly did: 'came' | 'went' | 'changed'; readonly labels: readonly string[] }
  /** The same things in another order. */
  | { readonly kind: 'order'; readonly what: NamedThing | 'finish' };

/** What changed alike on surfaces of one option; null where it did not. Null as a finish: nothing lay or lies there. */
export interface PlacementChange {
  readonly kind: 'placement';
  readonly option: string;
  readonly surfaces: readonly SurfaceId[];
  readonly finish: { readonly before: string | null; readonly after: string | null } | null;
  readonly state: { readonly before: Placement['state']; readonly after: Placement['state'] } | null;
  readonly laying: boolean;
}

/**
 * All that differs between two documents, most important first: surfaces of the options, then options, finishes, kitchen, light, the rest.
 * Empty exactly where they are equal but for their ids, and for log and revisions, which are not looked at.
 */
export function whatChanged(before: ProjectDocument, after: ProjectDocument): readonly Change[] {
  return [
    ...pairsOf(before.options, after.options).flatMap(([one, other]) => [
      ...placementChanges(one, other, before, after),
      ...(differs(one.note, other.note) ? [{ kind: 'option-note', option: other.name } as const] : []),
      ...(differs([one.items, one.extras], [other.items, other.extras])
        ? [{ kind: 'option-order', option: other.name, tags: orderTags(one, other) } as const]
        : []),
    ]),
    ...listChanges('option', before.options, after.options, ({ name }) => name, [
      'name',
      'note',
      'scheme',
      'items',
      'extras',
    ]),
    ...finishChanges(before, after),
    ...kitchenChanges(before.kitchen, after.kitchen),
    ...listChanges('setting', before.settings, after.settings, ({ name }) => name, ['name']),
    ...listChanges('lamp', before.lamps, after.lamps, ({ label }) => label, ['label']),
    ...listChanges('beam', before.beams, after.beams, ({ label }) => label, ['label']),
    ...listChanges('look', before.looks, after.looks, ({ name }) => name, ['name']),
    ...(['job', 'quantities', 'samples'] as const)
      .filter((name) => differs(before[name], after[name]))
      .map((kind) => ({ kind })),
    ...(differs(before.users, after.users) ? [{ kind: 'users' } as const] : []),
    ...(differs(before.year_built, after.year_built) ? [{ kind: 'year' } as const] : []),
    ...(before.name === after.name ? [] : [{ kind: 'project-name', before: before.name, after: after.name } as const]),
    ...(before.note === after.note ? [] : [{ kind: 'project-note' } as const]),
  ];
}

/** Tags of items of which something else is said, and of what is ordered besides; none where only their order differs. */
function orderTags(before: Option, after: Option): readonly string[] {
  const said = ({ items = [], extras = [] }: Option) => [
    ...items.map((record) => ({ tag: record.item, record })),
    ...extras.map((record) => ({ tag: record.id, record })),
  ];
  const [old, now] = [said(before), said(after)];
  const odd = (list: typeof old, others: typeof old) =>
    list.filter(({ record }) => others.every((other) => differs(record, other.record)));
  return [...new Set([...odd(now, old), ...odd(old, now)].map(({ tag }) => tag))];
}

const differs = (one: unknown, other: unknown): boolean => !isSameValue(one, other);

interface Named {
  readonly id: string;
}

/** Those that both lists have, in the order of the later one. */
const pairsOf = <T extends Named>(before: readonly T[], after: readonly T[]): readonly (readonly [T, T])[] => {
  const known = new Map(before.map((one) => [one.id, one]));
  return after.flatMap((one) => {
    const was = known.get(one.id);
    return was ? [[was, one] as const] : [];
  });
};

const without = <T extends Named>(list: readonly T[], other: readonly T[]): readonly T[] => {
  const ids = new Set(other.map(({ id }) => id));
  return list.filter(({ id }) => !ids.has(id));
};

const isReordered = <T extends Named>(pairs: readonly (readonly [T, T])[], before: readonly T[]): boolean => {
  const ids = new Set(pairs.map(([one]) => one.id));
  const old = before.filter(({ id }) => ids.has(id));
  return old.some(({ id }, i) => id !== pairs[i]![0].id);
};

/** What came, went, has another name or changed otherwise; `toldApart` are fields that are told of elsewhere, the name among them. */
function listChanges<T extends Named>(
  what: NamedThing,
  before: readonly T[] = [],
  after: readonly T[] = [],
  nameOf: (one: T) => string,
  toldApart: readonly (keyof T)[],
): readonly Change[] {
  const pairs = pairsOf(before, after);
  const rest = (one: T) =>
    Object.fromEntries(Object.entries(one).filter(([key]) => !toldApart.includes(key as keyof T)));
  const names = (list: readonly T[]) => list.map(nameOf);
  const changed = pairs.filter(([one, other]) => differs(rest(one), rest(other))).map(([, other]) => other);
  return [
    ...some('came', what, names(without(after, before))),
    ...some('went', what, names(without(before, after))),
    ...pairs
      .filter(([one, other]) => nameOf(one) !== nameOf(other))
      .map(([one, other]) => ({ kind: 'renamed', what, before: nameOf(one), after: nameOf(other) }) as const),
    ...some('changed', what, names(changed)),
    ...(isReordered(pairs, before) ? [{ kind: 'order', what } as const] : []),
  ];
}

const some = (kind: 'came' | 'went' | 'changed', what: NamedThing, names: readonly string[]): readonly Change[] =>
  names.length > 0 ? [{ kind, what, names }] : [];

function finishChanges({ library: before }: ProjectDocument, { library: after }: ProjectDocument): readonly Change[] {
  const pairs = pairsOf(before, after);
  const dids = {
    changed: pairs.filter(([one, other]) => differs(one, other)).map(([, other]) => other),
    came: without(after, before),
    went: without(before, after),
  };
  return [
    ...(['changed', 'came', 'went'] as const)
      .filter((did) => dids[did].length > 0)
      .map((did) => ({ kind: 'finishes', did, labels: dids[did].map(({ label }) => label) }) as const),
    ...(isReordered(pairs, before) ? [{ kind: 'order', what: 'finish' } as const] : []),
  ];
}

function kitchenChanges(before: Kitchen, after: Kitchen): readonly Change[] {
  const names = [...new Set([...Object.keys(before), ...Object.keys(after)])] as (keyof Kitchen)[];
  const parts = names.filter((name) => differs(before[name], after[name]));
  return parts.length > 0 ? [{ kind: 'kitchen', parts }] : [];
}

/** Per surface what changed there; surfaces that changed alike stand together, at the first of them. */
function placementChanges(
  before: Option,
  after: Option,
  was: Pick<Project, 'library'>,
  is: Pick<Project, 'library'>,
): readonly PlacementChange[] {
  const alike = new Map<string, PlacementChange>();
  for (const surface of SURFACES) {
    const [one, other] = [before.scheme[surface], after.scheme[surface]];
    const change: PlacementChange = {
      kind: 'placement',
      option: after.name,
      surfaces: [],
      finish:
        one.finish === other.finish
          ? null
          : { before: labelIn(was.library, one.finish), after: labelIn(is.library, other.finish) },
      state: one.state === other.state ? null : { before: one.state, after: other.state },
      laying: differs(one.laying, other.laying),
    };
    if (!change.finish && !change.state && !change.laying) continue;
    const key = JSON.stringify([one.finish, other.finish, change.state, change.laying]);
    const known = alike.get(key) ?? change;
    alike.set(key, { ...known, surfaces: [...known.surfaces, surface] });
  }
  return [...alike.values()];
}

/** Null where nothing is chosen. */
const labelIn = (library: Project['library'], id: string): string | null =>
  id === NO_FINISH.id ? null : (library.find((finish) => finish.id === id)?.label ?? id);
