import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import type { SurfaceId } from '../../engine/surface';
import type { Finish } from '../../model/project';
import type { SwatchPaint } from '../swatch/swatch-paint';
import { DRAWER } from '../words/drawer';
import { SHORTLIST } from '../words/shortlist';
import { FinishOption } from './FinishOption';
import { type Line, linesOf, useColumns } from './list-lines';
import { nextIndex } from './next-index';
import type { FinishSection, RowWords } from './shortlist-order';
import { VirtualLines } from './VirtualLines';
import './finish-list.css';

interface FinishBoxProps {
  readonly sections: readonly FinishSection[];
  readonly chosen: string;
  /** What is on trial there instead. */
  readonly tried: string | null;
  /** What is said of a finish; null: nothing, or nothing yet. */
  readonly wordsOf: (finish: Finish) => RowWords | null;
  /** Told which finishes came into sight. */
  readonly onSeen?: ((finishes: readonly string[]) => void) | undefined;
  readonly isOutdated: (finish: Finish) => boolean;
  /** False for what only lies there: it is not of the showroom's range. */
  readonly isChoice?: ((finish: Finish) => boolean) | undefined;
  /** `bake`: whether its pattern is wanted now, or only if it is there. */
  readonly paintOf: (finish: Finish, bake: boolean) => SwatchPaint;
  readonly onChoose: (finish: Finish) => void;
  /** Tries a finish, or drops the one on trial. */
  readonly onTry: (finish: Finish) => void;
  /** Told which surfaces to outline while a finish is pointed at or has the focus. */
  readonly onPoint?: (surfaces: readonly SurfaceId[]) => void;
  readonly onWhy?: (finish: Finish) => void;
}

/** From so many finishes on only those in sight are in the page. */
const MANY = 150;

/** Finishes to choose from. Arrow keys only move; a click, Enter or Space chooses, T tries, a question mark asks why. */
export function FinishBox(props: FinishBoxProps) {
  const { sections, chosen, tried, wordsOf, onSeen, isOutdated, paintOf, onChoose, onTry, onPoint, onWhy } = props;
  const box = useRef<HTMLDivElement>(null);
  const name = useId();
  const [active, setActive] = useState(chosen);
  const finishes = sections.length === 1 ? sections[0]!.finishes : sections.flatMap((section) => section.finishes);
  const isLong = finishes.length > MANY;
  const columns = useColumns(box, isLong && !onWhy);
  const at = Math.max(
    0,
    finishes.findIndex((finish) => finish.id === active),
  );
  useEffect(() => {
    if (!isLong) onSeen?.(finishes.map(({ id }) => id));
  });
  const move = (event: KeyboardEvent) => {
    const next = nextIndex(event.key, at, finishes.length, isLong ? columns : columnsOf(box.current));
    if (next !== null) {
      event.preventDefault();
      const { id } = finishes[next]!;
      // What has the focus is in the page, wherever it stands.
      flushSync(() => setActive(id));
      box.current?.querySelector<HTMLElement>(`[data-finish="${CSS.escape(id)}"]`)?.focus();
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
  const option = (finish: Finish, index: number) => {
    const words = wordsOf(finish);
    return (
      <FinishOption
        key={finish.id}
        finish={finish}
        words={words}
        isOutdated={isOutdated(finish)}
        isForeign={props.isChoice?.(finish) === false}
        place={index + 1}
        count={finishes.length}
        isChosen={finish.id === chosen}
        isTried={finish.id === tried}
        isActive={index === at}
        paintOf={paintOf}
        onFocus={(isByKeys) => {
          setActive(finish.id);
          if (isByKeys) onPoint?.(words?.beside ?? []);
        }}
        onPoint={onPoint}
        onChoose={() => onChoose(finish)}
        onTry={() => onTry(finish)}
        onWhy={onWhy && (() => onWhy(finish))}
      />
    );
  };
  const title = ({ id, title: words, finishes: its }: FinishSection) => (
    <div id={`${name}-${id}`} role="presentation" className="finish-section-title small">
      {words} ({its.length})
    </div>
  );
  const section = (one: FinishSection, children: React.ReactNode) =>
    one.title === null ? (
      children
    ) : (
      // biome-ignore lint/a11y/useSemanticElements: a fieldset is no part of a list box
      <div
        key={one.id}
        role="group"
        className="finish-section"
        aria-labelledby={`${name}-${one.id}`}
        data-section={one.id}
      >
        {children}
      </div>
    );
  const line = ({ section: its, from, count }: Line) =>
    from === null ? title(its) : finishes.slice(from, from + count).map((finish, i) => option(finish, from + i));
  return (
    <div
      ref={box}
      className={`finish-list ${onWhy ? '' : 'finish-list-plain'} ${isLong ? 'finish-list-long' : ''}`}
      role="listbox"
      aria-label={DRAWER.list}
      aria-description={onWhy ? SHORTLIST.keys : SHORTLIST.tryKey}
      tabIndex={-1}
      onKeyDown={move}
      onBlur={() => onPoint?.([])}
    >
      {isLong ? (
        <VirtualLines
          lines={linesOf(sections, columns)}
          active={at}
          render={line}
          section={section}
          onSeen={(places) => onSeen?.(places.map((index) => finishes[index]!.id))}
        />
      ) : (
        sections.map((one) => {
          const from = finishes.indexOf(one.finishes[0]!);
          const options = one.finishes.map((finish, i) => option(finish, from + i));
          return one.title === null
            ? options
            : section(
                one,
                <>
                  {title(one)}
                  {options}
                </>,
              );
        })
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
