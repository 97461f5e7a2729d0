import type { Problem } from '../../engine/result';
import { capital } from './numbers';
import { retold, spoken } from './spoken';

/** Words for what went wrong. */
export const PROBLEMS = spoken({
  dismiss: 'Dismiss',
  saveWork: 'Save my work',
  retry: 'Try again',
  pictureBroke: 'The picture stopped working. Nothing in your project is lost.',
  panelBroke: 'The findings stopped working. Nothing in your project is lost.',
  ledgeBroke: 'The ledge stopped working. Nothing in your project is lost.',
  paneBroke:
    'This part stopped working or could not be loaded. The page below goes on. Where a newer version came meanwhile, reloading helps: save first what is not kept.',
  pageBroke: 'The page stopped working. Save your project as a file, then reload.',
  reload: 'Reload the page',
  close: 'Close',
  appBroke: 'Upstand could not start.',
  appFailed: 'A part of the program could not be loaded, or failed.',
  appRemedy: 'Reload the page. If it stays, use a current browser.',
  unreadable: 'The file could not be read.',
  unreadableRemedy: 'Check that it is still there and open it again.',
  readingBroke: (message: string) => `Reading it failed: ${message}.`,
  readingBrokeRemedy: 'This is a mistake in the program. Please report it with these words.',
  notFetched: 'A part of the program could not be loaded.',
  notFetchedRemedy: 'Check the network, reload the page, and try again.',
  tooLarge: (megabytes: number) => `The file has ${megabytes} MB; a project has far less.`,
  tooLargeRemedy: (most: number) => `Choose a project file; files up to ${most} MB are read.`,
  more: (count: number) => `and ${count} more`,
} as const);

/** Where a problem sits, in words, without what its text names already; empty when there is nothing to add. */
export function placeWords({ at, text }: Problem): string {
  if (!at) return '';
  const line = at.line === undefined ? '' : `line ${at.line}`;
  const path = at.path && !text.includes(at.path) ? at.path : '';
  return [at.file, line, path].filter(Boolean).join(', ');
}

/** What a problem says, without the line some texts begin with, which stands with the file's name. */
export function problemWords({ at, text }: Problem): string {
  const head = `Line ${at?.line}: `;
  return text.startsWith(head) ? capital(retold(text.slice(head.length))) : retold(text);
}
