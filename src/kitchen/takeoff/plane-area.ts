/** A rectangle of a plane, m. */
export interface PlaneField {
  readonly a: readonly [number, number];
  readonly z: readonly [number, number];
}

/** Lines nearer than this are one, m: bodies that touch leave no slit between them. */
const NEAR = 1e-5;

/** What `covers` leave of a rectangle: its area, m2, and the length of all its outlines, m. */
export function uncovered(
  whole: PlaneField,
  covers: readonly PlaneField[],
): { readonly area: number; readonly outline: number } {
  const as = lines(
    whole.a,
    covers.flatMap(({ a }) => a),
  );
  const zs = lines(
    whole.z,
    covers.flatMap(({ z }) => z),
  );
  const isFree = (i: number, k: number): boolean => {
    if (i < 0 || k < 0 || i + 1 >= as.length || k + 1 >= zs.length) return false;
    const [a, z] = [(as[i]! + as[i + 1]!) / 2, (zs[k]! + zs[k + 1]!) / 2];
    return !covers.some((cover) => a > cover.a[0] && a < cover.a[1] && z > cover.z[0] && z < cover.z[1]);
  };
  let [area, outline] = [0, 0];
  for (let i = 0; i + 1 < as.length; i++) {
    for (let k = 0; k + 1 < zs.length; k++) {
      if (!isFree(i, k)) continue;
      const [wide, high] = [as[i + 1]! - as[i]!, zs[k + 1]! - zs[k]!];
      area += wide * high;
      for (const side of [-1, 1]) outline += (isFree(i + side, k) ? 0 : high) + (isFree(i, k + side) ? 0 : wide);
    }
  }
  return { area, outline };
}

/** How much of a rectangle others cover, m2: what several cover counts once. */
export const covered = (whole: PlaneField, covers: readonly PlaneField[]): number =>
  areaOf(whole) - uncovered(whole, covers).area;

export const areaOf = ({ a, z }: PlaneField): number => Math.max(0, a[1] - a[0]) * Math.max(0, z[1] - z[0]);

function lines([from, to]: PlaneField['a'], others: readonly number[]): number[] {
  const kept = [from];
  for (const line of others.filter((at) => at > from && at < to).sort((p, q) => p - q)) {
    if (line - kept[kept.length - 1]! > NEAR) kept.push(line);
  }
  if (to - kept[kept.length - 1]! <= NEAR && kept.length > 1) kept.pop();
  return [...kept, to];
}
