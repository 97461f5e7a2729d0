import type { Balance, Warning, WarningCode } from '../assessment';
import { SCHEME } from '../balance';
import { firmnessOf } from '../firmness';
import { isTold } from './compare-findings';

/** What no finish takes away: how much light there is, and what only samples can tell. */
const BEYOND_FINISHES: readonly WarningCode[] = ['low-light', 'cannot-tell'];

/** Warnings that another finish may clear. */
export const isRepairable = (warning: Warning): boolean => isTold(warning) && !BEYOND_FINISHES.includes(warning.code);

/**
 * Whether a balance does without a lack. Of warmth only with something warm in it: to cool down the rest until the whole reads muted
 * would follow the letter (our judgment).
 */
export const answersLack = (code: WarningCode, { warm_share }: Balance): boolean =>
  code !== 'lacks-warm' || warm_share >= SCHEME.warmMin;

/** Whether a balance stands under plausible errors of the colors: a repair that only may hold is not offered. */
export const isBalanceFirm = ({ holds_in }: Balance): boolean => firmnessOf(holds_in) === 'firm';
