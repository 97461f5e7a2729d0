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
import './finish-list.css';

/** A finish in the list, and what is said of it there. */
export interface FinishRow {
  readonly finish: Finish;
  /** Why it stands there, in a line. */
  readonly reason?: string;
  /** How it was judged. */
  readonly mark?: string;
  /** What it makes of the wishes. */
  readonly wishes?: string;
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
  /** What is on trial there instead. */
  readonly tried: string | null;
  /** `bake`: whether its pattern is wanted now, or only if it is there. */
  readonly paintOf: (finish: Finish, bake: boolean) => SwatchPaint;
  readonly onChoose: (finish: Finish) => void;
  /** Tries a finish, or drops the one on trial. */
  readonly onTry: (finish: Finish) => void;
  /** Told which surfaces to outline while a finish is pointed at or has the focus. */
  readonly onPoint?: (surfaces: readonly SurfaceId[]) => void;
  readonly onWhy?: (finish: Finish) => void;
}

/** Finishes to choose from. Arrow keys only move; a click, Enter or Space chooses, T tries, a question mark asks why. */
export function FinishBox({ sections, chosen, tried, paintOf, onChoose, onTry, onPoint, onWhy }: FinishBoxProps) {
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
    } else if (event.key.toLowerCase() === 't' && !event.ctrlKey && !event.metaKey && !event.altKey) {
      event.preventDefault();
      if (finishes[at]!.id !== chosen) onTry(finishes[at]!);
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
      isTried={row.finish.id === tried}
      isActive={row.finish === finishes[at]}
      paintOf={paintOf}
      onFocus={(isByKeys) => {
        setActive(row.finish.id);
        if (isByKeys) onPoint?.(row.beside ?? []);
      }}
      onPoint={onPoint}
      onChoose={() => onChoose(row.finish)}
      onTry={() => onTry(row.finish)}
      onWhy={onWhy && (() => onWhy(row.finish))}
    />
  );
  return (
    <div
      ref={box}
      className={`finish-list ${onWhy ? '' : 'finish-list-plain'}`}
      role="listbox"
      aria-label={DRAWER.list}
      aria-description={onWhy ? SHORTLIST.keys : SHORTLIST.tryKey}
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
  readonly isTried: boolean;
  readonly isActive: boolean;
  readonly paintOf: FinishBoxProps['paintOf'];
  /** A tap leaves a focus behind that nobody sees. */
  readonly onFocus: (isByKeys: boolean) => void;
  readonly onPoint: FinishBoxProps['onPoint'];
  readonly onChoose: () => void;
  readonly onTry: () => void;
  readonly onWhy: (() => void) | undefined;
}

function FinishOption(props: FinishOptionProps) {
  const { row, isChosen, isTried, isActive, paintOf, onFocus, onPoint, onChoose, onTry, onWhy } = props;
  const { finish, reason, mark, wishes, isRejected, beside } = row;
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
      data-tried={isTried || undefined}
      onFocus={(event) => onFocus(event.target.matches(':focus-visible'))}
      onClick={onChoose}
      onPointerEnter={() => onPoint?.(beside ?? [])}
      onPointerLeave={() => onPoint?.([])}
    >
      <Swatch paint={paintOf(finish, seen)} width={52} height={36} className="finish-swatch" />
      <span className="finish-words small">
        <span className="finish-label">
          {labelWithoutCode(finish.label, finish.id)}
          {isChosen && <strong className="finish-current">{DRAWER.current}</strong>}
          {isTried && <strong className="finish-current">{SHORTLIST.onTrial}</strong>}
        </span>
        <span className="quiet">
          {finish.id}
          {facts && `, ${DRAWER.lrv(facts.lrv)}, ${undertoneLabel(facts)}`}, {PROVENANCE_SHORT[finish.provenance]}
          {supply && <> · {supply}</>}
        </span>
      </span>
      {reason && (
        <span className="finish-reason small">
          <span>
            {reason} {mark && <span className="finish-mark quiet">({mark})</span>}
          </span>
          {wishes && <span className="finish-wishes">{wishes}</span>}
        </span>
      )}
      <span className="finish-acts small" aria-hidden="true">
        {!isChosen && <Act words={isTried ? SHORTLIST.drop : SHORTLIST.try} onAct={onTry} name="try" />}
        {onWhy && <Act words={SHORTLIST.why} onAct={onWhy} name="why" />}
      </span>
    </div>
  );
}

interface ActProps {
  readonly words: string;
  readonly onAct: () => void;
  readonly name: string;
}

/** For fingers and mice; an option of a list has no buttons in it, so keys have letters of their own. */
const Act = ({ words, onAct, name }: ActProps) => (
  // biome-ignore lint/a11y/useKeyWithClickEvents: the listbox around it listens to the keys
  // biome-ignore lint/a11y/noStaticElementInteractions: hidden from readers, who have the keys
  <span
    className="finish-act"
    data-act={name}
    onClick={(event) => {
      event.stopPropagation();
      onAct();
    }}
  >
    {words}
  </span>
);

/** How many options stand in one row, from where they lie on screen. */
function columnsOf(box: HTMLElement | null): number {
  const options = [...(box?.querySelectorAll<HTMLElement>('[role=option]') ?? [])];
  const first = options[0]?.offsetTop;
  const next = options.findIndex((option) => option.offsetTop !== first);
  return next < 1 ? Math.max(1, options.length) : next;
}
