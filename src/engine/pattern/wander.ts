/** `count` values of a smooth seeded walk around 0 (about -1 to 1), with a fresh value every `steps` entries. */
export function wander(count: number, steps: number, random: () => number): Float32Array {
  const out = new Float32Array(count);
  let from = 2 * random() - 1;
  let to = 2 * random() - 1;
  let at = random() * steps;
  for (let i = 0; i < count; i++) {
    if (at >= steps) {
      at -= steps;
      from = to;
      to = 2 * random() - 1;
    }
    const f = at / steps;
    out[i] = from + (to - from) * f * f * (3 - 2 * f);
    at += 1;
  }
  return out;
}
