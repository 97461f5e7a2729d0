// AssemblyScript, compiled by `npm run kernel` to kernel.data.ts. All positions are in bytes; vectors of four f32 throughout,
// so a patch takes `stride` bytes: its bands, filled up with zeros to a multiple of four.
import { rowTimes } from './rows.as';

export { shadeFan } from './shade.as';
export { traceFan } from './trace.as';

/** A step smaller than this share of the value itself is rounding (two units in the last place of f32). */
const ROUNDING: f32 = 2.384185791015625e-7;

/** Every row . B: `count` rows whose entries begin where `start` (u32 indices) says. */
export function gatherRows(
  count: usize,
  stride: usize,
  start: usize,
  column: usize,
  toValue: usize,
  b: usize,
  out: usize,
): void {
  for (let i: usize = 0; i < count; i++) {
    const from = column + 4 * <usize>load<u32>(start + 4 * i);
    const to = column + 4 * <usize>load<u32>(start + 4 * i + 4);
    rowTimes(from, to, toValue, b, stride, out + i * stride);
  }
}

/**
 * Sweeps B = rho (D + F B) in place until what is left to change is below `tolerance`; gives the number of sweeps.
 * `directStep`: bytes from one patch's direct light to the next, 4 where it is one number for all bands.
 * `weight`: per band, what makes a change relative. `received`: room for one patch.
 */
export function relax(
  count: usize,
  stride: usize,
  start: usize,
  column: usize,
  toValue: usize,
  surface: usize,
  rho: usize,
  direct: usize,
  directStep: usize,
  b: usize,
  weight: usize,
  received: usize,
  relaxation: f32,
  tolerance: f32,
  most: i32,
): i32 {
  const by = f32x4.splat(relaxation);
  const rounding = f32x4.splat(ROUNDING);
  let last: f32 = 0;
  for (let sweep = 0; sweep < most; sweep++) {
    let worst = f32x4.splat(0);
    for (let i: usize = 0; i < count; i++) {
      const s = load<i32>(surface + 4 * i);
      if (s < 0) continue;
      const from = column + 4 * <usize>load<u32>(start + 4 * i);
      const to = column + 4 * <usize>load<u32>(start + 4 * i + 4);
      rowTimes(from, to, toValue, b, stride, received);
      const reflects = rho + <usize>s * stride;
      const own = b + i * stride;
      const lit = direct + i * directStep;
      for (let at: usize = 0; at < stride; at += 16) {
        const falls = directStep === 4 ? v128.load32_splat(lit) : v128.load(lit + at);
        const next = f32x4.mul(v128.load(reflects + at), f32x4.add(falls, v128.load(received + at)));
        const before = v128.load(own + at);
        const step = f32x4.mul(by, f32x4.sub(next, before));
        const change = f32x4.sub(f32x4.abs(step), f32x4.mul(rounding, f32x4.abs(next)));
        worst = f32x4.max(worst, f32x4.mul(change, v128.load(weight + at)));
        v128.store(own + at, f32x4.add(before, step));
      }
    }
    const change = max(
      max(f32x4.extract_lane(worst, 0), f32x4.extract_lane(worst, 1)),
      max(f32x4.extract_lane(worst, 2), f32x4.extract_lane(worst, 3)),
    );
    const ratio: f32 = last > 0 ? min<f32>(0.99, max<f32>(0.2, change / last)) : 0.9;
    // Turned round, so that what is not a number ends here, too.
    if (!((change * ratio) / (1 - ratio) >= tolerance)) return sweep + 1;
    last = change;
  }
  return most;
}

/**
 * Colours of `count` samples: sum over `parts` pairs at `pairs` (u32 position of the light of the first sample, 24 bands
 * each; u32 position of 24 colours of four numbers) and over the bands. Stores three numbers a sample and one beyond the last.
 */
export function sumBands(pairs: usize, parts: usize, count: usize, out: usize): void {
  let done: usize = 0;
  for (; done + 4 <= count; done += 4) {
    let c0 = f32x4.splat(0);
    let c1 = f32x4.splat(0);
    let c2 = f32x4.splat(0);
    let c3 = f32x4.splat(0);
    for (let part: usize = 0; part < parts; part++) {
      let light = <usize>load<u32>(pairs + 8 * part) + done * 96;
      let color = <usize>load<u32>(pairs + 8 * part + 4);
      for (const end = light + 96; light < end; light += 4, color += 16) {
        const tint = v128.load(color);
        c0 = f32x4.add(c0, f32x4.mul(tint, v128.load32_splat(light)));
        c1 = f32x4.add(c1, f32x4.mul(tint, v128.load32_splat(light, 96)));
        c2 = f32x4.add(c2, f32x4.mul(tint, v128.load32_splat(light, 192)));
        c3 = f32x4.add(c3, f32x4.mul(tint, v128.load32_splat(light, 288)));
      }
    }
    const at = out + done * 12;
    v128.store(at, c0);
    v128.store(at, c1, 12);
    v128.store(at, c2, 24);
    v128.store(at, c3, 36);
  }
  for (; done < count; done++) {
    let sum = f32x4.splat(0);
    for (let part: usize = 0; part < parts; part++) {
      let light = <usize>load<u32>(pairs + 8 * part) + done * 96;
      let color = <usize>load<u32>(pairs + 8 * part + 4);
      for (const end = light + 96; light < end; light += 4, color += 16) {
        sum = f32x4.add(sum, f32x4.mul(v128.load(color), v128.load32_splat(light)));
      }
    }
    v128.store(out + done * 12, sum);
  }
}
