import { firmnessOf } from '../firmness';
import { inDecisionOrder } from '../surface-words';
import { type DrawOptions, drawnSchemes, shareWhere } from './draw-schemes';
import { followedBy } from './follows';
import { placesOf } from './places';
import { KINDS, readClaim, ruleOf } from './rules';
import { type RelationScheme, seenScheme } from './seen-scheme';
import type { Claim, LeftOut, LookRelations, Relation } from './types';

/**
 * The relations of a look. Each is tried under the plausible errors of the look's colors: what flips in more than a seventh of
 * them is said with "may", in more than a quarter left out. So of a picture, whose colors are known to about plus or minus
 * ten, only what survives that remains. The order of the surfaces does not matter.
 */
export function relationsOf(...given: Parameters<typeof relationsInSteps>): LookRelations {
  const steps = relationsInSteps(...given);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** The same in slices, a relation each. */
export function* relationsInSteps(look: RelationScheme, options?: DrawOptions): Generator<undefined, LookRelations> {
  const scheme = seenScheme(look);
  const places = placesOf(scheme);
  const drawn = drawnSchemes(scheme, options);
  const relations: Omit<Relation, 'follows_from'>[] = [];
  const leftOut: LeftOut[] = [];
  for (const kind of KINDS) {
    const rule = ruleOf(kind);
    for (const { claim: proposed, numbers } of rule.propose(scheme, places)) {
      const told = (claim: Claim) => {
        const holds_in = shareWhere(drawn, (one) => readClaim(claim, one, numbers)?.holds ?? false);
        return { claim, holds_in, firmness: firmnessOf(holds_in) };
      };
      const first = told(surviving(proposed, drawn) ?? proposed);
      const weaker = first.firmness === 'open' ? rule.weaker?.(first.claim) : null;
      const second = weaker ? told(weaker) : first;
      const { claim, holds_in, firmness } = second.firmness === 'open' ? first : second;
      const surfaces = surfacesOf(claim);
      const id = idOf(claim);
      if (firmness === 'open') leftOut.push({ id, kind, surfaces, text: rule.open(claim), holds_in });
      else {
        const text = rule.say(claim, numbers, firmness === 'may');
        relations.push({ id, kind, surfaces, text, wording: firmness, holds_in, numbers, claim });
      }
      yield;
    }
  }
  const following = relations.map((one) => ({ ...one, follows_from: followedBy(one.claim, relations) }));
  return { relations: following, left_out: leftOut };
}

/** Of an order the pairs that are each firm: one pair too close to call does not spoil the rest. Null: nothing to take away. */
function surviving(claim: Claim, drawn: ReturnType<typeof drawnSchemes>): Claim | null {
  if (claim.kind !== 'order') return null;
  const firm = claim.pairs.filter((pair) => {
    const share = shareWhere(drawn, (one) => readClaim({ kind: 'order', pairs: [pair] }, one, {})?.holds ?? false);
    return share >= EACH_PAIR;
  });
  return firm.length > 0 ? { kind: 'order', pairs: firm } : null;
}

/** A pair of an order has to be this sure, so that all together may be said. Our judgment. */
const EACH_PAIR = 0.95;

/** Every surface a claim speaks of, in decision order. */
function surfacesOf(claim: Claim): Relation['surfaces'] {
  switch (claim.kind) {
    case 'order':
      return inDecisionOrder(claim.pairs.flat(2));
    case 'step':
      return inDecisionOrder([...claim.lighter, ...claim.darker]);
    case 'undertone':
      return claim.of;
    case 'pattern':
      return claim.lead ?? [];
    case 'balance':
      return inDecisionOrder([...claim.warm, ...claim.cool]);
    default:
      return inDecisionOrder([...claim.one, ...claim.other]);
  }
}

/** "step:floor+base-fronts": kind and the first surface of each place. */
function idOf(claim: Claim): string {
  switch (claim.kind) {
    case 'balance':
    case 'order':
    case 'pattern':
      return claim.kind;
    case 'undertone':
      return `${claim.kind}:${claim.of[0]}`;
    case 'step':
      return `${claim.kind}:${claim.lighter[0]}+${claim.darker[0]}`;
    default:
      return `${claim.kind}:${claim.one[0]}+${claim.other[0]}`;
  }
}
