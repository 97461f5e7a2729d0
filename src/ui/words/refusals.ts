import type { Problem } from '../../engine/result';
import { spoken } from './spoken';

/** What was refused, for somebody who knows nothing of how files are made. */
export interface Plain {
  readonly text: string;
  readonly remedy: string;
}

/** Words around what was refused. */
export const REFUSAL = spoken({
  lead: 'Nothing was changed.',
  details: (count: number) => (count === 1 ? 'What the program found' : `What the program found (${count})`),
  more: (count: number) => (count === 1 ? 'and 1 thing more' : `and ${count} things more`),
} as const);

const AGAIN = 'Save it again where it comes from, or ask whoever sent it to send it again.';

const BY_CODE = new Map<string, Plain>(
  Object.entries(
    spoken({
      'file-empty': { text: 'The file is empty.', remedy: AGAIN },
      'file-cut-off': {
        text: 'The file is not whole: it ends in the middle.',
        remedy: `It was not saved or sent to its end. ${AGAIN}`,
      },
      'not-json': {
        text: 'The file cannot be read: it is damaged, or of another kind.',
        remedy: 'Choose a file this program has saved. If somebody changed it by hand, the mistake is at this line.',
      },
      'not-a-project': {
        text: 'This is no project saved by this program.',
        remedy: 'Choose a project: a file as “Save as a file” makes them, with a name that ends in .project.json.',
      },
      'not-a-look': {
        text: 'This is no look saved by this program.',
        remedy: 'Choose a look file, whose name ends in .look.json, or a project.',
      },
      'not-a-library': {
        text: 'This is no library saved by this program.',
        remedy: 'Choose a library file, whose name ends in .library.json, a project, or a table of finishes.',
      },
      'newer-version': {
        text: 'This was saved by a newer version of this program, and this one would lose parts of it.',
        remedy: 'Reload the page to get the newest version, then open it again.',
      },
    } as const),
  ),
);

/** A field that is missing, wrong or unknown: its name says nothing to who uses the program. */
const UNFIT = spoken({
  text: 'Something in the file does not fit, so it was not opened.',
  remedy:
    'If nobody changed it by hand, it is damaged: save it again where it comes from, or ask whoever sent it to send it again.',
} as const);

/** What a person has to know of a problem; null where its own words are for a person already. */
export function plainly({ code, at }: Problem): Plain | null {
  return BY_CODE.get(code) ?? (at?.path === undefined || at.file === undefined ? null : UNFIT);
}
