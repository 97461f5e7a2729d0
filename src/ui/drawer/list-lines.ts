import { type RefObject, useLayoutEffect, useState } from 'react';
import type { FinishSection } from './shortlist-order';

/** A line of a long list: the title of a section, or some finishes beside each other. */
export interface Line {
  readonly section: FinishSection;
  /** The first of its finishes, counted through all sections; null: a title. */
  readonly from: number | null;
  readonly count: number;
}

const known = new WeakMap<readonly FinishSection[], Map<number, readonly Line[]>>();

/** The lines of a list, put together once. */
export function linesOf(sections: readonly FinishSection[], columns: number): readonly Line[] {
  const byColumns = known.get(sections) ?? new Map<number, readonly Line[]>();
  known.set(sections, byColumns);
  const before = byColumns.get(columns);
  if (before) return before;
  const lines: Line[] = [];
  let from = 0;
  for (const section of sections) {
    if (section.title !== null) lines.push({ section, from: null, count: 0 });
    const end = from + section.finishes.length;
    for (; from < end; from += columns) lines.push({ section, from, count: Math.min(columns, end - from) });
    from = end;
  }
  byColumns.set(columns, lines);
  return lines;
}

/** Width from which a column has room, in the root's font size, and what is between two; as the styles have it. */
const COLUMN_REM = 23;
const GAP_PX = 8;

/** How many finishes without reasons stand beside each other; 1 where they have reasons. */
export function useColumns(box: RefObject<HTMLElement | null>, isWanted: boolean): number {
  const [columns, setColumns] = useState(1);
  useLayoutEffect(() => {
    const element = box.current;
    if (!element || !isWanted) return setColumns(1);
    const measure = () => {
      const least = COLUMN_REM * Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
      const { paddingLeft, paddingRight } = getComputedStyle(element);
      const width = element.clientWidth - Number.parseFloat(paddingLeft) - Number.parseFloat(paddingRight);
      setColumns(Math.max(1, Math.floor((width + GAP_PX) / (least + GAP_PX))));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [box, isWanted]);
  return columns;
}
