import { finishComponent } from '../../engine/finish/component';
import type { FinishComponent, LaidFinish } from '../../engine/finish/types';
import { jointShare } from '../../engine/pattern/joint-share';
import { VARIATION_SIGMA_DE00 } from '../../engine/pattern/variation';
import { failure, type Result, success } from '../../engine/result';
import { figureSizeMm } from '../../model/figure-size';
import { givenComponents } from '../../model/given-components';
import { isBoard } from '../../model/layouts';
import type { Finish, Placement } from '../../model/project';

/** The pattern's weight channels carry four components, the joint included. */
const MOST_COMPONENTS = 4;

/** Components are costly (a spectrum each) and finishes immutable, so each finish is worked out once. */
const known = new WeakMap<Finish, Result<readonly FinishComponent[]>>();

/**
 * A finish as laid on a surface: its components with spectra and area shares, the grout joint added as a component of its
 * own where pieces are laid with one. Fails with the component's problem (colour outside the object-colour solid, ...).
 */
export function layFinish(library: ReadonlyMap<string, Finish>, placement: Placement): Result<LaidFinish> {
  const finish = library.get(placement.finish);
  if (!finish) return missing(placement.finish);
  const own = componentsOf(finish);
  if (!own.ok) return own;

  let components = own.value;
  let figureMm = figureSizeMm(finish);
  const { joint_mm, grout } = placement.laying;
  if (joint_mm && grout && finish.piece_mm && isLaidInPieces(finish, placement.laying)) {
    const groutFinish = library.get(grout);
    if (!groutFinish) return missing(grout);
    const joint = componentsOf(groutFinish);
    if (!joint.ok) return joint;
    const share = jointShare(finish.piece_mm, joint_mm, placement.laying.layout);
    components = [
      ...components.map((component) => ({ ...component, share: component.share * (1 - share) })),
      { ...joint.value[0]!, role: 'grout', share },
    ];
    figureMm ??= Math.min(...finish.piece_mm);
  }
  if (components.length > MOST_COMPONENTS) {
    return failure({
      code: 'too-many-components',
      text: `${finish.label} has ${components.length} colors, ${MOST_COMPONENTS} is the most, grout included.`,
      at: { path: `library.${finish.id}` },
      remedy: 'Merge the two colors that are closest to each other.',
    });
  }
  return success({
    id: finish.id,
    label: finish.label,
    class: finish.class,
    glossGu: finish.gloss_gu,
    components,
    ...(figureMm !== null && { figureMm }),
    pieceSigmaDe00: VARIATION_SIGMA_DE00[finish.variation],
  });
}

/** Boards have gaps and no grout, also in herringbone. */
const isLaidInPieces = (finish: Finish, { layout }: Placement['laying']): boolean =>
  layout !== 'plain' && layout !== 'planks' && !isBoard(finish);

function componentsOf(finish: Finish): Result<readonly FinishComponent[]> {
  const before = known.get(finish);
  if (before) return before;
  const components: FinishComponent[] = [];
  let result: Result<readonly FinishComponent[]> = success(components);
  for (const given of givenComponents(finish)) {
    const made = finishComponent(given);
    if (!made.ok) {
      result = failure({ ...made.problem, at: { ...made.problem.at, path: `library.${finish.id}.${given.role}` } });
      break;
    }
    components.push(made.value);
  }
  known.set(finish, result);
  return result;
}

const missing = (id: string) =>
  failure({
    code: 'unknown-finish',
    text: `There is no finish ${id} in the library.`,
    at: { path: `library.${id}` },
    remedy: 'Add it to the library, or choose another finish for this surface.',
  });
