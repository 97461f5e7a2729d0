/** Nodes on -1..1 and weights of an integration rule. */
export interface QuadratureRule {
  readonly nodes: Float64Array;
  readonly weights: Float64Array;
}

/** Gauss-Legendre rule of `count` nodes, exact for polynomials up to degree 2 count - 1. Newton on the recurrence of P_n. */
export function gaussLegendre(count: number): QuadratureRule {
  const nodes = new Float64Array(count);
  const weights = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (count + 0.5));
    let slope = 1;
    for (let round = 0; round < 8; round++) {
      let before = 1;
      let value = x;
      for (let n = 2; n <= count; n++) [before, value] = [value, ((2 * n - 1) * x * value - (n - 1) * before) / n];
      slope = (count * (x * value - before)) / (x * x - 1);
      x -= value / slope;
    }
    nodes[i] = x;
    weights[i] = 2 / ((1 - x * x) * slope * slope);
  }
  return { nodes, weights };
}
