import type { DirectMap } from '../engine/light/direct-map';
import type { DirectLayer } from '../engine/light/direct-scene';
import { directTexels } from '../engine/light/direct-texels';
import { propDirect } from '../engine/light/prop-gather';
import type { RoomBasis } from '../kitchen/study/room-study';

/** Draws one layer of the direct light of a room step by step, and hands out copies for the picture. */
export interface DirectDesk {
  readonly map: DirectMap | null;
  readonly done: boolean;
  /** Coarse all over: before, part of it is missing. */
  readonly isWhole: boolean;
  /** One slice of work; says how far the present stage is. */
  step(): { readonly stage: 'lattice' | 'refine' | 'done'; readonly share: number };
  /** What the picture needs now: texels, and light on props. */
  light(): { readonly direct: Float32Array; readonly props: readonly Float32Array[] };
}

export function createDirectDesk({ room, transport }: RoomBasis, layer: DirectLayer): DirectDesk {
  const steps = directTexels(room.light, transport, { layer });
  const props = propDirect(room.light, transport, layer);
  let map: DirectMap | null = null;
  let done = false;
  let isWhole = false;
  return {
    get map() {
      return map;
    },
    get done() {
      return done;
    },
    get isWhole() {
      return isWhole;
    },
    step() {
      const next = steps.next();
      if (next.done) {
        map = next.value;
        done = true;
        isWhole = true;
        return { stage: 'done', share: 1 };
      }
      map = next.value.map;
      isWhole = next.value.stage !== 'lattice';
      return next.value;
    },
    light() {
      if (!map) throw new Error('no direct light has been drawn yet');
      return { direct: map.data.slice(), props };
    },
  };
}
