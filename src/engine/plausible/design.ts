/** Members beside the nominal curve: runs of a two-level orthogonal design (Plackett and Burman 1946, 16 runs). */
export const DESIGN_RUNS = 16;

/**
 * Sign of factor `factor` (0-14) in run `run` (0-15): Sylvester's Hadamard matrix without its constant column. Every
 * factor is plus in half of the runs and no two factors go together, so 16 runs have the mean and the covariance of a
 * Gaussian process of up to 15 terms exactly, which 16 random draws have not.
 */
export function designSign(run: number, factor: number): 1 | -1 {
  let bits = run & (factor + 1);
  bits ^= bits >> 2;
  bits ^= bits >> 1;
  return bits & 1 ? -1 : 1;
}
