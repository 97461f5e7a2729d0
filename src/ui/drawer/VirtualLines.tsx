import { defaultRangeExtractor, useVirtualizer, type VirtualItem } from '@tanstack/react-virtual';
import { Fragment, type ReactNode, useEffect, useLayoutEffect, useRef, useState } from 'react';
import type { Line } from './list-lines';
import type { FinishSection } from './shortlist-order';

interface VirtualLinesProps {
  readonly lines: readonly Line[];
  /** The finish that has the focus, or will get it: it is always in the page. */
  readonly active: number;
  readonly render: (line: Line) => ReactNode;
  /** What goes around the lines of a section. */
  readonly section: (section: FinishSection, children: ReactNode) => ReactNode;
  /** Told after each drawing which finishes are in the page, by their places. */
  readonly onSeen: (places: readonly number[]) => void;
}

/** Heights before a line is measured, px: a title, and an option of two rows of words. */
const TITLE_PX = 28;
const OPTION_PX = 56;
/** Taken for what is in sight until that is measured: what gets the focus has to be there at once. */
const AT_FIRST = { width: 800, height: 400 };
/** Lines kept ready above and below. */
const OVERSCAN = 6;

/** The lines of a long list that are in sight; the title of the section one is in stays at the top. */
export function VirtualLines({ lines, active, render, section, onSeen }: VirtualLinesProps) {
  const place = useRef<HTMLDivElement>(null);
  const scroller = useRef<HTMLElement | null>(null);
  const [scrollMargin, setScrollMargin] = useState(0);
  const activeLine = lineOf(lines, active);
  const title = useRef(-1);
  const virtual = useVirtualizer<HTMLElement, HTMLDivElement>({
    count: lines.length,
    getScrollElement: () => {
      scroller.current ??= scrollerOf(place.current);
      return scroller.current;
    },
    estimateSize: (index) => (lines[index]!.from === null ? TITLE_PX : OPTION_PX),
    getItemKey: (index) => keyOf(lines[index]!),
    overscan: OVERSCAN,
    scrollMargin,
    initialRect: AT_FIRST,
    rangeExtractor: (range) => {
      title.current = titleAt(lines, range.startIndex);
      const more = [title.current, activeLine].filter((index) => index >= 0);
      return [...new Set([...more, ...defaultRangeExtractor(range)])].sort((x, y) => x - y);
    },
  });
  // What stands above the list may take more lines or fewer.
  useLayoutEffect(() => {
    const [list, around] = [place.current, scroller.current];
    if (!list || !around) return;
    const top = list.getBoundingClientRect().top - around.getBoundingClientRect().top + around.scrollTop;
    if (Math.abs(top - scrollMargin) > 1) setScrollMargin(top);
  });
  const items = virtual.getVirtualItems();
  useEffect(() => {
    const seen = items.flatMap(({ index }) => {
      const { from, count } = lines[index]!;
      return from === null ? [] : Array.from({ length: count }, (_, i) => from + i);
    });
    onSeen(seen);
  });
  const drawn = (item: VirtualItem) => {
    const line = lines[item.index]!;
    const isTop = item.index === title.current;
    return (
      <div
        key={item.key}
        ref={virtual.measureElement}
        role="presentation"
        className={`finish-line ${isTop ? 'finish-line-top' : ''}`}
        data-index={item.index}
        style={isTop ? {} : { transform: `translateY(${item.start - scrollMargin}px)` }}
      >
        {render(line)}
      </div>
    );
  };
  const sections = [...new Set(items.map(({ index }) => lines[index]!.section))];
  return (
    <div ref={place} role="presentation" className="finish-lines" style={{ height: virtual.getTotalSize() }}>
      {sections.map((one) => (
        <Fragment key={one.id}>
          {section(one, items.filter(({ index }) => lines[index]!.section === one).map(drawn))}
        </Fragment>
      ))}
    </div>
  );
}

const keyOf = ({ section, from }: Line): string => (from === null ? `title ${section.id}` : `${section.id} ${from}`);

/** The line a finish stands in; -1 where there is none. */
function lineOf(lines: readonly Line[], finish: number): number {
  return lines.findIndex(({ from, count }) => from !== null && finish >= from && finish < from + count);
}

/** The title over a line; -1 where the list has no titles. */
function titleAt(lines: readonly Line[], index: number): number {
  const section = lines[index]?.section;
  for (let i = index; i >= 0 && lines[i]!.section === section; i--) if (lines[i]!.from === null) return i;
  return -1;
}

/** What scrolls around an element. */
function scrollerOf(element: HTMLElement | null): HTMLElement | null {
  for (let at = element?.parentElement ?? null; at; at = at.parentElement) {
    if (/auto|scroll/.test(getComputedStyle(at).overflowY)) return at;
  }
  return null;
}
