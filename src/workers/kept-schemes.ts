import { type Result, success } from '../engine/result';
import { beginLight, type LitScheme } from '../kitchen/study/lit-scheme';
import type { RoomBasis } from '../kitchen/study/room-study';
import { layScheme } from '../kitchen/study/scheme';
import { beginScheme } from '../kitchen/study/solved-scheme';
import { DAYLIGHT_GROUPS, GROUPS, type Project } from '../model/project';

/** Skies for which solved schemes are kept. */
const MOST_SKIES = 6;

/** A scheme worked out, kept until its option changes. `key` says what it was made from. */
interface Kept {
  readonly key: string;
  /** By the outdoors whose daylight it holds, the latest last; what lamps do is the same in all. */
  readonly lits: Map<string, LitScheme>;
}

/** The schemes of options in the light of one room, as far as they are worked out. */
export class KeptSchemes {
  readonly #kept = new Map<string, Kept>();

  clear(): void {
    this.#kept.clear();
  }

  /** Forgets options that are gone. */
  keepOnly(options: Project['options']): void {
    for (const option of this.#kept.keys()) if (!options.some(({ id }) => id === option)) this.#kept.delete(option);
  }

  /** The scheme of an option under the room's present sky, if it was begun. */
  find(option: string, { outdoors }: RoomBasis): LitScheme | undefined {
    return this.#kept.get(option)?.lits.get(outdoors);
  }

  /** The kept scheme of an option as far as it still holds, else a new one; a problem when it cannot be laid. */
  take(project: Project, option: string, basis: RoomBasis): Result<LitScheme> {
    const key = schemeKey(project, option);
    let before = this.#kept.get(option);
    if (before?.key !== key) before = undefined;
    const same = before?.lits.get(basis.outdoors);
    if (before && same?.nodes === basis.nodes) {
      before.lits.delete(basis.outdoors);
      before.lits.set(basis.outdoors, same);
      return success(same);
    }
    const other = same ?? [...(before?.lits.values() ?? [])].at(-1);
    let scheme = other?.solved.scheme;
    if (!scheme) {
      const laid = layScheme(project, option, basis.room.surfaces);
      if (!laid.ok) {
        this.#kept.delete(option);
        return laid;
      }
      scheme = laid.value;
    }
    const lit = beginLight(basis, same?.solved ?? beginScheme(scheme, GROUPS.length));
    if (!same && other) shareLamps(lit, other);
    const lits = before?.lits ?? new Map<string, LitScheme>();
    lits.delete(basis.outdoors);
    lits.set(basis.outdoors, lit);
    if (lits.size > MOST_SKIES) lits.delete(lits.keys().next().value!);
    this.#kept.set(option, { key, lits });
    return success(lit);
  }
}

/** What lamps do to a scheme does not depend on the sky: it is taken over. */
function shareLamps(lit: LitScheme, other: LitScheme): void {
  for (let group = DAYLIGHT_GROUPS.length; group < GROUPS.length; group++) {
    lit.solved.radiosity[group] = other.solved.radiosity[group]!;
    if (lit.nodes !== other.nodes) continue;
    lit.nodeLight[group] = other.nodeLight[group]!;
    lit.propLight[group] = other.propLight[group]!;
  }
}

/** Everything a scheme's light depends on: its placements and the finishes they name. */
function schemeKey(project: Project, option: string): string {
  const scheme = project.options.find(({ id }) => id === option)?.scheme;
  if (!scheme) return '';
  const used = new Set(Object.values(scheme).flatMap(({ finish, laying }) => [finish, laying.grout ?? '']));
  return JSON.stringify([scheme, project.library.filter(({ id }) => used.has(id))]);
}
