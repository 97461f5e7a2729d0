import { type KeyboardEvent, useId, useRef, useState } from 'react';
import type { SurfaceId } from '../../engine/surface';
import type { Finish } from '../../model/project';
import { useSeen } from '../parts/use-seen';
import { Swatch } from '../swatch/Swatch';
import type { SwatchPaint } from '../swatch/swatch-paint';
import { DRAWER } from '../words/drawer';
import { undertoneLabel } from '../words/findings';
import { labelWithoutCode, PROVENANCE_SHORT } from '../words/finishes';
import { SHORTLIST } from '../words/shortlist';
import { knownFacts } from './finish-facts';
import { nextIndex } from './next-index';

/** A finish in the list, and what is said of it there. */
export interface FinishRow {
  readonly finish: Finish;
  /** Why it stands there, in a line. */
  readonly reason?: string;
  /** How it was judged. */
  readonly mark?: string;
  readonly isRejected?: boolean;
  /** Settled surfaces that the reason speaks of. */
  readonly beside?: readonly SurfaceId[];
}

export interface FinishSection {
  readonly id: string;
  /** Null: the only one, which needs no name. */
  readonly title: string | null;
  readonly rows: readonly FinishRow[];
}

interface FinishBoxProps {
  readonly sections: readonly FinishSection[];
  readonly chosen: string;
  /** `bake`: whether its pattern is wanted now, or only if it is there. */
  readonly paintOf: (finish: Finish, bake: boolean) => SwatchPaint;
  readonly onChoose: (finish: Finish) => void;
  /** Told which surfaces to outline while a finish is pointed at or has the focus. */
  readonly onPoint?: (surfaces: readonly SurfaceId[]) => void;
  readonly onWhy?: (finish: Finish) => void;
}

/** Finishes to choose from. Arrow keys only move; a click, Enter or Space lays the finish at once, a question mark asks why. */
export function FinishBox({ sections, chosen, paintOf, onChoose, onPoint, onWhy }: FinishBoxProps) {
  const box = useRef<HTMLDivElement>(null);
  const name = useId();
  const [active, setActive] = useState(chosen);
  const finishes = sections.flatMap(({ rows }) => rows.map(({ finish }) => finish));
  const at = Math.max(
    0,
    finishes.findIndex((finish) => finish.id === active),
  );
  const move = (event: KeyboardEvent) => {
    const next = nextIndex(event.key, at, finishes.length, columnsOf(box.current));
    if (next !== null) {
      event.preventDefault();
      setActive(finishes[next]!.id);
      box.current?.querySelectorAll<HTMLElement>('[role=option]')[next]?.focus();
    } else if (event.key === 'Enter' || event.key === ' ') {
      event.preventDefault();
      onChoose(finishes[at]!);
    } else if (event.key === '?' && onWhy) {
      event.preventDefault();
      event.stopPropagation();
      onWhy(finishes[at]!);
    }
  };
  const option = (row: FinishRow) => (
    <FinishOption
      key={row.finish.id}
      row={row}
      isChosen={row.finish.id === chosen}
      isActive={row.finish === finishes[at]}
      paintOf={paintOf}
      onFocus={() => {
        setActive(row.finish.id);
        onPoint?.(row.beside ?? []);
      }}
      onPoint={onPoint}
      onChoose={() => onChoose(row.finish)}
      onWhy={onWhy && (() => onWhy(row.finish))}
    />
  );
  return (
    <div
      ref={box}
      className={`finish-list ${onWhy ? 'finish-list-reasons' : ''}`}
      role="listbox"
      aria-label={DRAWER.list}
      aria-description={onWhy && SHORTLIST.whyKey}
      tabIndex={-1}
      onKeyDown={move}
      onBlur={() => onPoint?.([])}
    >
      {sections.map(({ id, title, rows }) =>
        title === null ? (
          rows.map(option)
        ) : (
          // biome-ignore lint/a11y/useSemanticElements: a fieldset is no part of a list box
          <div key={id} role="group" className="finish-section" aria-labelledby={`${name}-${id}`} data-section={id}>
            <div id={`${name}-${id}`} role="presentation" className="finish-section-title small">
              {title} ({rows.length})
            </div>
            {rows.map(option)}
          </div>
        ),
      )}
    </div>
  );
}

interface FinishOptionProps {
  readonly row: FinishRow;
  readonly isChosen: boolean;
  readonly isActive: boolean;
  readonly paintOf: FinishBoxProps['paintOf'];
  readonly onFocus: () => void;
  readonly onPoint: FinishBoxProps['onPoint'];
  readonly onChoose: () => void;
  readonly onWhy: (() => void) | undefined;
}

function FinishOption({ row, isChosen, isActive, paintOf, onFocus, onPoint, onChoose, onWhy }: FinishOptionProps) {
  const { finish, reason, mark, isRejected, beside } = row;
  const facts = knownFacts(finish);
  const supply = [finish.supply?.price_band, finish.supply?.availability].filter(Boolean).join(' · ');
  const option = useRef<HTMLDivElement>(null);
  const seen = useSeen(option);
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the listbox around it listens to the keys
    <div
      ref={option}
      role="option"
      className="finish-option ring-inside"
      aria-selected={isChosen}
      tabIndex={isActive ? 0 : -1}
      data-finish={finish.id}
      data-rejected={isRejected || undefined}
      onFocus={onFocus}
      onClick={onChoose}
      onPointerEnter={() => onPoint?.(beside ?? [])}
      onPointerLeave={() => onPoint?.([])}
    >
      <Swatch paint={paintOf(finish, seen)} width={72} height={56} />
      <span className="finish-words small">
        <span className="finish-label">{labelWithoutCode(finish.label, finish.id)}</span>
        <span className="quiet">
          {finish.id}
          {facts && `, ${DRAWER.lrv(facts.lrv)}, ${undertoneLabel(facts)}`}, {PROVENANCE_SHORT[finish.provenance]}
          {isChosen && <strong className="finish-current"> {DRAWER.current}</strong>}
        </span>
        {supply && <span className="quiet">{supply}</span>}
      </span>
      {reason && (
        <span className="finish-reason small">
          {reason} {mark && <span className="quiet">({mark})</span>}
        </span>
      )}
      {onWhy && (
        // For fingers and mice; keys have the question mark.
        <span
          className="finish-why small"
          aria-hidden="true"
          onClick={(event) => {
            event.stopPropagation();
            onWhy();
          }}
        >
          {SHORTLIST.why}
        </span>
      )}
    </div>
  );
}

/** How many options stand in one row, from where they lie on screen. */
function columnsOf(box: HTMLElement | null): number {
  const options = [...(box?.querySelectorAll<HTMLElement>('[role=option]') ?? [])];
  const first = options[0]?.offsetTop;
  const next = options.findIndex((option) => option.offsetTop !== first);
  return next < 1 ? Math.max(1, options.length) : next;
}
