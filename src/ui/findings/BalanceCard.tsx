import type { Balance } from '../../engine/judge/assessment';
import { BALANCE_WORDS, FINDINGS } from '../words/findings';
import { seenShare } from '../words/numbers';
import { BalanceBar } from './BalanceBar';

interface BalanceCardProps {
  readonly balance: Balance;
  /** No light: only the samples can be weighed. */
  readonly isDark: boolean;
}

/** The bar under the balance sentence, and its numbers in words. */
export function BalanceCard({ balance, isDark }: BalanceCardProps) {
  const [warm, leaning, cool, neutral] = balance.installed.shares;
  return (
    <div className="balance">
      <BalanceBar
        samples={[balance.warm_share, balance.leaning_share, balance.neutral_share, balance.cool_share]}
        installed={isDark ? null : [warm, leaning, neutral, cool]}
      />
      <p className="small quiet">
        {isDark
          ? FINDINGS.verdict(BALANCE_WORDS[balance.verdict])
          : FINDINGS.verdicts(BALANCE_WORDS[balance.verdict], BALANCE_WORDS[balance.installed.verdict])}{' '}
        {!isDark &&
          isWide(balance) &&
          FINDINGS.ranges(balance.range.warm.map(seenShare), balance.range.cool.map(seenShare))}{' '}
        {balance.otherwise_from.length > 0 && FINDINGS.otherwiseFrom(balance.otherwise_from)}
      </p>
    </div>
  );
}

/** Worth saying only when the viewpoints disagree by more than this share, or on the verdict. */
const WIDE = 0.05;

const isWide = ({ range, otherwise_from }: Balance): boolean =>
  otherwise_from.length > 0 || range.warm[1] - range.warm[0] > WIDE || range.cool[1] - range.cool[0] > WIDE;
