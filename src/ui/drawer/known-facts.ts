import type { ComponentRecord } from '../../engine/judge/assessment';
import { type Result, success } from '../../engine/result';
import { sourceOf } from '../../model/offered-finishes';
import type { Finish } from '../../model/project';

/** By the library's own record, where a finish is a copy of one: it may be offered under other ids. */
const known = new WeakMap<Finish, Result<ComponentRecord>>();
const listeners = new Set<() => void>();
let version = 0;

/** What was found of a finish, problems included; undefined where nobody looked yet. */
export const foundFacts = (finish: Finish): Result<ComponentRecord> | undefined => known.get(sourceOf(finish));

export const keepFacts = (finish: Finish, facts: Result<ComponentRecord>): void => {
  known.set(sourceOf(finish), facts);
};

/** The facts if they are known already. */
export const knownFacts = (finish: Finish): ComponentRecord | null => {
  const facts = foundFacts(finish);
  return facts?.ok ? facts.value : null;
};

/** Takes in facts that were worked out elsewhere, and tells who waits for them. A finish that went meanwhile is undefined. */
export function rememberFacts(
  finishes: readonly (Finish | undefined)[],
  facts: readonly (ComponentRecord | null)[],
): void {
  finishes.forEach((finish, i) => {
    const its = facts[i];
    if (finish && its) keepFacts(finish, success(its));
  });
  version++;
  for (const listener of listeners) listener();
}

/** Told when facts came from elsewhere; returns how to stop. */
export const listenToFacts = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** Grows when facts came from elsewhere. */
export const factsVersion = (): number => version;
