import { finishNames } from '../../model/given-names';
import type { Project } from '../../model/project';
import { toldNow } from './spoken';

/*
 * The demonstration that comes with the program has finishes and a note in US words. They are the program's own texts, known by what they
 * say, wherever they are by now: in another project, in a library somebody kept, in a file that comes back. Names that people and suppliers
 * gave stay as they are written.
 */

let texts: ReadonlySet<string> = new Set();

/** Takes the texts of the project that comes with the program. */
export function knowBuiltIn({ library, note }: Pick<Project, 'library' | 'note'>): void {
  texts = new Set([note, ...finishNames(library)]);
}

/** Whether a text is the program's own. */
export const isBuiltIn = (text: string): boolean => texts.has(text);

/** A name or note as it is shown: the program's own in the words chosen, anybody else's as it is. */
export const shownName = (text: string): string => (texts.has(text) ? toldNow(text) : text);
