/** Row . B for eight bands from k0 on, into `out[first ..]`: eight running sums stay in registers. */
export function gatherEight(
  from: number,
  to: number,
  column: Uint32Array,
  value: Float32Array,
  b: Float32Array | Float64Array,
  bands: number,
  k0: number,
  out: Float64Array,
  first: number,
): void {
  let s0 = 0;
  let s1 = 0;
  let s2 = 0;
  let s3 = 0;
  let s4 = 0;
  let s5 = 0;
  let s6 = 0;
  let s7 = 0;
  for (let e = from; e < to; e++) {
    const f = value[e]!;
    const at = column[e]! * bands + k0;
    s0 += f * b[at]!;
    s1 += f * b[at + 1]!;
    s2 += f * b[at + 2]!;
    s3 += f * b[at + 3]!;
    s4 += f * b[at + 4]!;
    s5 += f * b[at + 5]!;
    s6 += f * b[at + 6]!;
    s7 += f * b[at + 7]!;
  }
  out[first] = s0;
  out[first + 1] = s1;
  out[first + 2] = s2;
  out[first + 3] = s3;
  out[first + 4] = s4;
  out[first + 5] = s5;
  out[first + 6] = s6;
  out[first + 7] = s7;
}
