import type { SurfaceId } from '../../surface';
import type { AddedFinding, FindingRef, RepairChange, WarningCode } from '../assessment';
import { joined, lowerFirst, sentenceCase, surfacesPhrase } from '../surface-words';
import { fromViewpoint } from '../viewpoint-words';

/** What a warning is of, as the end of "clears ...". */
const FAULTS: { readonly [C in WarningCode]: string } = {
  'white-looks-dirty': 'the white that looks dirty',
  'too-yellow': 'the white that looks too yellow',
  'undertones-pull-apart': 'the undertones that pull apart',
  'lacks-warm': 'the lack of warmth',
  'lacks-cool': 'the lack of cool',
  'patterns-compete': 'the patterns that compete',
  'woods-nearly-match': 'the woods that nearly match',
  'weak-edge': 'the edge that is hard to see',
  'tinted-by-bounce': 'the tint of the place',
  'light-shift': 'the shift in this light',
  'pair-splits': 'the match that parts in this light',
  'low-light': 'the low light',
  'cannot-tell': 'the open question',
};

/** "the lack of warmth and the edge that is hard to see": what is cleared, each once. */
export const faultsPhrase = (refs: readonly FindingRef[]): string =>
  joined([...new Set(refs.map(({ code }) => FAULTS[code]))]);

/** "Brownish-orange tile on the backsplash". */
const layPhrase = ({ label, surfaces }: RepairChange): string => `${label} on ${surfacesPhrase(surfaces).text}`;

/** What a repair is and does, in plain sentences. */
export function repairText(of: {
  readonly changes: readonly RepairChange[];
  readonly cleared: readonly FindingRef[];
  readonly softened: readonly FindingRef[];
  readonly added: readonly AddedFinding[];
  readonly worsens: readonly string[];
  readonly decided: readonly SurfaceId[];
  /** Viewpoints from which the new balance is another. */
  readonly otherwiseFrom: readonly string[];
}): string {
  const { changes, cleared, softened, added, worsens, decided, otherwiseFrom } = of;
  const does = [
    ...(cleared.length > 0 ? [`clears ${faultsPhrase(cleared)}`] : []),
    ...(softened.length > 0 ? [`leaves a note of ${faultsPhrase(softened)}`] : []),
  ];
  return [
    `${sentenceCase(joined(changes.map(layPhrase)))} ${joined(does)}.`,
    ...(otherwiseFrom.length > 0
      ? [`It may not be enough: ${joined(otherwiseFrom.map(fromViewpoint))} the balance is another.`]
      : []),
    ...(decided.length > 0 ? [`That changes what is decided: ${surfacesPhrase(decided).text}.`] : []),
    ...worsens,
    // One thing brought in several settings is said once.
    ...(added.length > 0 ? [`It brings: ${[...new Set(added.map(({ text }) => text))].join(' ')}`] : []),
  ].join(' ');
}

/** A change that clears a warning and raises another. */
export interface NearMiss {
  readonly change: RepairChange;
  readonly raises: string;
}

/** Why nothing is offered for a warning. `settled`: what it is about is fixed or ordered. */
export function unrepairedText(nearest: NearMiss | null, isSettled: boolean): string {
  if (isSettled) return 'What could be changed for this is fixed or ordered.';
  if (!nearest) return 'Nothing in the library clears this.';
  return `Nothing in the library clears this without raising another warning. Nearest: ${layPhrase(nearest.change)}; then ${lowerFirst(nearest.raises)}`;
}
