import type { DecisionState, SurfaceId } from '../../engine/surface';
import { decisionOrder } from '../../model/decision-order';
import { isEmpty, NO_FINISH } from '../../model/empty-surface';
import { familyOf, familyWith, isLaidAlike } from '../../model/families';
import type { Finish, Laying, Option } from '../../model/project';
import { surfaceName } from '../words/engine-words';
import { LEDGE } from '../words/ledge';

/** One sample on the ledge: one surface, or several of a family that carry the very same finish. */
export interface LedgeSample {
  /** The first of its surfaces; stands for the sample. */
  readonly id: SurfaceId;
  readonly surfaces: readonly SurfaceId[];
  readonly name: string;
  readonly finish: Finish;
  readonly laying: Laying;
  readonly grout: Finish | null;
  readonly state: DecisionState;
}

export interface LedgeRows {
  readonly upright: readonly LedgeSample[];
  readonly flat: readonly LedgeSample[];
}

/** What lies flat in the room; all else stands upright. */
const LIES_FLAT: readonly SurfaceId[] = ['counter', 'island-counter', 'floor', 'sink', 'ceiling'];

/** The samples of an option, upright and flat apart, each row in the order of deciding. */
export function ledgeSamples(option: Option, library: readonly Finish[], present: readonly SurfaceId[]): LedgeRows {
  const samples: LedgeSample[] = [];
  const taken = new Set<SurfaceId>();
  for (const surface of decisionOrder(option)) {
    if (taken.has(surface) || !present.includes(surface)) continue;
    const placement = option.scheme[surface];
    const finish = isEmpty(placement) ? NO_FINISH : library.find((one) => one.id === placement.finish);
    if (!finish) continue;
    const surfaces = familyOf(surface).filter(
      (one) => present.includes(one) && !taken.has(one) && isLaidAlike(option.scheme[one], placement),
    );
    for (const one of surfaces) taken.add(one);
    samples.push({
      id: surface,
      surfaces,
      name: sampleName(surface, surfaces),
      finish,
      laying: placement.laying,
      grout: library.find((one) => one.id === placement.laying.grout) ?? null,
      state: placement.state,
    });
  }
  const flat = (sample: LedgeSample) => LIES_FLAT.includes(sample.id);
  return { upright: samples.filter((sample) => !flat(sample)), flat: samples.filter(flat) };
}

function sampleName(surface: SurfaceId, surfaces: readonly SurfaceId[]): string {
  if (surfaces.length === 1) return surfaceName(surface);
  const family = familyWith(surface);
  return family ? LEDGE[family.id] : surfaceName(surface);
}
