import { lightReport } from '../../kitchen/study/light-report';
import { studyCommand } from '../study-command';
import { lightText } from '../text/light-text';

/** `light PROJECT`: how much light falls on every surface, what color it has there and where that comes from. */
export const light = studyCommand(
  'light',
  'Illuminance on every surface, the tint of the place and where it comes from.',
  lightReport,
  lightText,
);
