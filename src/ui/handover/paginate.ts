/** What a block measures, in any one unit. */
export type Measured =
  | { readonly kind: 'flow'; readonly height: number; readonly keeps: boolean }
  | { readonly kind: 'table'; readonly head: number; readonly rows: readonly number[] };

type MeasuredTable = Extract<Measured, { kind: 'table' }>;

/** A block on a page; of a table the rows `from` up to but not with `to`. */
export interface Placed {
  readonly block: number;
  readonly from: number;
  readonly to: number;
}

/** What a page has room for, in the unit of the blocks. */
export interface PageRoom {
  readonly height: number;
  /** Between two blocks. */
  readonly gap: number;
}

/**
 * Lays blocks out on pages in their order. What must not split does not: a block and a row stand on one page, a block that keeps has what
 * follows it, or its first row, below it. What is higher than a page alone has a page of its own, and is the only thing that may stick out.
 */
export function paginate(blocks: readonly Measured[], { height, gap }: PageRoom): readonly (readonly Placed[])[] {
  const pages: Placed[][] = [[]];
  let used = 0;
  const page = () => pages[pages.length - 1]!;
  const left = () => height - used - (page().length > 0 ? gap : 0);
  const turn = () => {
    if (page().length === 0) return;
    pages.push([]);
    used = 0;
  };
  const place = (placed: Placed, taken: number) => {
    used += taken + (page().length > 0 ? gap : 0);
    page().push(placed);
  };
  const placeRows = (block: number, table: MeasuredTable) => {
    for (let from = 0; from < table.rows.length; ) {
      if (table.head + table.rows[from]! > left()) turn();
      const [to, taken] = rowsWithin(table, from, left());
      place({ block, from, to }, taken);
      from = to;
    }
  };
  blocks.forEach((block, i) => {
    if (least(blocks, i, gap) > left()) turn();
    if (block.kind === 'flow') place({ block: i, from: 0, to: 1 }, block.height);
    else placeRows(i, block);
  });
  return pages;
}

/** The height that a block and what it keeps with it need at least. */
function least(blocks: readonly Measured[], i: number, gap: number): number {
  const block = blocks[i];
  if (!block) return 0;
  if (block.kind === 'table') return block.rows.length > 0 ? block.head + block.rows[0]! : 0;
  if (!block.keeps || i + 1 >= blocks.length) return block.height;
  return block.height + gap + least(blocks, i + 1, gap);
}

/** How far rows of a table go within a height, at least the first, and what they take with the head. */
function rowsWithin({ head, rows }: MeasuredTable, from: number, height: number): readonly [to: number, taken: number] {
  let taken = head + rows[from]!;
  let to = from + 1;
  while (to < rows.length && taken + rows[to]! <= height) taken += rows[to++]!;
  return [to, taken];
}
