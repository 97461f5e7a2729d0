import { localeNow, spoken } from './spoken';

/** By the clock and the calendar of this place. */
const moment = {
  format: (ms: number) => new Intl.DateTimeFormat(localeNow(), { dateStyle: 'medium', timeStyle: 'short' }).format(ms),
};

/** Words of the panel of projects. */
export const PROJECTS = spoken({
  title: 'Projects',
  openPanel: (project: string) => `${project}: projects`,
  name: 'Name',
  note: 'Note',
  noteOf: (option: string) => `Note on ${option}`,
  nameEmpty: 'A project needs a name.',
  save: 'Save as a file',

  kept: 'In this browser',
  keptNote: 'Kept on this device only. A file is the copy that stays when the browser is cleared.',
  noneKept: 'Nothing is kept in this browser yet.',
  demoOnly:
    'The demo is open, and nothing of your own is kept here. It becomes a project of yours with your first change.',
  demoOpen: 'The demo is open. It becomes a project of yours with your first change.',
  openDemo: 'Open the demo',
  isOpen: 'open now',
  changed: (ms: number) => `changed ${moment.format(ms)}`,
  open: 'Open',
  copy: 'Copy',
  remove: 'Remove',
  of: (what: string, name: string) => `${what}: ${name}`,
  copied: (name: string) => `${name} was copied.`,
  removed: (name: string) => `${name} was removed.`,
  bringBack: 'Bring back',
  removedNote: 'What was removed can be brought back until this page is closed.',
  broughtBack: (name: string) => `${name} is back.`,
  newProject: 'New project',
  openFile: 'Open a file',
  openFileTitle: 'A project saved by this program. You can also drop it anywhere on the page.',

  log: 'Log',
  logNote: 'Decisions write themselves down here. Add what else should be remembered.',
  addNote: 'New note',
  add: 'Add',
  logEmpty: 'Nothing yet.',
  allEntries: (count: number) => `Show all ${count}`,
  entryOf: { note: 'Note', decision: 'Decision', revision: 'Revision' },

  revisions: 'Revisions',
  revisionsNote: 'A revision is a frozen copy of the whole project: to compare with later, or to go back to.',
  revisionName: 'Name of the revision',
  revisionNote: 'What it is for',
  revisionUsual: (count: number) => `Revision ${count}`,
  freeze: 'Freeze as it is now',
  frozen: (at: string) => `frozen ${momentText(at)}`,
  whatChanged: 'What changed',
  goBack: 'Go back to it',
  rename: 'Rename',
  removeAsking: 'Remove…',
  removeRevision: (id: string) => `Remove ${id}? The project as it is now stays. Undo brings ${id} back.`,
  keepRevision: (id: string) => `Keep ${id}`,
  compareWith: 'From it to',
  now: 'now',
  nothingChanged: 'Nothing differs.',
  fileName: (project: string, revision: string, name: string) => `${project}, ${revision} ${name}`,
} as const);

/** A moment of the log in words of this place and its clock; as it stands where it is none. */
export function momentText(at: string): string {
  const ms = Date.parse(at);
  return Number.isNaN(ms) ? at : moment.format(ms);
}
