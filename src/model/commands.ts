import type { DecisionState, SurfaceId } from '../engine/surface';
import type { Fixture, LampGroup } from './fixture';
import type { Kitchen, KitchenSite, Opening } from './kitchen';
import type { LogEntry } from './log';
import type { CopiedLook } from './look';
import type { ExtraItem, ItemRecord, Job, SampleRecord } from './order/records';
import type { BeamRecord, Daylight, Finish, Lamp, Laying, Option, Project, UserNeed } from './project';
import type { QuantityAssumptions } from './quantity/assumptions';

/**
 * Everything that can be done to a document, as plain data: it can be logged, sent to a worker and replayed.
 * Ids name what exists; `finish` is always the id of a finish in the library, except where a whole finish is given.
 */
export type Command =
  | LayFinish
  | { readonly kind: 'set-laying'; readonly option: string; readonly surface: SurfaceId; readonly laying: Laying }
  | { readonly kind: 'set-state'; readonly option: string; readonly surface: SurfaceId; readonly state: DecisionState }
  | FinishCommand
  | { readonly kind: 'add-lamp'; readonly lamp: Lamp }
  | { readonly kind: 'add-beam'; readonly beam: BeamRecord }
  | SetGroup
  | { readonly kind: 'set-daylight'; readonly setting: string; readonly daylight: Daylight | null }
  | { readonly kind: 'copy-setting'; readonly setting: string; readonly id: string; readonly name: string }
  | { readonly kind: 'remove-setting'; readonly setting: string }
  | { readonly kind: 'set-site'; readonly site: KitchenSite }
  | { readonly kind: 'set-openings'; readonly openings: readonly Opening[] }
  | { readonly kind: 'set-fixtures'; readonly fixtures: readonly Fixture[] }
  | { readonly kind: 'set-kitchen'; readonly kitchen: Kitchen }
  | { readonly kind: 'set-users'; readonly users: readonly UserNeed[] }
  /** Null: not known. */
  | { readonly kind: 'set-year'; readonly year_built: number | null }
  | { readonly kind: 'copy-option'; readonly option: string; readonly id: string; readonly name: string }
  | { readonly kind: 'remove-option'; readonly option: string }
  | LookCommand
  | LogCommand
  | OrderCommand
  | Rename
  | { readonly kind: 'together'; readonly label: string; readonly commands: readonly Command[] };

/** What can be done to the finishes of a document. */
export type FinishCommand =
  | { readonly kind: 'add-finish'; readonly finish: Finish }
  | { readonly kind: 'add-finishes'; readonly finishes: readonly Finish[] }
  | { readonly kind: 'edit-finish'; readonly finish: string; readonly changes: FinishChanges }
  | { readonly kind: 'remove-finish'; readonly finish: string };

/** What can be done to log, notes and revisions. Times are ISO 8601 and come along, for the model has no clock. */
export type LogCommand =
  | { readonly kind: 'add-log'; readonly entry: LogEntry }
  /** `entry` counts from 0, the oldest. */
  | { readonly kind: 'remove-log'; readonly entry: number }
  | { readonly kind: 'set-note'; readonly what: 'project'; readonly note: string }
  | { readonly kind: 'set-note'; readonly what: 'option'; readonly option: string; readonly note: string }
  /** Keeps a copy of the document as it is, without log and revisions. */
  | {
      readonly kind: 'freeze-revision';
      readonly id: string;
      readonly name: string;
      readonly at: string;
      readonly note: string;
    }
  | { readonly kind: 'rename-revision'; readonly revision: string; readonly name: string }
  | { readonly kind: 'remove-revision'; readonly revision: string }
  /** The document becomes that of the revision; log and revisions stay. */
  | { readonly kind: 'go-back-to-revision'; readonly revision: string };

/** What can be done to what is ordered. Each record comes whole; one that says nothing is taken away. */
export type OrderCommand =
  | { readonly kind: 'set-job'; readonly job: Job }
  | { readonly kind: 'set-assumptions'; readonly assumptions: Partial<QuantityAssumptions> }
  | { readonly kind: 'set-item'; readonly option: string; readonly record: ItemRecord }
  | { readonly kind: 'set-extra'; readonly option: string; readonly extra: ExtraItem }
  | { readonly kind: 'remove-extra'; readonly option: string; readonly id: string }
  | { readonly kind: 'set-sample'; readonly sample: SampleRecord }
  | { readonly kind: 'remove-sample'; readonly finish: string };

/** What can be done to the looks of a document. */
export type LookCommand =
  | { readonly kind: 'add-look'; readonly look: CopiedLook }
  | { readonly kind: 'edit-look'; readonly look: string; readonly changes: Partial<Omit<CopiedLook, 'id'>> }
  | { readonly kind: 'remove-look'; readonly look: string };

/** Lays a finish. Without `laying` the usual one is chosen; what is of the same material goes along (see lay-finish.ts). */
export interface LayFinish {
  readonly kind: 'lay-finish';
  readonly option: string;
  readonly surface: SurfaceId;
  readonly finish: string;
  readonly laying?: Laying;
}

/** Dims a group of lamps (0-1), gives it another lamp, says what dimming does to its color, or all of it. */
export interface SetGroup {
  readonly kind: 'set-group';
  readonly setting: string;
  readonly group: LampGroup;
  readonly level?: number;
  readonly light?: string;
  readonly dims?: 'same' | 'warm';
}

/** `id` names the option or setting; a project has none. */
export interface Rename {
  readonly kind: 'rename';
  readonly what: 'project' | 'option' | 'setting';
  readonly id?: string;
  readonly name: string;
}

/** All of a finish may change but its id, by which schemes refer to it. */
export type FinishChanges = Partial<Omit<Finish, 'id'>>;

/** The option of that id, if there is one. */
export const optionById = (project: Project, id: string): Option | undefined =>
  project.options.find((option) => option.id === id);
