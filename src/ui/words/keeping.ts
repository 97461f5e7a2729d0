import type { Problem } from '../../engine/result';
import { spoken } from './spoken';

/** Words for what is kept in the browser. */
export const KEEPING = spoken({
  /** Under the name of the project, in no more room than that: a notice says the rest. */
  states: {
    nothing: '',
    keeping: 'Keeping…',
    kept: 'Kept in this browser',
    full: 'Not kept: disk full',
    closed: 'Not kept here',
    newer: 'Not kept: old page',
    silent: 'Not kept yet',
    elsewhere: 'Not kept: other tab',
  },
  isElsewhere: 'This project is open in another tab.',
  isElsewhereRemedy: 'What you change here is not kept, until you go on here. The other tab then stops keeping it.',
  wasTaken: 'Another tab went on with this project.',
  wasTakenRemedy: 'What you change here from now on is not kept, until you go on here. What you did before is.',
  goOnHere: 'Go on here',
  goOnWithCopy: 'Go on with a copy',
  goOnLabel: 'what was changed in this tab',
  switched: (to: string, from: string | null) =>
    from === null
      ? `You are in “${to}” now.`
      : `You are in “${to}” now. “${from}” stays in this browser as you left it.`,
  back: (name: string) => `Back to “${name}”`,
  backToDemo: 'Back to the demo',
  removed: (name: string) => `“${name}” was removed.`,
  removedTo: (name: string | null) =>
    name === null
      ? 'This is the demo: it is not yours and not kept, until you change something.'
      : `You are in “${name}” now.`,
  bringBack: (name: string) => `Bring back “${name}”`,
  unreadable: (name: string) => `“${name}” is kept in this browser, but cannot be opened here.`,
  unreadableRemedy: 'It was left as it is. Save it as a file to open it elsewhere or to have it looked at.',
  newerRemedy: 'It was left as it is. Reload the page to get the newest version, or save the project as a file.',
  reload: 'Reload the page',
  save: 'Save my work as a file',
  seeProjects: 'See my projects',
  saveUnreadable: 'Save it as a file',
  copyOf: (name: string, names: readonly string[]) => {
    const plain = name.replace(/ \(copy( \d+)?\)$/, '');
    for (let count = 1; ; count++) {
      const copy = count === 1 ? `${plain} (copy)` : `${plain} (copy ${count})`;
      if (!names.includes(copy)) return copy;
    }
  },
} as const);

/** What is told where nothing can be kept or read, by the reason. */
export const UNKEPT = spoken({
  full: {
    text: 'The disk is full: your last changes are not kept in this browser.',
    remedy:
      'They are still on this page. Save them as a file; then make room on the disk, or remove projects you no longer need.',
  },
  closed: {
    text: 'This browser keeps nothing for this page: it is a private window, or its settings forbid it.',
    remedy: 'You can go on, but your work is gone when the page is closed. Save it as a file before you leave.',
  },
  newer: {
    text: 'A newer version of the program was used in this browser, so this older page keeps nothing.',
    remedy: 'What is kept is safe and untouched. Save what you do here as a file if you need it, then reload the page.',
  },
  silent: {
    text: 'The browser does not answer, so your projects cannot be read or kept just now.',
    remedy: 'Nothing of them is changed. Close other tabs of this page, then reload it.',
  },
} as const);

/** What is kept does not make a document any more. */
export const damaged = spoken(
  (name: string): Problem => ({
    code: 'damaged',
    text: `What is kept of “${name}” is damaged: parts are missing or do not fit.`,
    remedy: 'Nothing was changed in it.',
  }),
);

/** A newer program of the same version of files kept what this one does not know. */
export const keptNewer = spoken(
  (name: string, fields: readonly string[]): Problem => ({
    code: 'newer-version',
    text: `What is kept of “${name}” has fields this version does not know and would lose: ${fields.join(', ')}.`,
    remedy: 'Open it with the newer program that kept it.',
  }),
);

/** The present project would be lost if another came. */
export const notKeptYet = spoken(
  (name: string): Problem => ({
    code: 'not-kept-yet',
    text: `The last changes of “${name}” are not kept, so it stays open.`,
    remedy: 'Save it as a file first.',
  }),
);

export const openElsewhere = spoken(
  (name: string): Problem => ({
    code: 'open-elsewhere',
    text: `“${name}” is open in another tab.`,
    remedy: 'Close it there first.',
  }),
);

/** What became of a document whose project was kept already. */
export const DOCUMENT_NOTICES = spoken({
  same: (name: string): Problem => ({
    code: 'same-project',
    text: `“${name}” is kept in this browser already and is the same: it was opened with all its steps.`,
    remedy: 'Nothing to do.',
  }),
  wentOn: (name: string): Problem => ({
    code: 'went-on',
    text: `“${name}” is kept in this browser already: what you opened is its next step.`,
    remedy: 'Undo brings back how it was.',
  }),
  beside: (name: string, copy: string): Problem => ({
    code: 'kept-beside',
    text: `“${name}” is kept in this browser already and differs: what you opened stands beside it as “${copy}”.`,
    remedy: 'Nothing was overwritten. Remove the one you do not need.',
  }),
} as const);
