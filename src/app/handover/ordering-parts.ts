import type { SheetPart } from '../../ui/handover/blocks';
import type { HandoverSet } from '../../ui/handover/handover-set';

/** Pages on what is ordered, in their order: the schedule, then the quantities; none while there is neither. */
export const orderingParts = (_set: HandoverSet): readonly SheetPart[] => [];
