import { finishComponent } from '../../engine/finish/component';
import type { FinishComponent, LaidFinish } from '../../engine/finish/types';
import type { JudgedSurface } from '../../engine/judge/input';
import { familyInLook } from '../../engine/judge/relations/places';
import type { PatternFact, RelationScheme } from '../../engine/judge/relations/seen-scheme';
import { failure, type Problem, type Result, success } from '../../engine/result';
import type { SurfaceId } from '../../engine/surface';
import type { CopiedLook, LookSurface } from '../../model/look';

/** What a look says nothing of is taken for paint: its curve only matters under lamps, which relations do not look at. */
const USUAL_CLASS = 'paint';

/** A look with what lies on each surface worked out. */
export interface LookScheme extends RelationScheme {
  readonly look: CopiedLook;
  /** By surface of a kitchen the surface of the look that stands for it. */
  readonly of: ReadonlyMap<SurfaceId, LookSurface>;
  readonly laid: ReadonlyMap<SurfaceId, LaidFinish>;
}

/**
 * A look as a scheme to take relations from. A point on one of the fronts or counters stands for those of the family that the look
 * does not name. Seen as a typical kitchen shows it: a look has no views of its own. Fails with the color that no
 * surface can have.
 */
export function lookScheme(look: CopiedLook): Result<LookScheme> {
  const problems: Problem[] = [];
  const laid = new Map<SurfaceId, LaidFinish>();
  const of = new Map<SurfaceId, LookSurface>();
  const patterns = new Map<SurfaceId, PatternFact>();
  look.surfaces.forEach((one, i) => {
    const made = laidOf(one, look.source, i, problems);
    for (const surface of stoodFor(look, one)) {
      laid.set(surface, made);
      of.set(surface, one);
      if (one.pattern) patterns.set(surface, { kind: one.pattern, scale_mm: one.pattern_mm ?? null });
    }
  });
  const [problem, ...more] = problems;
  if (problem) return failure(problem, more);
  const surfaces = [...laid].map(
    ([surface, finish]): JudgedSurface => ({ surface, finish, state: 'open', installed: [] }),
  );
  const input = {
    project: look.id,
    option: look.id,
    setting: { id: 'none', cct_k: null, duv: null },
    lights: 'one',
    burning: { daylight: true, lamps: false },
    surfaces,
    overviews: [],
  } as const;
  return success({ input, patterns, look, of, laid });
}

/** The surface itself, and those of its family that nothing in the look speaks for; the first one named speaks for them. */
function stoodFor(look: CopiedLook, one: LookSurface): readonly SurfaceId[] {
  const family = familyInLook(one.surface);
  const named = look.surfaces.map(({ surface }) => surface);
  const isFirst = named.find((surface) => family.includes(surface)) === one.surface;
  return isFirst ? [one.surface, ...family.filter((surface) => !named.includes(surface))] : [one.surface];
}

function laidOf(one: LookSurface, source: CopiedLook['source'], index: number, problems: Problem[]): LaidFinish {
  const total = one.colors.reduce((sum, { share }) => sum + share, 0);
  const components: FinishComponent[] = [];
  one.colors.forEach((given, i) => {
    const path = `surfaces[${index}].colors[${i}].color`;
    const made = finishComponent({
      role: given.role,
      share: given.share / total,
      color: given.color,
      finishClass: one.class ?? USUAL_CLASS,
      provenance: given.provenance,
      ...(one.gloss_gu !== undefined && { glossGu: one.gloss_gu }),
    });
    if (!made.ok) problems.push({ ...made.problem, text: `${path}: ${made.problem.text}`, at: { path } });
    // A pixel of a picture is worth no more than the picture, whatever it was written as.
    else components.push(source === 'picture' ? asPhoto(made.value) : made.value);
  });
  return {
    id: one.finish ?? `look:${one.surface}`,
    label: one.surface,
    class: one.class ?? USUAL_CLASS,
    glossGu: one.gloss_gu ?? 0,
    components,
  };
}

const asPhoto = (component: FinishComponent): FinishComponent => ({
  ...component,
  provenance: 'photo',
  uncertaintyDe00: Math.max(component.uncertaintyDe00, PHOTO_DE00),
});

/** Plus or minus ten, read as twice the root mean square (see `UNCERTAINTY_DE00`). */
const PHOTO_DE00 = 5;
