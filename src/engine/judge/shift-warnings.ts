import type { Warning } from './assessment';
import type { Holds } from './claims';
import { firmnessOf } from './firmness';
import type { JudgeInput } from './input';
import { byFinish } from './installed-faults';
import { type LightShift, lightShifts, SHIFT_MIN } from './light-shift';
import { AS_INSTALLED, oneDecimal, timesAcceptable } from './number-words';
import { PAIR } from './pair';
import { inDecisionOrder, sentenceCase, surfacesPhrase } from './surface-words';

/** Finishes that read as another color under the lamps of the setting, or of which that cannot be told. */
export const lightShiftWarnings = (input: JudgeInput, holds: Holds): Warning[] =>
  byFinish(lightShifts(input, holds.shift)).map((group) => {
    const worst = group.reduce((w, s) => (s.de00 > w.de00 ? s : w));
    const surfaces = inDecisionOrder(group.map((s) => s.surface));
    const who = surfacesPhrase(surfaces);
    const holdsIn = worst.holds?.shifted ?? null;
    const firmness = holdsIn === null && !worst.measured ? 'may' : firmnessOf(holdsIn);
    const read = firmness === 'may' ? 'may read' : who.plural ? 'read' : 'reads';
    return {
      code: firmness === 'open' ? 'cannot-tell' : 'light-shift',
      severity: 'note',
      surfaces,
      text:
        firmness === 'open'
          ? `Cannot tell whether ${who.text} ${openQuestion(worst, who.plural)}: ${reasonOf(worst)}. Hold a sample under that lamp, beside one by the window.`
          : `${sentenceCase(who.text)} ${read} ${toldShift(worst)}.`,
      reason: `The lamp changes this color, the tint of its place left aside, by ${timesAcceptable(worst.de00, PAIR.acceptable)}.`,
      why:
        `${oneDecimal(worst.de00)} CIEDE2000 from the sample${rangeOf(worst)}, the tint of the place taken off ` +
        `(limit ${SHIFT_MIN}, our judgment), ${AS_INSTALLED}. ` +
        (worst.measured ? 'The spectrum was measured.' : 'The spectrum is a guess: only the color was given.'),
      basis: 'installed',
      holds_in: holdsIn,
    };
  });

/** A color may move far within one name: light gray and light gray. */
const keepsName = ({ sampleName, installedName }: LightShift): boolean => sampleName === installedName;

const openQuestion = (shift: LightShift, plural: boolean): string =>
  keepsName(shift)
    ? `${plural ? 'keep their color' : 'keeps its color'} in this light`
    : `${plural ? 'keep' : 'keeps'} reading ${shift.sampleName} in this light or ${plural ? 'turn' : 'turns'} ${shift.installedName}`;

const toldShift = (shift: LightShift): string =>
  keepsName(shift)
    ? `${shift.lean} in this light than the sample, though both are ${shift.sampleName}`
    : `${shift.installedName} in this light; the sample is ${shift.sampleName}`;

const rangeOf = ({ holds, measured }: LightShift): string =>
  holds === null
    ? ''
    : `, ${oneDecimal(holds.p05)} to ${oneDecimal(holds.p95)} ` +
      (measured ? 'within its error' : 'over the curves that this color may have');

const reasonOf = ({ measured }: LightShift): string =>
  measured
    ? 'it stands too close to the limit'
    : 'the numbers of the sample do not say how this finish behaves under this lamp';
