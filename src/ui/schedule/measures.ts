import { L_PER_GALLON, M_PER_FOOT } from '../../model/unit-words';
import { type Measure, PLAIN } from '../room/measures';
import { ASSUMED, SCHEDULE } from '../words/schedule';
import { unitNow } from '../words/spoken';

const FT2_PER_M2 = 1 / M_PER_FOOT ** 2;

/** A number that has another size in US units; shown to so many digits there. */
const turnedBy = (factor: number, digits: number, units: () => readonly [metric: string, us: string]): Measure => ({
  ...PLAIN,
  unit: () => units()[unitNow() === 'in' ? 1 : 0],
  text: (value) => (unitNow() === 'in' ? String(Number((value * factor).toFixed(digits))) : PLAIN.text(value)),
  read: (text) => {
    const value = PLAIN.read(text);
    return value === null || unitNow() !== 'in' ? value : value / factor;
  },
});

/** Areas in m2, shown in square feet. */
export const AREA = turnedBy(FT2_PER_M2, 1, () => [SCHEDULE.measures.m2[0], SCHEDULE.measures.ft2[0]]);

/** What paint covers in m2 a liter, shown in square feet a gallon. */
export const SPREAD = turnedBy(FT2_PER_M2 * L_PER_GALLON, 0, () => ASSUMED.spreads);
