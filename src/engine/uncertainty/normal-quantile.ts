// Rational approximation PPND7, right to 7 digits (Wichura 1988, algorithm AS 241, Applied Statistics 37, 477).
const CENTER = {
  p: [3.3871327179, 50.434271938, 159.29113202, 59.10937472],
  q: [1, 17.895169469, 78.757757664, 67.1875636],
};
const SIDE = { p: [1.4234372777, 2.75681539, 1.3067284816, 0.17023821103], q: [1, 0.7370016425, 0.12021132975] };
const TAIL = { p: [6.657905115, 3.081226386, 0.42868294337, 0.017337203997], q: [1, 0.24197894225, 0.012258202635] };

/** The number below which a standard normal one lies with this probability, which is inside 0-1. */
export function normalQuantile(probability: number): number {
  const fromMiddle = probability - 0.5;
  if (Math.abs(fromMiddle) <= 0.425) return fromMiddle * ratio(CENTER, 0.180625 - fromMiddle * fromMiddle);
  const r = Math.sqrt(-Math.log(Math.min(probability, 1 - probability)));
  return Math.sign(fromMiddle) * (r <= 5 ? ratio(SIDE, r - 1.6) : ratio(TAIL, r - 5));
}

const ratio = ({ p, q }: { p: readonly number[]; q: readonly number[] }, x: number): number =>
  polynomial(p, x) / polynomial(q, x);

const polynomial = (coefficients: readonly number[], x: number): number =>
  coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);
