import { defaultRangeExtractor, useVirtualizer } from '@tanstack/react-virtual';
import { type KeyboardEvent, useCallback, useEffect, useRef } from 'react';
import type { Finish } from '../../model/project';
import { knownFacts } from '../drawer/known-facts';
import { useFactsInSight } from '../drawer/use-facts';
import { RANGE } from '../words/libraries';
import { chooseTo, toggleAll, toggleRow } from './choose-rows';
import type { PaintOf } from './library-props';
import { COLUMNS, RangeHead } from './RangeHead';
import { RangeRow } from './RangeRow';
import type { RangeLook } from './range-look';
import './range-table.css';

interface RangeTableProps {
  readonly shown: readonly Finish[];
  readonly paintOf: PaintOf;
  readonly look: RangeLook;
  readonly onLook: (change: (before: RangeLook) => RangeLook) => void;
  readonly onEdit: (id: string) => void;
}

/** Height of a row before it is measured, px; rows beyond what is seen that are made anyway; those a page key goes. */
const ROW_PX = 54;
const OVERSCAN = 6;
const PAGE = 10;

/** Finishes as rows, of which only those in sight are made. One row has the focus; it stays made wherever one scrolls. */
export function RangeTable({ shown, paintOf, look, onLook, onEdit }: RangeTableProps) {
  const box = useRef<HTMLDivElement>(null);
  const at = Math.max(0, look.active === null ? 0 : shown.findIndex(({ id }) => id === look.active));
  const rows = useVirtualizer({
    count: shown.length,
    getScrollElement: () => box.current,
    estimateSize: () => ROW_PX,
    getItemKey: (i) => shown[i]!.id,
    overscan: OVERSCAN,
    rangeExtractor: (range) => {
      const seen = defaultRangeExtractor(range);
      if (at < seen[0]!) return [at, ...seen];
      return at > seen.at(-1)! && at < shown.length ? [...seen, at] : seen;
    },
  });
  const items = rows.getVirtualItems();
  useFactsInSight(items.map(({ index }) => shown[index]!));
  const moved = useRef(look.takesFocus);
  // biome-ignore lint/correctness/useExhaustiveDependencies: only when another row becomes the active one
  useEffect(() => {
    if (!moved.current) return;
    moved.current = false;
    rows.scrollToIndex(at);
    requestAnimationFrame(() => box.current?.querySelector<HTMLElement>(`[data-row="${at}"]`)?.focus());
  }, [at]);
  const ids = () => shown.map(({ id }) => id);
  const latest = useRef({ shown, look });
  latest.current = { shown, look };
  const focus = useCallback(
    (id: string) => {
      if (latest.current.look.active !== id) onLook((before) => ({ ...before, active: id }));
    },
    [onLook],
  );
  const choose = useCallback(
    (id: string, isRange: boolean) =>
      onLook((before) => ({
        ...before,
        active: id,
        chosen: isRange
          ? chooseTo(
              before.chosen,
              id,
              latest.current.shown.map((one) => one.id),
            )
          : toggleRow(before.chosen, id),
      })),
    [onLook],
  );
  const move = (event: KeyboardEvent) => {
    const next = nextRow(event.key, at, shown.length);
    const { id } = shown[at]!;
    if (next !== null) {
      event.preventDefault();
      moved.current = next !== at;
      const to = shown[next]!.id;
      onLook((before) => ({
        ...before,
        active: to,
        ...(event.shiftKey && { chosen: chooseTo(withFrom(before, id), to, ids()) }),
      }));
    } else if (event.key === ' ') {
      event.preventDefault();
      onLook((before) => ({ ...before, active: id, chosen: toggleRow(before.chosen, id) }));
    } else if (event.key.toLowerCase() === 'a' && (event.ctrlKey || event.metaKey)) {
      event.preventDefault();
      onLook((before) => ({ ...before, chosen: toggleAll(before.chosen, ids()) }));
    } else if (event.key === 'Enter') {
      event.preventDefault();
      onEdit(id);
    }
  };
  return (
    <div ref={box} className="range-box">
      <table
        className="range-table"
        // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a table whose rows are chosen and gone through by keys is a grid
        role="grid"
        aria-label={RANGE.list}
        aria-description={RANGE.keys}
        aria-multiselectable="true"
        aria-rowcount={shown.length + 1}
        aria-colcount={COLUMNS.length}
      >
        <RangeHead shown={shown} look={look} onLook={onLook} />
        <tbody className="range-rows" style={{ height: rows.getTotalSize() }} onKeyDown={move}>
          {items.map(({ index, key, start }) => {
            const finish = shown[index]!;
            return (
              <RangeRow
                key={key}
                ref={rows.measureElement}
                index={index}
                top={start}
                finish={finish}
                facts={knownFacts(finish)}
                paint={paintOf(finish)}
                isChosen={look.chosen.ids.has(finish.id)}
                isActive={index === at}
                onFocus={focus}
                onChoose={choose}
                onEdit={onEdit}
              />
            );
          })}
        </tbody>
      </table>
    </div>
  );
}

/** A range drawn by keys begins at the row with the focus where none was chosen before. */
const withFrom = ({ chosen }: RangeLook, id: string) =>
  chosen.from === null ? { ids: new Set([...chosen.ids, id]), from: id } : chosen;

function nextRow(key: string, at: number, count: number): number | null {
  const held = (row: number) => Math.min(count - 1, Math.max(0, row));
  switch (key) {
    case 'ArrowDown':
      return held(at + 1);
    case 'ArrowUp':
      return held(at - 1);
    case 'PageDown':
      return held(at + PAGE);
    case 'PageUp':
      return held(at - PAGE);
    case 'Home':
      return 0;
    case 'End':
      return count - 1;
    default:
      return null;
  }
}
