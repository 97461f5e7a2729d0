import type { Specular } from '../finish/given-color';
import type { ComponentRole, FinishComponent, Provenance } from '../finish/types';
import type { DecisionState, Facing, SurfaceId } from '../surface';
import type { LightSource } from './input';
import type { Meets } from './meets';

/** The assessment: plain data, the same object for panel, command line and print. Field names are the file format's. */
export interface Assessment {
  readonly project: string;
  readonly option: string;
  readonly setting: { readonly id: string; readonly cct_k: number | null; readonly duv: number | null };
  readonly surfaces: readonly AssessedSurface[];
  readonly pairs: readonly PairFinding[];
  readonly balance: Balance;
  readonly warnings: readonly Warning[];
  /** The smallest changes that clear warnings, smallest first. */
  readonly repairs: readonly Repair[];
  /** Warnings of which a finish could be the cure, and none in the library is. */
  readonly unrepaired: readonly Unrepaired[];
  /** Pending: as read. Held: with how firmly findings stand. Done: with what would help. */
  readonly status: 'pending' | 'held' | 'done';
}

export type LabTriple = readonly [l: number, a: number, b: number];
export type UndertoneLevel = 'none' | 'faint' | 'named' | 'color';

export interface ComponentRecord {
  readonly role: ComponentRole | 'average';
  readonly share: number;
  readonly lab_d65: LabTriple;
  readonly lrv: number;
  readonly munsell: string;
  readonly name: string;
  readonly undertone: { readonly word: string; readonly strength: number; readonly level: UndertoneLevel };
  readonly provenance: Provenance;
  /** Root mean square of the whole difference between what is said and what is. */
  readonly uncertainty_de00: number;
  /** Whether the spectrum was measured or made up for the color; 'mixed' of an average of both, or of two ways. */
  readonly spectrum_source: FinishComponent['spectrumSource'] | 'mixed';
  /** What it counts of the mirror-like reflection; null where nobody said. */
  readonly specular: Specular | null;
}

export interface InstalledRecord {
  readonly facing: Facing;
  readonly lab_d65: LabTriple;
  readonly name: string;
  readonly undertone: ComponentRecord['undertone'];
  readonly illuminance_lx: number;
  /** At its darkest place. */
  readonly lux_min: number;
  /** Shares of the light, largest first: `source` is a light group, or the surface that light left last. */
  readonly light_from: readonly LightSource[];
  readonly lightness_in_room: number;
  readonly shift_de00: number;
  /** What a perfect white would read in that place: its a* b* are the tint of the place. */
  readonly place_white_lab_d65: LabTriple;
  /** The same white were every surface gray: what the mix of lights alone makes of the place. */
  readonly light_white_lab_d65: LabTriple;
  /** Share of the tint that the mix of lights brings; `tint_from` names the rest. */
  readonly tint_from_light: number;
  readonly tint_from: readonly { readonly surface: SurfaceId; readonly share: number }[];
  readonly view_share: number;
}

export interface AssessedSurface {
  readonly surface: SurfaceId;
  readonly finish: string;
  readonly label: string;
  readonly state: DecisionState;
  readonly components: readonly ComponentRecord[];
  readonly average: ComponentRecord;
  readonly installed: readonly InstalledRecord[];
}

export type Basis = 'sample' | 'installed';
export type PairVerdict =
  | 'same'
  | 'match'
  | 'agree'
  | 'looks-dirty'
  | 'too-yellow'
  | 'relates'
  | 'pulls-apart'
  | 'none'
  | 'cannot-tell';

export interface PairFinding {
  readonly a: { readonly surface: SurfaceId; readonly component: ComponentRole };
  readonly b: { readonly surface: SurfaceId; readonly component: ComponentRole };
  readonly verdict: PairVerdict;
  /** Whether their surfaces touch, are seen together from some viewpoint, or neither. */
  readonly meets: Meets;
  readonly de00: number;
  readonly basis: Basis;
  readonly numbers: Readonly<Record<string, number>>;
}

