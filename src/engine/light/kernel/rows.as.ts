// AssemblyScript. Rows lie in memory as a run of columns (u32) and, `toValue` bytes further on, their weights (f32).

/** Entries summed on their own before they join the row's sum: keeps the rounding of long rows near that of short ones. */
const RUN: usize = 16 * 4;

/** Row . B for 24 bands (six vectors) of patches `stride` bytes apart, stored at `out`. */
function rowTimesSix(from: usize, to: usize, toValue: usize, b: usize, stride: usize, out: usize): void {
  let s0 = f32x4.splat(0);
  let s1 = f32x4.splat(0);
  let s2 = f32x4.splat(0);
  let s3 = f32x4.splat(0);
  let s4 = f32x4.splat(0);
  let s5 = f32x4.splat(0);
  let e = from;
  while (e < to) {
    const stop = min(e + RUN, to);
    let a0 = f32x4.splat(0);
    let a1 = f32x4.splat(0);
    let a2 = f32x4.splat(0);
    let a3 = f32x4.splat(0);
    let a4 = f32x4.splat(0);
    let a5 = f32x4.splat(0);
    for (; e < stop; e += 4) {
      const at = b + <usize>load<u32>(e) * stride;
      const weight = v128.load32_splat(e + toValue);
      a0 = f32x4.add(a0, f32x4.mul(weight, v128.load(at)));
      a1 = f32x4.add(a1, f32x4.mul(weight, v128.load(at, 16)));
      a2 = f32x4.add(a2, f32x4.mul(weight, v128.load(at, 32)));
      a3 = f32x4.add(a3, f32x4.mul(weight, v128.load(at, 48)));
      a4 = f32x4.add(a4, f32x4.mul(weight, v128.load(at, 64)));
      a5 = f32x4.add(a5, f32x4.mul(weight, v128.load(at, 80)));
    }
    s0 = f32x4.add(s0, a0);
    s1 = f32x4.add(s1, a1);
    s2 = f32x4.add(s2, a2);
    s3 = f32x4.add(s3, a3);
    s4 = f32x4.add(s4, a4);
    s5 = f32x4.add(s5, a5);
  }
  v128.store(out, s0);
  v128.store(out, s1, 16);
  v128.store(out, s2, 32);
  v128.store(out, s3, 48);
  v128.store(out, s4, 64);
  v128.store(out, s5, 80);
}

/** The same for four bands. */
function rowTimesOne(from: usize, to: usize, toValue: usize, b: usize, stride: usize, out: usize): void {
  let sum = f32x4.splat(0);
  let e = from;
  while (e < to) {
    const stop = min(e + RUN, to);
    let run = f32x4.splat(0);
    for (; e < stop; e += 4) {
      run = f32x4.add(run, f32x4.mul(v128.load32_splat(e + toValue), v128.load(b + <usize>load<u32>(e) * stride)));
    }
    sum = f32x4.add(sum, run);
  }
  v128.store(out, sum);
}

/** Row . B for any number of vectors. */
export function rowTimes(from: usize, to: usize, toValue: usize, b: usize, stride: usize, out: usize): void {
  let done: usize = 0;
  for (; done + 96 <= stride; done += 96) rowTimesSix(from, to, toValue, b + done, stride, out + done);
  for (; done < stride; done += 16) rowTimesOne(from, to, toValue, b + done, stride, out + done);
}
