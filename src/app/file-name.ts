import type { Project } from '../model/project';

/** Longer names are cut: some systems take 255 bytes at most, and a letter may have four. */
const MOST_LETTERS = 50;

/** The name of a project as a file may have it, without its ending: without what some systems do not allow; the id where nothing is left. */
export function fileNameOf({ id, name }: Pick<Project, 'id' | 'name'>): string {
  const allowed = name
    .normalize('NFC')
    // biome-ignore lint/suspicious/noControlCharactersInRegex: no system takes them.
    .replace(/[\u0000-\u001f\u007f\u200b-\u200f\u2028-\u202e\u2066-\u2069<>:"/\\|?*]+/g, ' ')
    .replace(/\s+/g, ' ');
  const cut = [...allowed].slice(0, MOST_LETTERS).join('');
  return cut.replace(/^[. ]+|[. ]+$/g, '') || id;
}
