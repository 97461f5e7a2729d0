import { type KeyboardEvent, useRef, useState } from 'react';
import type { FinishClass } from '../../engine/finish/types';
import type { Finish } from '../../model/project';
import { useSeen } from '../parts/use-seen';
import { Swatch } from '../swatch/Swatch';
import type { SwatchPaint } from '../swatch/swatch-paint';
import { DRAWER } from '../words/drawer';
import { undertoneLabel } from '../words/findings';
import { CLASS_WORDS, labelWithoutCode, PROVENANCE_SHORT } from '../words/finishes';
import { knownFacts } from './finish-facts';
import { nextIndex } from './next-index';
import { useFacts } from './use-facts';

interface LibraryListProps {
  readonly finishes: readonly Finish[];
  readonly chosen: string;
  /** `bake`: whether its pattern is wanted now, or only if it is there. */
  readonly paintOf: (finish: Finish, bake: boolean) => SwatchPaint;
  readonly onChoose: (finish: Finish) => void;
}

/** The finishes that can go on the surface. Arrow keys only move; a click, Enter or Space lays the finish at once. */
export function LibraryList({ finishes, chosen, paintOf, onChoose }: LibraryListProps) {
  const [search, setSearch] = useState('');
  const [kind, setKind] = useState<FinishClass | 'all'>('all');
  useFacts(finishes);
  const classes = [...new Set(finishes.map((finish) => finish.class))];
  const shown = finishes.filter(
    (finish) => (kind === 'all' || finish.class === kind) && fits(finish, search.trim().toLowerCase()),
  );
  return (
    <div className="library">
      <div className="library-tools">
        <label className="field">
          <span className="label">{DRAWER.search}</span>
          <input
            type="search"
            className="input"
            value={search}
            placeholder={DRAWER.searchHint}
            onChange={(event) => setSearch(event.target.value)}
          />
        </label>
        <label className="field">
          <span className="label">{DRAWER.classFilter}</span>
          <select
            className="select"
            value={kind}
            onChange={(event) => setKind(event.target.value as FinishClass | 'all')}
          >
            <option value="all">{DRAWER.allClasses}</option>
            {classes.map((one) => (
              <option key={one} value={one}>
                {CLASS_WORDS[one]}
              </option>
            ))}
          </select>
        </label>
        <p className="small quiet library-count" role="status">
          {DRAWER.count(shown.length, finishes.length)}
        </p>
      </div>
      {shown.length === 0 ? (
        <p className="library-none">{DRAWER.none}</p>
      ) : (
        <FinishBox finishes={shown} chosen={chosen} paintOf={paintOf} onChoose={onChoose} />
      )}
    </div>
  );
}

function fits(finish: Finish, search: string): boolean {
  if (!search) return true;
  const facts = knownFacts(finish);
  const text = `${finish.label} ${CLASS_WORDS[finish.class]} ${facts ? undertoneLabel(facts) : ''}`.toLowerCase();
  return search.split(/\s+/).every((word) => text.includes(word));
}

function FinishBox({ finishes, chosen, paintOf, onChoose }: LibraryListProps) {
  const box = useRef<HTMLDivElement>(null);
  const [active, setActive] = useState(chosen);
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
    }
  };
  return (
    <div ref={box} className="finish-list" role="listbox" aria-label={DRAWER.list} tabIndex={-1} onKeyDown={move}>
      {finishes.map((finish, index) => (
        <FinishOption
          key={finish.id}
          finish={finish}
          isChosen={finish.id === chosen}
          isActive={index === at}
          paintOf={paintOf}
          onFocus={() => setActive(finish.id)}
          onChoose={() => onChoose(finish)}
        />
      ))}
    </div>
  );
}

interface FinishOptionProps {
  readonly finish: Finish;
  readonly isChosen: boolean;
  readonly isActive: boolean;
  readonly paintOf: LibraryListProps['paintOf'];
  readonly onFocus: () => void;
  readonly onChoose: () => void;
}

function FinishOption({ finish, isChosen, isActive, paintOf, onFocus, onChoose }: FinishOptionProps) {
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
      onFocus={onFocus}
      onClick={onChoose}
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
