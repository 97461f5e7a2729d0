import { differenceCiede2000 } from '../../engine/color/difference';
import { labD65FromHex } from '../../engine/color/display';
import type { Lab } from '../../engine/color/types';
import type { GivenColor } from '../../engine/finish/given-color';
import { curveOfGiven, type GivenCurve } from '../../engine/finish/given-curve';
import { givenWords } from '../../engine/finish/given-words';
import type { FinishClass } from '../../engine/finish/types';
import type { Problem } from '../../engine/result';
import { sheetProblem } from './sheet-problem';

/** CIEDE2000 by which notations of one color may differ: numbers by rounding, screen colors and Munsell by far more. Our judgment. */
const TOLERANCE_DE00 = { numbers: 1.5, others: 4 };

/** What the other notations of a row say differently from the one that was taken. */
export function otherNotations(
  { labD65 }: GivenCurve,
  others: readonly GivenColor[],
  finishClass: FinishClass,
): readonly Problem[] {
  return others.flatMap((other) => {
    const lab = labOf(other, finishClass);
    if (!lab) {
      return [
        sheetProblem('notations-differ', `No surface can have ${givenWords(other)}, which the row gives, too.`, REMEDY),
      ];
    }
    const isRough = other.kind === 'hex' || other.kind === 'munsell';
    const away = differenceCiede2000(labD65, lab);
    if (away <= (isRough ? TOLERANCE_DE00.others : TOLERANCE_DE00.numbers)) return [];
    const words = `The row also gives ${givenWords(other)}, which is ${away.toFixed(1)} CIEDE2000 units away from the color taken.`;
    return [sheetProblem('notations-differ', words, REMEDY)];
  });
}

const REMEDY = 'Check which of the two belongs to the sample.';

function labOf(color: GivenColor, finishClass: FinishClass): Lab<'D65-2'> | null {
  if (color.kind === 'hex') {
    const lab = labD65FromHex(color.hex);
    return lab.ok ? lab.value : null;
  }
  const curve = curveOfGiven(color, finishClass);
  return curve.ok ? curve.value.labD65 : null;
}
