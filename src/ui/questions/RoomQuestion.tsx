import { kitchenBounds } from '../../model/kitchen-bounds';
import { usualRoom } from '../../model/new-project';
import { Menu } from '../drawer/Menu';
import { Choices } from '../parts/Choices';
import { ROOM_LENGTHS } from '../room/kitchen-lengths';
import { LayoutChoice } from '../room/LayoutChoice';
import { LengthField } from '../room/LengthField';
import type { LengthUnit } from '../room/length-text';
import { KITCHEN } from '../words/kitchen';
import { QUESTIONS } from '../words/questions';
import type { QuestionProps } from './NewProject';

interface RoomQuestionProps extends QuestionProps {
  readonly unit: LengthUnit;
  readonly onUnit: (unit: LengthUnit) => void;
}

const UNITS = (['mm', 'in'] as const).map((id) => ({ id, name: KITCHEN.units[id] }));
