import type { Schedule } from '../../kitchen/schedule/types';
import type { Project } from '../../model/project';
import type { SheetPart } from './blocks';
import { datesPart } from './dates-part';
import { deliveryPart } from './delivery-part';
import { drawingsPart } from './drawings-part';
import { quantitiesPart } from './quantities-part';
import { schedulePart } from './schedule-part';
import './ordering.css';

/** The pages on ordering: schedule, drawings with its tags, dates, quantities, what comes. */
export const orderingPages = ({ kitchen, library }: Project, schedule: Schedule): readonly SheetPart[] => [
  schedulePart(schedule, library),
  drawingsPart(kitchen, schedule),
  datesPart(schedule, schedule.days),
  quantitiesPart(schedule),
  deliveryPart(schedule),
];
