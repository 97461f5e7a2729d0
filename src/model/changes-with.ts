import type { SurfaceId } from '../engine/surface';
import { isEmpty } from './empty-surface';
import { familyOf } from './families';
import { laidAlike } from './lay-alike';
import { followerOf } from './lay-finish';
import type { Option } from './project';

/**
 * The surfaces that change when one lays something else on `surface`: those laid alike, the surface itself first, and what follows
 * them because it is made of the same material.
 */
export function changesWith(option: Option, surface: SurfaceId): readonly SurfaceId[] {
  const alike = laidAlike(option, surface);
  const followers = alike.flatMap((one) => {
    const follower = followerOf(one);
    // In a family, what is not laid alike was left out on purpose.
    if (!follower || familyOf(one).includes(follower)) return [];
    const its = option.scheme[follower];
    const isLoose = !isEmpty(its) && (its.state === 'open' || its.state === 'decided');
    return isLoose && its.finish === option.scheme[one].finish ? [follower] : [];
  });
  return [...new Set([surface, ...alike, ...followers])];
}
