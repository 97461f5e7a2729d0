import { readdirSync, readFileSync } from 'node:fs';
import type {
  BalanceVerdict,
  Basis,
  PairVerdict,
  Severity,
  UndertoneLevel,
  WarningCode,
} from '../../src/engine/judge/assessment';
import type { JudgeInput } from '../../src/engine/judge/input';
import type { DecisionState, SurfaceId } from '../../src/engine/surface';

/** Where an expectation comes from: a source one can look up, what the trade does, or what we hold to be right. */
export type SourceKind = 'published' | 'common practice, no source' | 'our judgment';

/** A warning that has to be there (or, in `unwarned`, must not). What is absent is not asked for. */
export interface WarningWanted {
  readonly code?: WarningCode | readonly WarningCode[];
  /** Surfaces that are all among those of the warning. */
  readonly on?: readonly SurfaceId[];
  /** Exactly these surfaces. */
  readonly only_on?: readonly SurfaceId[];
  readonly severity?: Severity | readonly Severity[];
  readonly basis?: Basis;
  /** Bounds of `holds_in`. */
  readonly holds?: readonly [least: number, most: number];
  /** Its sentence, or the numbers behind it, contain this. */
  readonly says?: string;
  /** Its sentence does not contain this. */
  readonly never_says?: string;
}

/** Keys of surfaces: "wall" is its base, "counter.vein" another component, "floor.average" the area mean. */
export interface Expected {
  /** Nothing may be warned of, but for the codes named. */
  readonly quiet?: true | readonly WarningCode[];
  readonly warned?: readonly WarningWanted[];
  readonly unwarned?: readonly WarningWanted[];
  /** "counter|wall": the verdict as samples, or one of several. */
  readonly pairs?: Readonly<Record<string, PairVerdict | readonly PairVerdict[]>>;
  readonly numbers?: Readonly<Record<string, Readonly<Record<string, readonly [is: number, within: number]>>>>;
  readonly names?: Readonly<Record<string, string>>;
  readonly levels?: Readonly<Record<string, UndertoneLevel>>;
  readonly words?: Readonly<Record<string, string>>;
  readonly balance?: BalanceVerdict;
  readonly sentence?: string;
}

export interface ScenarioPlace {
  /** a*, b* of a perfect white there. */
  readonly white?: readonly [number, number];
  /** The same were every surface gray: the mix of lights. */
  readonly light_white?: readonly [number, number];
  readonly lux?: number;
  readonly from?: Readonly<Partial<Record<SurfaceId, number>>>;
}

interface Case {
  /** What it is about, in a sentence. */
  readonly what: string;
  readonly expect: Expected;
  /** Why an expectation was changed after it was first run. */
  readonly note?: string;
}

/** A change of a scenario: other finishes on some surfaces, other states, other users. */
export interface Mutation extends Case {
  readonly lay?: Scenario['scheme'];
  readonly states?: Scenario['states'];
  readonly low_vision?: boolean;
  readonly places?: Scenario['places'];
  readonly lamp?: string;
  readonly touching?: Scenario['touching'];
  readonly apart?: Scenario['apart'];
}

export interface Scenario extends Case {
  readonly id: string;
  readonly source: { readonly kind: SourceKind; readonly cite: string };
  /** Finish by surface: a name from `finishes`, or a finish in words (see `scenario-finish.ts`). */
  readonly scheme: Readonly<Partial<Record<SurfaceId, string>>>;
  readonly states?: Readonly<Partial<Record<SurfaceId, DecisionState>>>;
  /** Percent of each overview; a typical kitchen where absent. */
  readonly seen?: Readonly<Partial<Record<SurfaceId, readonly number[]>>>;
  readonly low_vision?: boolean;
  /** Pairs of surfaces that touch, and that are never seen together; absent: nobody has looked. */
  readonly touching?: readonly (readonly [SurfaceId, SurfaceId])[];
  readonly apart?: readonly (readonly [SurfaceId, SurfaceId])[];
  /** Id of a light that alone shines; none: the room changes nothing. */
  readonly lamp?: string;
  readonly lights?: JudgeInput['lights'];
  readonly places?: Readonly<Partial<Record<SurfaceId, ScenarioPlace>>>;
  readonly then?: readonly Mutation[];
}

interface ScenarioFile {
  readonly about: string;
  readonly finishes?: Readonly<Record<string, string>>;
  readonly scenarios: readonly Scenario[];
}

/** A file of scenarios with its finishes filled in. */
export interface LoadedFile {
  readonly name: string;
  readonly about: string;
  readonly finishes: Readonly<Record<string, string>>;
  readonly scenarios: readonly Scenario[];
}

/** Every file of scenarios in this folder, by name. */
export const scenarioFiles = (): LoadedFile[] =>
  readdirSync(import.meta.dirname)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => {
      const file = JSON.parse(readFileSync(`${import.meta.dirname}/${name}`, 'utf8')) as ScenarioFile;
      return { name, about: file.about, finishes: file.finishes ?? {}, scenarios: file.scenarios };
    });

/** The scenario with a change made to it. */
export const mutated = (scenario: Scenario, { lay, places, ...change }: Mutation): Scenario => ({
  ...scenario,
  ...change,
  scheme: { ...scenario.scheme, ...lay },
  ...((places ?? scenario.places) && { places: { ...scenario.places, ...places } }),
});
