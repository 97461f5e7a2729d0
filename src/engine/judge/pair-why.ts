import { oneDecimal, timesAcceptable } from './number-words';
import { PAIR, type PairJudgment } from './pair';
import { WHITES } from './whites';

const WHITENESS_LIMIT = `limit ${WHITES.whitenessLimit}, published for tooth-colored ceramics, not tested on counters`;

/** The reason for a pair verdict, with its numbers, their limits and the conditions they hold under. */
export function pairWhy(judgment: PairJudgment, conditions: string): string {
  const n = judgment.numbers;
  const number = (name: string): string => oneDecimal(n[name] ?? 0);
  switch (judgment.verdict) {
    case 'looks-dirty':
      return (
        `The lighter white is ${number('d_wid')} cleaner on the whiteness index WID (${WHITENESS_LIMIT}) ` +
        `and ${number('d_l')} L* lighter; beside it the other reads L* ${number('l_rel')} (grave below ` +
        `${WHITES.graveAnchoredLightness}, our judgment), ${conditions}.`
      );
    case 'too-yellow':
      return (
        `Its whiteness index WID is ${number('d_wid')} lower (${WHITENESS_LIMIT}) and its b* ` +
        `${number('d_b')} higher; the chroma part of the difference is ${number('chroma_part')} CIEDE2000 (grave from ` +
        `${WHITES.graveChromaPart}, our judgment), ${conditions}.`
      );
    case 'pulls-apart':
      return (
        `Both have a named undertone (strength ${number('strength_weaker')} and ${number('strength_stronger')}), and their hues stand ` +
        `${Math.round(n['hue_apart_deg'] ?? 0)} degrees apart (limit ${PAIR.opposedHueMin}, our judgment), ${conditions}.`
      );
    case 'agree':
      return (
        `In the whiteness index WID they differ by ${number('d_wid')} (${WHITENESS_LIMIT}); the difference is ` +
        `${number('de00')} CIEDE2000, ${conditions}.`
      );
    case 'relates':
      return (
        `Their hues stand ${Math.round(n['hue_apart_deg'] ?? 0)} degrees apart (limit ${PAIR.echoHueMax}, our judgment); the chroma ` +
        `part of the difference is ${number('chroma_part')} CIEDE2000 (limit ${PAIR.echoChromaPartMax}, our judgment), ${conditions}.`
      );
    case 'same':
    case 'match':
      return (
        `The difference is ${number('de00')} CIEDE2000 (half of people see ${PAIR.perceptible}, half accept ${PAIR.acceptable}; ` +
        `Paravina et al. 2015), ${conditions}.`
      );
    case 'none':
      return (
        `The difference is ${number('de00')} CIEDE2000, ${number('lightness_part')} of it lightness (${number('d_l')} L*) and ` +
        `${number('chroma_part')} chroma${undertones(n)}, ${conditions}.`
      );
    default:
      return `The difference is ${number('de00')} CIEDE2000, ${conditions}.`;
  }
}

/** The numbers of the undertone rules, as far as they were looked at. */
const undertones = (n: PairJudgment['numbers']): string =>
  'hue_apart_deg' in n
    ? `; undertone strength ${oneDecimal(n['strength_weaker']!)} and ${oneDecimal(n['strength_stronger']!)}, hues ` +
      `${Math.round(n['hue_apart_deg']!)} degrees apart`
    : '';

/** The same for people who ask why, without a number they would have to look up. */
export function pairReason({ verdict, numbers }: PairJudgment): string {
  switch (verdict) {
    case 'looks-dirty':
      return (
        'The cleaner white takes over as white, and the other looks gray beside it: in whiteness they differ by ' +
        `${timesAcceptable(numbers['d_wid'] ?? 0, WHITES.whitenessLimit)}.`
      );
    case 'too-yellow':
      return `The whiter one shows the yellow in the other: in whiteness they differ by ${timesAcceptable(numbers['d_wid'] ?? 0, WHITES.whitenessLimit)}.`;
    case 'pulls-apart':
      return 'Both have an undertone one can name, and the two point in directions far apart.';
    case 'agree':
      return 'Both are whites, and in whiteness they differ by no more than people let pass.';
    case 'relates':
      return 'Both have an undertone one can name, and the two are near each other in hue and strength.';
    case 'none':
      return silenceReason(numbers);
    default:
      return 'They differ no more than people let pass.';
  }
}

/** Why there is nothing to say of two colors. */
function silenceReason(n: PairJudgment['numbers']): string {
  if ('d_wid' in n)
    return 'Both are whites and differ, but not so that one would look dirty or yellow beside the other.';
  if (!('hue_apart_deg' in n)) {
    return 'Their hues stand neither so close that they echo each other nor so far apart that they pull.';
  }
  if (n['strength_weaker']! < PAIR.namedStrength)
    return 'One of the two is so near to neutral that it pulls at nothing.';
  return 'One of the two is a color of its own: that is a contrast people mean.';
}
