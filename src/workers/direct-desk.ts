import type { DirectMap } from '../engine/light/direct-map';
import { directTexels } from '../engine/light/direct-texels';
import { propDirect } from '../engine/light/prop-gather';
import type { RoomLight } from '../kitchen/look';
import type { RoomBasis } from '../kitchen/study/room-study';

/** Draws the direct light of a room step by step, and hands out copies for the picture. */
export interface DirectDesk {
  readonly map: DirectMap | null;
  readonly done: boolean;
  /** One slice of work; says how far the present stage is. */
  step(): { readonly stage: 'lattice' | 'refine' | 'done'; readonly share: number };
  /** What the picture needs now. */
  roomLight(): RoomLight;
}

export function createDirectDesk({ room, transport, nodes }: RoomBasis): DirectDesk {
  const steps = directTexels(room.light, transport);
  const props = propDirect(room.light, transport);
  let map: DirectMap | null = null;
  let done = false;
  let revision = 0;
  return {
    get map() {
      return map;
    },
    get done() {
      return done;
    },
    step() {
      const next = steps.next();
      if (next.done) {
        map = next.value;
        done = true;
        return { stage: 'done', share: 1 };
      }
      map = next.value.map;
      return next.value;
    },
    roomLight() {
      if (!map) throw new Error('no direct light has been drawn yet');
      return {
        directAtlas: map.atlas,
        direct: map.data.slice(),
        nodeAtlas: nodes.atlas,
        propDirect: props,
        revision: ++revision,
        isFinal: done,
      };
    },
  };
}
