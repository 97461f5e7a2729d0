import type { Balance } from '../../engine/judge/assessment';
import { BALANCE_WORDS, FINDINGS } from '../words/findings';
import { percent } from '../words/numbers';
import { BalanceBar } from './BalanceBar';

/** The bar under the balance sentence, and its numbers in words. */
export function BalanceCard({ balance }: { readonly balance: Balance }) {
  const [warm, leaning, cool, neutral] = balance.installed.shares;
  return (
    <div className="balance">
      <BalanceBar
        samples={[balance.warm_share, balance.leaning_share, balance.neutral_share, balance.cool_share]}
        installed={[warm, leaning, neutral, cool]}
      />
      <p className="small quiet">
        {FINDINGS.verdicts(BALANCE_WORDS[balance.verdict], BALANCE_WORDS[balance.installed.verdict])}{' '}
        {isWide(balance) && FINDINGS.ranges(balance.range.warm.map(percent), balance.range.cool.map(percent))}
      </p>
    </div>
  );
}

/** Worth saying only when the viewpoints disagree by more than this share. */
const WIDE = 0.05;

const isWide = ({ range }: Balance): boolean =>
  range.warm[1] - range.warm[0] > WIDE || range.cool[1] - range.cool[0] > WIDE;
