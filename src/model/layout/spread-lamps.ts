/** Centres of `count` lamps spread evenly over a rectangle: a grid of near-square cells, a short last row in its own cells. */
export function spreadLamps(
  count: number,
  free: { readonly x0: number; readonly x1: number; readonly y0: number; readonly y1: number },
): readonly (readonly [x: number, y: number])[] {
  const width = free.x1 - free.x0;
  const depth = free.y1 - free.y0;
  let rows = 1;
  const stretch = (n: number): number => Math.abs(Math.log(width / Math.ceil(count / n) / (depth / n)));
  for (let n = 2; n <= count; n++) if (stretch(n) < stretch(rows) - 1e-9) rows = n;
  const columns = Math.ceil(count / rows);
  const filledRows = Math.ceil(count / columns);
  const centers: (readonly [number, number])[] = [];
  for (let row = 0; row < filledRows; row++) {
    const inRow = Math.min(columns, count - row * columns);
    for (let i = 0; i < inRow; i++) {
      centers.push([free.x0 + (width * (i + 0.5)) / inRow, free.y0 + (depth * (row + 0.5)) / filledRows]);
    }
  }
  return centers;
}
