import type { Balance, BalanceVerdict, Warning } from './assessment';
import type { BalanceJudgment } from './balance';
import { SCHEME } from './balance';
import { isLooseFinish } from './cannot-tell';
import type { Holds } from './claims';
import { compareWords } from './compare-words';
import { EDGE, edgePhrase, type WeakEdge } from './edges';
import { firmnessOf } from './firmness';
import { AS_SAMPLE, oneDecimal, percent } from './number-words';
import { atMost } from './severity';
import { inDecisionOrder, joined, sentenceCase } from './surface-words';
import { fromViewpoint } from './viewpoint-words';

/** The warning of the whole scheme, and a note where the light tips it another way. */
export function balanceWarnings(judged: BalanceJudgment, holds: Holds): Warning[] {
  const { balance, carriers, otherwiseFrom } = judged;
  const warnings: Warning[] = [];
  const surfaces = (verdict: BalanceVerdict) =>
    inDecisionOrder(verdict === 'lacks-warm' ? carriers.cool : [...carriers.warm, ...carriers.leaning]);
  if (balance.verdict === 'lacks-warm' || balance.verdict === 'lacks-cool') {
    const open = firmnessOf(holds.balance) === 'open';
    const views =
      otherwiseFrom.length > 0
        ? ` ${sentenceCase(joined(otherwiseFrom.map(fromViewpoint)))} the shares give another answer.`
        : '';
    warnings.push({
      code: open ? 'cannot-tell' : balance.verdict,
      // What is not chosen yet may well bring it.
      severity: judged.isPartial ? 'note' : 'visible',
      surfaces: surfaces(balance.verdict),
      text: balance.sentence,
      reason: `Of what you see, about ${percent(balance.cool_share)} is cool and ${percent(balance.warm_share + balance.leaning_share)} warm or leaning warm.`,
      why: `${sharesWhy(balance)}${views}`,
      basis: 'sample',
      holds_in: holds.balance,
    });
  }
  const tipped = balance.installed.verdict;
  if (tipped !== balance.verdict && (tipped === 'lacks-warm' || tipped === 'lacks-cool')) {
    const way = tipped === 'lacks-warm' ? 'cool' : 'warm';
    const [warm, leaning, cool] = balance.installed.shares;
    const firmness = firmnessOf(holds.installedBalance);
    warnings.push({
      code: firmness === 'open' ? 'cannot-tell' : tipped,
      severity: 'note',
      surfaces: surfaces(tipped),
      text:
        firmness === 'open'
          ? `Cannot tell whether the kitchen tips to ${way} in this light. Hold the samples in this light, beside some by the window.`
          : `In this light the kitchen ${firmness === 'may' ? 'may tip' : 'tips'} to ${way}, though as samples the finishes do not.`,
      why:
        `As installed, the cast of the room taken off: warm ${percent(warm)}, leaning warm ${percent(leaning)}, cool ` +
        `${percent(cool)} of the overviews. The samples decide; limits are our judgment.`,
      basis: 'installed',
      holds_in: holds.installedBalance,
    });
  }
  return warnings;
}

const sharesWhy = (b: Balance): string =>
  `Of the overviews ${percent(b.warm_share)} is warm, ${percent(b.leaning_share)} leans warm, ${percent(b.cool_share)} is cool and ` +
  `${percent(b.neutral_share)} neutral, ${AS_SAMPLE}. ` +
  (b.verdict === 'lacks-warm'
    ? `Limits: warm under ${percent(SCHEME.warmMin)} with cool from ${percent(SCHEME.coolMany)}, our judgment.`
    : `Limits: cool under ${percent(SCHEME.coolMin)} with warm and leaning from ${percent(SCHEME.warmMany)}, our judgment.`);

/** Weak edges as warnings. */
export const edgeWarnings = (edges: readonly WeakEdge[], holds: Holds): Warning[] =>
  edges.map((edge) => {
    const holdsIn = holds.edge(edge.key);
    const drawn = firmnessOf(holdsIn, edge.finishes.some(isLooseFinish));
    // A soft edge is hard to see for nobody but some: whether it is one is not worth a question.
    const firmness = drawn === 'open' && !edge.isWeak ? 'may' : drawn;
    const open = firmness === 'open';
    return {
      code: open ? 'cannot-tell' : 'weak-edge',
      severity: open ? atMost('visible', edge.severity) : edge.severity,
      surfaces: inDecisionOrder([...edge.first, ...edge.second]),
      text: open
        ? `Cannot tell from here whether the edge between ${edgePhrase(edge)} is easy to see. ${compareWords('by the window', edge.first, edge.second)}`
        : edgeText(edge, firmness === 'may'),
      reason: `What tells an edge is that one side throws back clearly more light than the other; ${isNear(edge) ? 'these two are nearly as light or as dark as each other' : 'these two differ, but by less than that'}.${edge.forLowVision ? ' It weighs more here: someone with low vision uses this kitchen.' : ''}`,
      why:
        `Light reflectance ${oneDecimal(edge.lrv[0])} against ${oneDecimal(edge.lrv[1])}, ${oneDecimal(edge.difference)} points apart, ` +
        `area means, D65, 10 degree (BS 8300-2, written for buildings other than homes, wants ${EDGE.wanted}; ` +
        `${EDGE.least} may do in good light; applied here by our judgment); Bowman-Sapolinski contrast ` +
        `${Math.round(edge.contrast)}% (${EDGE.contrast} wanted, AS 1428.1). Matte, dry and in one light; an aid only.`,
      basis: 'sample',
      holds_in: holdsIn,
    };
  });

/** Points of LRV below which two sides are as light as each other to a glance. Our judgment. */
const NEAR = 5;

const isNear = ({ difference }: WeakEdge): boolean => difference < NEAR;

const isOneFinish = ({ finishes: [one, other] }: WeakEdge): boolean => one.id === other.id;

function edgeText(edge: WeakEdge, may: boolean): string {
  const points = edge.difference < 1 ? 'less than one point' : `${oneDecimal(edge.difference)} points`;
  const differ = isOneFinish(edge)
    ? 'both are the same finish.'
    : `they differ by ${edge.isWeak && edge.difference >= 1 ? 'only ' : ''}${points} of light reflectance.`;
  if (edge.isOverFloor) {
    return `Where one looks down on it, ${edgePhrase(edge)} ${may ? 'may be' : 'are'} hard to tell apart with low vision: ${differ}`;
  }
  const between = `The edge between ${edgePhrase(edge)}`;
  if (!edge.isWeak) return `${between} ${may ? 'may be' : 'is'} soft: ${differ}`;
  return edge.forLowVision
    ? `${between} ${may ? 'may be' : 'is'} hard to see with low vision: ${differ}`
    : `${between} may be hard to see: ${differ}`;
}
