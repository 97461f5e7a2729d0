import type { InPlace } from '../../engine/judge/shortlist/in-place';
import { shortlist } from '../../engine/judge/shortlist/shortlist';
import type { Shortlist } from '../../engine/judge/shortlist/types';
import { type WhyPoint, whyPoints } from '../../engine/judge/shortlist/why';
import { failure, type Problem, type Result, success } from '../../engine/result';
import type { SurfaceId } from '../../engine/surface';
import type { Project, Setting } from '../../model/project';
import { presentSurfaces } from '../present-surfaces';
import { meetingsOf } from './meetings';
import { judgeInPlace } from './shortlist-in-place';
import { rankSamples, type ShortlistOptions } from './shortlist-samples';
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
  const studied = studySettings(project, settings);
  if (!studied.ok) return studied;
  const [first] = studied.value;
  const present = first && presentSurfaces(first.study.room);
  if (present && !present.includes(surface)) return failure(notThere(surface, present));
  const ranking = rankSamples(project, option, surface, {
    ...options,
    ...(first && present ? { present, meetings: meetingsOf(first.study) } : {}),
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
  if (points) return success({ ...list, why: { finish: whyFinish, points } });
  return failure({
    code: 'unknown-finish',
    text: `There is no finish "${whyFinish}" among those judged.`,
    at: { path: 'library' },
    remedy: `Name one of: ${ranking.value.standings.map(({ candidate }) => candidate.finish.id).join(', ')}.`,
  });
}

const notThere = (surface: SurfaceId, present: readonly SurfaceId[]): Problem => ({
  code: 'no-such-surface',
  text: `This kitchen has no ${surface}.`,
  at: { path: 'kitchen' },
  remedy: `Name one of: ${present.join(', ')}.`,
});
