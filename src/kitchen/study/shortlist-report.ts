import type { InPlace } from '../../engine/judge/shortlist/in-place';
import { shortlist } from '../../engine/judge/shortlist/shortlist';
import type { Shortlist } from '../../engine/judge/shortlist/types';
import { type WhyPoint, whyPoints } from '../../engine/judge/shortlist/why';
import { failure, type Problem, type Result, success } from '../../engine/result';
import type { SurfaceId } from '../../engine/surface';
import type { Finish, Project, Setting } from '../../model/project';
import { meetingsOf } from './meetings';
import { judgeInPlace } from './shortlist-in-place';
import { presentIn, rankSamples, type ShortlistOptions } from './shortlist-samples';
import { studySettings } from './study-settings';

/** A shortlist with its best judged in their place, and all there is to say of one finish where that was asked. */
export interface ShortlistReport extends Shortlist {
  readonly why?: { readonly finish: string; readonly points: readonly WhyPoint[] };
}

/** The whole shortlist at once: as samples, then the best in every setting given. For the command line and tests. */
export function shortlistReport(
  project: Project,
  option: string,
  surface: SurfaceId,
  settings: readonly Setting[],
  options: ShortlistOptions,
  whyFinish: string | null,
): Result<ShortlistReport> {
  const present = presentIn(project);
  if (!present.includes(surface)) return failure(notThere(surface, present));
  const library = options.library ?? project.library;
  if (whyFinish !== null && !library.some(({ id }) => id === whyFinish)) {
    return failure(unknownFinish(whyFinish, library));
  }
  const asSamples = rankSamples(project, option, surface, { ...options, present });
  if (!asSamples.ok) return asSamples;
  // With nothing to hold against, nothing shows in place either.
  const isAnythingHeld = asSamples.value.held.length > 0;
  const studied = isAnythingHeld ? studySettings(project, settings) : success([]);
  if (!studied.ok) return studied;
  const [first] = studied.value;
  const ranking = rankSamples(project, option, surface, {
    ...options,
    present,
    ...(first ? { meetings: meetingsOf(first.study) } : {}),
  });
  if (!ranking.ok) return ranking;
  const seen = new Map<string, InPlace[]>();
  for (const setting of studied.value) {
    const steps = judgeInPlace(project, ranking.value, setting);
    let step = steps.next();
    for (; !step.done; step = steps.next());
    for (const [finish, place] of step.value) seen.set(finish, [...(seen.get(finish) ?? []), place]);
  }
  const list = shortlist(ranking.value, seen);
  if (whyFinish === null) return success(list);
  const points = whyPoints(ranking.value, whyFinish, seen.get(whyFinish));
  return success({ ...list, why: { finish: whyFinish, points: points ?? [] } });
}

const unknownFinish = (id: string, library: readonly Finish[]): Problem => ({
  code: 'unknown-finish',
  text: `There is no finish "${id}" among those judged.`,
  at: { path: 'library' },
  remedy: `Name one of: ${library.map((finish) => finish.id).join(', ')}.`,
});

const notThere = (surface: SurfaceId, present: readonly SurfaceId[]): Problem => ({
  code: 'no-such-surface',
  text: `This kitchen has no ${surface}.`,
  at: { path: 'kitchen' },
  remedy: `Name one of: ${present.join(', ')}.`,
});
