import type { FixtureKind } from '../../model/fixture';
import type { LampWhite } from '../../model/new-project';
import { FIXTURES } from './fixtures';
import { spoken } from './spoken';

/** Words of the questions a new project begins with. */
export const QUESTIONS = spoken({
  open: 'New project',
  title: 'New project',
  intro: 'Five questions, each of which you may skip. What you skip is set as usual and can be changed later.',
  progress: (number: number, of: number) => `${number} of ${of}`,
  back: 'Back',
  skip: 'Skip',
  next: 'Next',
  make: 'Make the project',
  cancel: 'Cancel',
  leave: 'Leave the questions? Your answers are dropped.',
  leaveYes: 'Leave',
  leaveNo: 'Keep answering',
  unsaved:
    'The present project has changes that are not saved. Undo brings it back as long as this page is open; Save keeps it as a file.',
  save: 'Save it now',
  saved: 'Saved.',
  refused: 'This kitchen cannot be made:',

  stays: 'What stays?',
  staysHint:
    'Choose what you keep. It counts as fixed. If a finish of the library is close to it, say which; else another stands in for it.',
  finishOf: (surface: string) => `${surface}: finish`,
  finishUnknown: 'None is close',

  room: 'How large is the room?',
  roomHint: 'A layout and three lengths, wall to wall. Everything else takes usual sizes.',
  lengths: 'Wall to wall',
  yearWhy: 'Leave it empty if you do not know it. In old houses old paint may hold lead.',

  bearing: 'Which way does the window face?',
  bearingHint: 'Stand at the largest window and look out. The sun comes from the south at noon north of the tropics.',
  bearings: ['North', 'North-east', 'East', 'South-east', 'South', 'South-west', 'West', 'North-west'],
  bearingUnknown: 'I do not know',
  degrees: 'Or in degrees from north, clockwise',
  faces: (direction: string) => `It faces ${direction}.`,
  notDegrees: 'Give a number from 0 to 359.',

  lamps: 'Which lamps are there?',
  lampsHint: 'The color of their white, and the kinds that hang or will hang.',
  white: 'White of the lamps',
  whites: {
    warm: 'Warm, yellowish',
    neutral: 'Neutral',
    cool: 'Cool, bluish',
    unknown: 'I do not know',
  } satisfies Record<LampWhite, string>,
  kinds: 'Kinds',
  kindNames: FIXTURES.kinds satisfies Record<FixtureKind, string>,

  users: 'Who uses the kitchen?',
  usersHint: 'Some clearances and contrasts matter more to some people. Choose all that apply.',
  nobody: 'None of these',
  name: 'What shall it be called?',
  nameHint: 'New kitchen',
} as const);
