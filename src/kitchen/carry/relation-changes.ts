import type { JudgeInput } from '../../engine/judge/input';
import { type SeenScheme, seenScheme } from '../../engine/judge/relations/seen-scheme';
import type { SurfaceId } from '../../engine/surface';
import { figureSizeMm } from '../../model/figure-size';
import type { Option, Project } from '../../model/project';
import { layFinish } from '../study/lay-finish';
import { changeable, type LibraryChange, libraryChanges } from '../study/repairs/library-changes';
import { libraryOf } from '../study/scheme';

/** A change of the library as relations see it. */
export interface SeenChange {
  readonly change: LibraryChange;
  /** The changed surfaces alone. */
  readonly seen: SeenScheme;
}

/**
 * Every change of the library to an option that relations may be mended by, in slices: of all that is laid alike, and of an island's
 * fronts by themselves, which are often chosen apart.
 */
export function* relationChanges(
  project: Project,
  option: Option,
  present: readonly SurfaceId[],
): Generator<undefined, readonly SeenChange[]> {
  const library = libraryOf(project);
  const whole = changeable(option, present).filter((family) => !UNSAID.includes(family[0]!));
  const island = whole.filter((family) => family.includes('island-fronts') && family.includes('base-fronts'));
  const changes: SeenChange[] = [];
  for (const family of [...whole, ...island.map((): readonly SurfaceId[] => ['island-fronts'])]) {
    for (const change of libraryChanges(project, option, present, [family])) {
      changes.push({ change, seen: seenAfter(change, library) });
    }
    yield;
  }
  return changes;
}

/** No relation speaks of these by themselves. */
const UNSAID: readonly SurfaceId[] = ['ceiling', 'frame', 'sink', 'tap', 'upstand', 'plinth'];

function seenAfter({ surfaces, option, finish }: LibraryChange, library: ReturnType<typeof libraryOf>): SeenScheme {
  const pattern = { kind: finish.pattern.kind, scale_mm: figureSizeMm(finish) };
  const judged = surfaces.flatMap((surface) => {
    const placement = option.scheme[surface];
    const laid = layFinish(library, placement);
    return laid.ok ? [{ surface, finish: laid.value, state: placement.state, installed: [] }] : [];
  });
  const patterns = new Map(surfaces.map((surface) => [surface, pattern]));
  return seenScheme({ input: { ...NO_INPUT, surfaces: judged }, patterns });
}

const NO_INPUT: Omit<JudgeInput, 'surfaces'> = {
  project: '',
  option: '',
  setting: { id: '', cct_k: null, duv: null },
  lights: 'one',
  burning: { daylight: true, lamps: false },
  overviews: [],
};
