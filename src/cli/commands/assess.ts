import { assessOption } from '../../kitchen/study/assess-option';
import { studyCommand } from '../study-command';
import { assessmentText } from '../text/assessment-text';

/** `assess PROJECT`: everything the engine has to say of one option under one setting. */
export const assess = studyCommand(
  'assess',
  'Undertones, pairs, balance and warnings of an option in its room and light.',
  assessOption,
  assessmentText,
);
