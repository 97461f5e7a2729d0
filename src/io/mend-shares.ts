import type { Problem } from '../engine/result';
import { SHARE_EXACT, SHARE_TOLERANCE, shareSum } from '../model/check-finish';
import type { Finish } from '../model/project';

/** The finish with area shares that sum to 1 where they miss it by rounding; told in `notices`. More is left to the check of finishes. */
export function mendShares(finish: Finish, path: string, notices: Problem[]): Finish {
  const sum = shareSum(finish);
  const off = Math.abs(sum - 1);
  if (off <= SHARE_EXACT || off > SHARE_TOLERANCE) return finish;
  notices.push({
    code: 'shares-scaled',
    text: `${path}.components: the area shares of ${finish.id} sum to ${Number(sum.toFixed(4))}; they were scaled to 1.`,
    at: { path: `${path}.components` },
    remedy: 'Nothing to do, unless a share is mistyped.',
  });
  return { ...finish, components: finish.components.map((one) => ({ ...one, share: one.share / sum })) };
}
