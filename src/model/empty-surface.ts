import { SURFACES, type SurfaceId } from '../engine/surface';
import type { Finish, Option, Placement } from './project';

/**
 * Stands in where nothing is chosen yet, so that the room can be lit and drawn: a plain gray without hue. No finish of any library, and
 * nothing is ever said of it. Its lightness is that of what samples are held before; our judgment.
 */
export const NO_FINISH: Finish = {
  id: 'NONE',
  label: 'nothing chosen yet',
  class: 'paint',
  gloss_gu: 0,
  components: [
    { role: 'base', share: 1, color: { kind: 'lab', lab: [75, 0, 0], illuminant: 'D65', observer_deg: 10 } },
  ],
  pattern: { kind: 'plain' },
  variation: 'V0',
  provenance: 'declared',
};

/** How a surface lies that nothing is chosen for. */
export const EMPTY: Placement = { finish: NO_FINISH.id, state: 'open', laying: { layout: 'plain' } };

/** Is nothing chosen yet? */
export const isEmpty = ({ finish }: { readonly finish: string }): boolean => finish === NO_FINISH.id;

/** The surfaces of an option that nothing is chosen for, in decision order. */
export const emptySurfaces = ({ scheme }: Pick<Option, 'scheme'>): readonly SurfaceId[] =>
  SURFACES.filter((surface) => isEmpty(scheme[surface]));
