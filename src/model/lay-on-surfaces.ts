import type { SurfaceId } from '../engine/surface';
import type { Command } from './commands';
import { familyOf } from './families';
import { followerOf } from './lay-finish';
import type { Option } from './project';

/**
 * The commands that lay a finish on several surfaces. Laying on some of a family leaves the rest of it alone, also what
 * would usually follow: it was left out on purpose.
 */
export function layOnSurfaces(option: Option, surfaces: readonly SurfaceId[], finish: string): readonly Command[] {
  const leftOut = surfaces.flatMap((surface) => {
    const follower = followerOf(surface);
    return follower && familyOf(surface).includes(follower) && !surfaces.includes(follower) ? [follower] : [];
  });
  return [
    ...surfaces.map((surface): Command => ({ kind: 'lay-finish', option: option.id, surface, finish })),
    ...leftOut.map((surface): Command => {
      const { finish: its, laying } = option.scheme[surface];
      return { kind: 'lay-finish', option: option.id, surface, finish: its, laying };
    }),
  ];
}