/** 'nothing-chosen': there is nothing to weigh yet. */
export type BalanceVerdict = 'balanced' | 'lacks-warm' | 'lacks-cool' | 'muted' | 'nothing-chosen';

export interface Balance {
  readonly warm_share: number;
  readonly leaning_share: number;
  readonly cool_share: number;
  readonly neutral_share: number;
  readonly verdict: BalanceVerdict;
  readonly basis: Basis;
  readonly sentence: string;
  /** The same shares as installed, cast taken off, and their verdict. */
  readonly installed: {
    readonly shares: readonly [warm: number, leaning: number, cool: number, neutral: number];
    readonly verdict: BalanceVerdict;
  };
  /** Least and greatest warm and cool share over the overview viewpoints. */
  readonly range: { readonly warm: readonly [number, number]; readonly cool: readonly [number, number] };
  /** Overview viewpoints from which the verdict is another one. */
  readonly otherwise_from: readonly string[];
  /** Share of plausible errors under which the verdict holds, 0-1; null while not computed. */
  readonly holds_in: number | null;
}

export type WarningCode =
  | 'white-looks-dirty'
  | 'too-yellow'
  | 'undertones-pull-apart'
  | 'lacks-warm'
  | 'lacks-cool'
  | 'patterns-compete'
  | 'woods-nearly-match'
  | 'weak-edge'
  | 'tinted-by-bounce'
  | 'light-shift'
  | 'pair-splits'
  | 'low-light'
  | 'cannot-tell';

export type Severity = 'grave' | 'visible' | 'note';

export interface Warning {
  readonly code: WarningCode;
  readonly severity: Severity;
  readonly surfaces: readonly SurfaceId[];
  /** One plain sentence. */
  readonly text: string;
  /** The reason in plain words; absent where the sentence says all there is to say without numbers. */
  readonly reason?: string;
  /** The reason, with its numbers and their conditions. */
  readonly why: string;
  readonly basis: Basis;
  /**
   * Share of plausible errors of the colors, and in place of the curves they may have, under which it still holds, 0-1; of a
   * question: under which the answer stays the one that the numbers give. Null while not computed, and where it rests on
   * room and lamps alone.
   */
  readonly holds_in: number | null;
}

/** One finish laid elsewhere: on surfaces laid alike, and what follows them. */
export interface RepairChange {
  readonly surfaces: readonly SurfaceId[];
  readonly finish: string;
  readonly label: string;
  /** How far the area average moves, CIEDE2000. */
  readonly moved_de00: number;
}

/** A finding by what it is of. */
export interface FindingRef {
  readonly code: WarningCode;
  readonly surfaces: readonly SurfaceId[];
}

/** What a repair brings with it: a note, or in another setting a warning. */
export interface AddedFinding extends FindingRef {
  readonly severity: Severity;
  readonly setting: string;
  readonly text: string;
}

/** A change of the library's finishes that was run, and cleared grave or visible warnings without raising another. */
export interface Repair {
  /** The first change: its first surface, and what is laid there. */
  readonly surface: SurfaceId;
  readonly finish: string;
  /** One change; two only where no single one helps. */
  readonly changes: readonly RepairChange[];
  /** It changes something decided; what is fixed or ordered is never changed. */
  readonly changes_decided: boolean;
  readonly clears: readonly WarningCode[];
  readonly cleared: readonly FindingRef[];
  /** Warnings that stay as notes. */
  readonly softened: readonly FindingRef[];
  /** Viewpoints from which a new balance is another still. */
  readonly otherwise_from: readonly string[];
  /** What was warned of before and gets worse, in sentences. */
  readonly worsens: readonly string[];
  readonly adds: readonly WarningCode[];
  readonly added: readonly AddedFinding[];
  /** Settings in which it was run, the one on screen first. */
  readonly settings: readonly string[];
  readonly text: string;
}

/** A warning that nothing in the library clears, and why. */
export interface Unrepaired extends FindingRef {
  readonly text: string;
}
