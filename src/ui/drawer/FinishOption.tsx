import { use, useRef } from 'react';
import type { SurfaceId } from '../../engine/surface';
import type { Finish } from '../../model/project';
import { Locked } from '../parts/locked';
import { useSeen } from '../parts/use-seen';
import { Swatch } from '../swatch/Swatch';
import type { SwatchPaint } from '../swatch/swatch-paint';
import { DRAWER } from '../words/drawer';
import { undertoneLabel } from '../words/findings';
import { labelWithoutCode, PROVENANCE_SHORT } from '../words/finishes';
import { priceOrBand } from '../words/price';
import { SHORTLIST } from '../words/shortlist';
import { retold } from '../words/spoken';
import { knownFacts } from './known-facts';
import type { RowWords } from './shortlist-order';

export interface FinishOptionProps {
  readonly finish: Finish;
  /** What is said of it; null: nothing, or nothing yet. */
  readonly words: RowWords | null;
  /** Its library has another finish under that code by now. */
  readonly isOutdated: boolean;
  /** It lies there, but is not of the showroom's range. */
  readonly isForeign: boolean;
  /** Its place among all, from 1, and how many there are: not all of them need be there. */
  readonly place: number;
  readonly count: number;
  readonly isChosen: boolean;
  readonly isTried: boolean;
  readonly isActive: boolean;
  /** `bake`: whether its pattern is wanted now, or only if it is there. */
  readonly paintOf: (finish: Finish, bake: boolean) => SwatchPaint;
  /** A tap leaves a focus behind that nobody sees. */
  readonly onFocus: (isByKeys: boolean) => void;
  readonly onPoint: ((surfaces: readonly SurfaceId[]) => void) | undefined;
  readonly onChoose: () => void;
  readonly onTry: () => void;
  readonly onWhy: (() => void) | undefined;
}

export function FinishOption(props: FinishOptionProps) {
  const { finish, words, isOutdated, isForeign, place, count, isChosen, isTried, isActive } = props;
  const { paintOf, onFocus, onPoint, onChoose, onTry, onWhy } = props;
  const { reason, mark, wishes, isRejected, beside } = words ?? {};
  const isLocked = use(Locked);
  const facts = knownFacts(finish);
  const supply = [priceOrBand(finish.supply), finish.supply?.availability].filter(Boolean).join(' · ');
  const option = useRef<HTMLDivElement>(null);
  const seen = useSeen(option);
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the listbox around it listens to the keys
    <div
      ref={option}
      role="option"
      className="finish-option ring-inside"
      aria-selected={isChosen}
      aria-posinset={place}
      aria-setsize={count}
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
          {facts && `, ${DRAWER.lrv(facts.lrv)}, ${undertoneLabel(facts)}`}
          {(!isLocked || isRough(finish)) && `, ${PROVENANCE_SHORT[finish.provenance]}`}
          {supply && <> · {supply}</>}
          {isForeign && <> · {DRAWER.foreign}</>}
          {finish.origin && <> · {isOutdated ? DRAWER.outdated(finish.origin.name) : finish.origin.name}</>}
        </span>
      </span>
      {reason && (
        <span className="finish-reason small">
          <span>
            {retold(reason)} {mark && !isLocked && <span className="finish-mark quiet">({mark})</span>}
          </span>
          {wishes && <span className="finish-wishes">{retold(wishes)}</span>}
        </span>
      )}
      <span className="finish-acts small" aria-hidden="true">
        {!isChosen && <Act words={isTried ? SHORTLIST.drop : SHORTLIST.try} onAct={onTry} name="try" />}
        {onWhy && <Act words={SHORTLIST.why} onAct={onWhy} name="why" />}
      </span>
    </div>
  );
}

/** Its color is no supplier's figure and no measurement: worth a word to everybody. */
const isRough = ({ provenance }: Finish): boolean => provenance !== 'declared' && provenance !== 'measured';

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
