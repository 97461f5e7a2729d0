import type { Warning } from './assessment';
import { BUSY, type BusyGroup, groupKey } from './busy-patterns';
import { isLooseFinish } from './cannot-tell';
import type { Holds } from './claims';
import { compareWords } from './compare-words';
import { firmnessOf, isOpenQuestion } from './firmness';
import { type NearWoods, WOODS } from './near-woods';
import { AS_SAMPLE, oneDecimal } from './number-words';
import { inDecisionOrder, joined, lowerFirst, sentenceCase, surfacesPhrase } from './surface-words';

/**
 * Busy patterns that meet: visible where they touch, a note where they are only seen together. That they do harm is never certain, so
 * the words are "may". Whether a pattern at the limit is busy is not worth a question.
 */
export const patternWarnings = (groups: readonly BusyGroup[], holds: Holds): Warning[] =>
  groups.flatMap((group) => {
    const holdsIn = holds.patterns(groupKey(group));
    if (firmnessOf(holdsIn) === 'open') return [];
    const who = surfacesPhrase(group.surfaces);
    const finishes = new Set(group.members.map(({ judged }) => judged.finish.id)).size;
    return [
      {
        code: 'patterns-compete',
        severity: group.meets === 'adjacent' ? 'visible' : 'note',
        surfaces: group.surfaces,
        text:
          `${sentenceCase(who.text)} ${finishes === 2 ? 'both' : 'all'} have a busy pattern, and they may compete: ` +
          'one that leads, with quiet ones beside it, is easier on the eye.',
        reason:
          'A pattern is busy where colors that stand far apart cover much of it, in a figure large enough to be seen from where one stands.',
        why:
          `Their colors stray from the mean by ${joined(group.members.map(spreadWords))} CIEDE2000, root mean square by area, ${AS_SAMPLE} ` +
          `(busy from ${BUSY.spread}, figures from ${BUSY.figureMm} mm, less than ${BUSY.sizesApart} times apart in size; all our judgment). ` +
          'That one pattern leads is common practice, no source.',
        basis: 'sample',
        holds_in: holdsIn,
      },
    ];
  });

const spreadWords = ({ judged, spread }: BusyGroup['members'][number]): string =>
  `${oneDecimal(spread)} (${surfacesPhrase([judged.surface]).text}, figure ${Math.round(judged.finish.figureMm!)} mm)`;

/** Woods close but unlike; where boards or what is known of the colors leave it open, a question. */
export const woodWarnings = (all: readonly NearWoods[], holds: Holds): Warning[] =>
  all.flatMap((woods) => {
    const { key, first, second, firstSurfaces, secondSurfaces, de00, boards, isMasked, lean } = woods;
    const holdsIn = holds.woods(key);
    // Nearly all that the colors may be says that they are not: then it is no question.
    if (holdsIn !== null && !isOpenQuestion(holdsIn)) return [];
    const isRough = [first, second].some(({ finish }) => isLooseFinish(finish));
    const open = isMasked || firmnessOf(holdsIn) === 'open' || (holdsIn === null && isRough);
    const one = surfacesPhrase(firstSurfaces).text;
    const other = surfacesPhrase(secondSurfaces);
    const are = other.plural ? 'are' : 'is';
    return [
      {
        code: open ? 'cannot-tell' : 'woods-nearly-match',
        severity: open ? 'note' : 'visible',
        surfaces: inDecisionOrder([...firstSurfaces, ...secondSurfaces]),
        text: open
          ? `Cannot tell whether the wood of ${other.text} passes for that of ${one} or looks like a match that failed. Take several boards of both: ${lowerFirst(compareWords('by the window', firstSurfaces, secondSurfaces))}`
          : `${sentenceCase(other.text)} ${are} nearly the wood of ${one}, but ${lean}: that may look like a match that failed.`,
        reason:
          'Two woods go together where they are alike, or where they differ so clearly that one sees it is meant.',
        why:
          `Area means ${oneDecimal(de00)} CIEDE2000 apart, ${AS_SAMPLE} (alike up to ${WOODS.alike}, Paravina et al. 2015; clearly different from ` +
          `${WOODS.different}, or from ${WOODS.step} L*, our judgment); single boards of both may differ by ${oneDecimal(boards)} (one standard deviation). ` +
          'That woods match or differ clearly is common practice, no source.',
        basis: 'sample',
        holds_in: holdsIn,
      },
    ];
  });
