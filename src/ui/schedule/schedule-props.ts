import type { DecisionState } from '../../engine/surface';
import type { Schedule, ScheduleRow } from '../../kitchen/schedule/types';
import type { Kitchen } from '../../model/kitchen';
import type { Day } from '../../model/order/day';
import type { ExtraItem, ItemRecord, Job, SampleRecord } from '../../model/order/records';
import type { Stage } from '../../model/order/stages';
import type { Finish, ProjectDocument, Revision } from '../../model/project';
import type { QuantityAssumptions } from '../../model/quantity/assumptions';
import type { SwatchPaint } from '../swatch/swatch-paint';

/** What a change of a text or number is part of: the same field being typed on, or a step of its own. */
export type Continues = boolean;

/** Everything the schedule shows and what it changes. */
export interface ScheduleDoors {
  readonly option: string;
  readonly kitchen: Kitchen;
  readonly schedule: Schedule;
  readonly library: ReadonlyMap<string, Finish>;
  /** Frozen revisions, oldest first. */
  readonly revisions: readonly Revision[];
  /** The project as it is now, whatever is shown. */
  readonly present: ProjectDocument;
  /** The frozen revision that is looked at, in which nothing can be changed; null for the present. */
  readonly past: Revision | null;
  /** The project is as that one, in everything. */
  readonly isFrozen: boolean;
  /** The day it is. */
  readonly today: Day;
  readonly records: readonly ItemRecord[];
  readonly extras: readonly ExtraItem[];
  readonly samples: readonly SampleRecord[];
  readonly job: Job;
  readonly days: { readonly [S in Stage]: Day } | null;
  readonly assumptions: Partial<QuantityAssumptions>;
  readonly onFreeze: (name: string, note: string) => void;
  /** Shows a frozen revision, or the present again. */
  readonly onLookAt: (revision: string | null) => void;
  readonly paintOf: (row: ScheduleRow) => SwatchPaint | null;
  readonly onRecord: (record: ItemRecord, continues: Continues) => void;
  readonly onState: (row: ScheduleRow, state: DecisionState) => void;
  readonly onExtra: (extra: ExtraItem, continues: Continues) => void;
  readonly onRemoveExtra: (id: string) => void;
  readonly onSample: (sample: SampleRecord, continues: Continues) => void;
  readonly onRemoveSample: (finish: string) => void;
  readonly onJob: (job: Job, continues: Continues) => void;
  readonly onAssumptions: (assumptions: Partial<QuantityAssumptions>) => void;
}
