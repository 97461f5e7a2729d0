import type { DecisionState } from '../../engine/surface';
import type { Schedule, ScheduleRow } from '../../kitchen/schedule/types';
import type { Kitchen } from '../../model/kitchen';
import type { Day } from '../../model/order/day';
import type { ExtraItem, ItemRecord, Job, SampleRecord } from '../../model/order/records';
import type { Stage } from '../../model/order/stages';
import type { Finish } from '../../model/project';
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
  /** The latest frozen revision; null where there is none. */
  readonly revision: string | null;
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
