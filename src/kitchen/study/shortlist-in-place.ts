import { type InPlace, inPlaceFaults } from '../../engine/judge/shortlist/in-place';
import { acceptedOf, type Ranking } from '../../engine/judge/shortlist/shortlist';
import { laidAlike, withFinishOn } from '../../model/lay-alike';
import type { Project } from '../../model/project';
import { judgeTried } from './judge-tried';
import type { RoomStudy } from './room-study';
import type { SettingLight } from './setting-light';

/** How many of the best are judged in their place. */
const MOST_IN_PLACE = 40;

/** A light of the project, and the room studied under its sky. */
export interface StudiedSetting {
  readonly name: string;
  readonly study: RoomStudy;
  readonly light: SettingLight;
}

/** The candidates of a ranking that are judged in their place: the first as samples. */
export const bestOf = (ranking: Ranking) => acceptedOf(ranking).slice(0, MOST_IN_PLACE);

/**
 * The best of a ranking laid and read in one setting, one by one: what each shows there. Yields after each, so that a worker can listen.
 * A finish that cannot be laid is left as a sample.
 * @param known what was seen in this setting before, of the same place; null for what could not be laid
 */
export function* judgeInPlace(
  project: Project,
  ranking: Ranking,
  { name, study, light }: StudiedSetting,
  known: ReadonlyMap<string, InPlace | null> = new Map(),
): Generator<null, ReadonlyMap<string, InPlace>> {
  const option = project.options.find(({ id }) => id === ranking.asked.option)!;
  const { surfaces } = ranking.asked.place;
  const alike = laidAlike(option, surfaces[0]!);
  const settled = ranking.held.map(({ surface }) => surface);
  const found = new Map<string, InPlace>();
  if (settled.length === 0) return found;
  for (const { candidate } of bestOf(ranking)) {
    const { id } = candidate.finish;
    const before = known.get(id);
    if (before) found.set(id, before);
    if (before !== undefined) continue;
    const tried = withFinishOn(project, option, alike, id);
    const input = tried.ok ? judgeTried(tried.value, option.id, study, light) : null;
    if (input?.ok) {
      const faults = inPlaceFaults(input.value, surfaces, settled);
      found.set(id, { setting: light.id, settingName: name, faults });
    }
    yield null;
  }
  return found;
}
