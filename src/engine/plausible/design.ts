/** Members beside the nominal curve: runs of a two-level orthogonal design (Plackett and Burman 1946, Biometrika 33). */
export const DESIGN_RUNS = 16;

/**
 * Sign of factor `factor` (0-14) in run `run` (0-15): Sylvester's Hadamard matrix without its constant column. Every
 * factor is plus in half of the runs and no two factors go together, so the 16 runs have exactly the mean and the covariance
 * of the Gaussian process that they stand for; the variance of 16 random draws would miss it by a third. 16 is the smallest such
 * number above the 15 factors in use.
 */
export function designSign(run: number, factor: number): 1 | -1 {
  let bits = run & (factor + 1);
  bits ^= bits >> 2;
  bits ^= bits >> 1;
  return bits & 1 ? -1 : 1;
}
