import type { Place } from '../../engine/result';

/** Words for what went wrong. */
export const PROBLEMS = {
  dismiss: 'Dismiss',
  saveWork: 'Save my work',
  retry: 'Try again',
  pictureBroke: 'The picture stopped working. Nothing in your project is lost.',
  panelBroke: 'The findings stopped working. Nothing in your project is lost.',
  ledgeBroke: 'The ledge stopped working. Nothing in your project is lost.',
  appBroke: 'Upstand could not start.',
  appRemedy: 'Reload the page. If it stays, use a current browser.',
  unreadable: 'The file could not be read.',
  unreadableRemedy: 'Check that it is still there and open it again.',
  kept: 'Your last project is still open.',
} as const;

/** Where a problem sits, in words; empty when unknown. */
export function placeWords(place: Place | undefined): string {
  if (!place) return '';
  return [place.file, place.line === undefined ? '' : `line ${place.line}`, place.path ?? '']
    .filter(Boolean)
    .join(', ');
}
