/**
 * Area share of the joints in a field of rectangular pieces, 0-1: 1 - L W / ((L + J)(W + J)).
 * `piece_mm` is the piece without its joint; holds for stack bond and every running bond (the offset does not matter).
 */
export function jointShare(piece_mm: readonly [number, number], joint_mm: number): number {
  const [a, b] = piece_mm;
  return 1 - (a * b) / ((a + joint_mm) * (b + joint_mm));
}
