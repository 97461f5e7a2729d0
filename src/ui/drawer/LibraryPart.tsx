import { use, useState } from 'react';
import { flushSync } from 'react-dom';
import type { SurfaceId } from '../../engine/surface';
import type { Finish } from '../../model/project';
import { Locked } from '../parts/locked';
import type { SwatchPaint } from '../swatch/swatch-paint';
import { DRAWER } from '../words/drawer';
import { labelWithoutCode } from '../words/finishes';
import { LIBRARIES } from '../words/libraries';
import { SHORTLIST } from '../words/shortlist';
import { retold } from '../words/spoken';
import { FinishBox } from './FinishBox';
import { wordsOf } from './shortlist-order';
import type { NoShortlist, ShortlistView, ShownLibrary } from './shortlist-view';
import { WhyPart } from './WhyPart';

interface LibraryPartProps {
  /** Null while it is worked out. */
  readonly shortlist: ShortlistView | NoShortlist | null;
  readonly library: readonly Finish[];
  /** The project's own finishes. */
  readonly own: ReadonlySet<Finish>;
  readonly shown: ShownLibrary;
  readonly isRanked: boolean;
  /** What lies there, apart from what is on trial. */
  readonly chosen: string;
  readonly tried: string | null;
  /** Choosing only tries, and why. */
  readonly onlyTries: string | null;
  readonly paintOf: (finish: Finish, bake: boolean) => SwatchPaint;
  readonly onChoose: (finish: Finish) => void;
  readonly onTry: (finish: Finish) => void;
  readonly onPoint: (surfaces: readonly SurfaceId[]) => void;
  readonly isOutdated: (finish: Finish) => boolean;
  /** False for what only lies there: it is not of the showroom's range. */
  readonly isChoice: (finish: Finish) => boolean;
  /** The showroom's range is still being fetched. */
  readonly isRangeComing: boolean;
  /** How many libraries are not offered. */
  readonly putAside: number;
  readonly onLibraries: (() => void) | null;
}

/** The finishes for a surface: as a shortlist with its reasons, or as the plain library has them. */
export function LibraryPart(props: LibraryPartProps) {
  const {
    shortlist,
    library,
    own,
    shown,
    isRanked,
    chosen,
    tried,
    onlyTries,
    paintOf,
    onChoose,
    onTry,
    onPoint,
    onLibraries,
  } = props;
  // A customer wants to know what comes first, not how it was worked out.
  const isLocked = use(Locked);
  const [asked, setAsked] = useState<Finish | null>(null);
  if (shortlist === null) {
    return (
      <p className="library-none" role="status">
        {SHORTLIST.waiting(library.length)}
      </p>
    );
  }
  const view = typeof shortlist === 'string' ? null : shortlist;
  if (asked && view) {
    return (
      <WhyPart
        finish={asked}
        row={view.rowOf(asked.id)}
        list={view.list}
        paint={paintOf(asked, true)}
        isChosen={asked.id === chosen}
        isTried={asked.id === tried}
        readWhy={view.readWhy}
        onPoint={onPoint}
        onLay={onlyTries === null ? () => onChoose(asked) : null}
        onTry={() => onTry(asked)}
        onBack={() => {
          flushSync(() => setAsked(null));
          document.querySelector<HTMLElement>(`.finish-list [data-finish="${CSS.escape(asked.id)}"]`)?.focus();
        }}
      />
    );
  }
  const hasLibraries = library.length > own.size;
  const onTrial = library.find(({ id }) => id === tried);
  return (
    <div className="library">
      <div className="library-head small">
        <p>
          {shortlist === 'fixed' && SHORTLIST.fixed}
          {shortlist === 'untold' && SHORTLIST.untold}
          {view && isRanked && (isLocked ? SHORTLIST.heldPlain : retold(view.list.held_words))} {view && onlyTries}{' '}
          <span role="status" className="quiet">
            {DRAWER.count(shown.shown.length, shown.all.length)}
            {hasLibraries && `, ${DRAWER.ofProject(shown.shown.filter((finish) => own.has(finish)).length)}`}.{' '}
            {props.isRangeComing && SHORTLIST.rangeComing} {props.putAside > 0 && DRAWER.putAside(props.putAside)}{' '}
            {view && told(view)}{' '}
            {onTrial && (
              // The bar of the trial says it to who sees it.
              <span className="hidden-visually">{SHORTLIST.trying(labelWithoutCode(onTrial.label, onTrial.id))}</span>
            )}
          </span>
          {onLibraries && (
            <button type="button" className="button button-plain" onClick={onLibraries}>
              {LIBRARIES.link}
            </button>
          )}
        </p>
        {view?.isOrderOld && isRanked && (
          <p className="shortlist-again">
            {view.isFilled ? SHORTLIST.filled : SHORTLIST.changed}{' '}
            <button type="button" className="button button-outlined" onClick={view.onOrderAgain}>
              {SHORTLIST.again}
            </button>
          </p>
        )}
      </div>
      {shown.shown.length === 0 ? (
        <p className="library-none">{DRAWER.none}</p>
      ) : (
        <FinishBox
          sections={shown.sections}
          wordsOf={(finish) => {
            const row = isRanked && view ? view.rowOf(finish.id) : null;
            return row && wordsOf(row);
          }}
          onSeen={isRanked ? view?.askRows : undefined}
          isOutdated={props.isOutdated}
          isChoice={props.isChoice}
          chosen={chosen}
          tried={tried}
          paintOf={paintOf}
          onChoose={onChoose}
          onTry={onTry}
          onPoint={onPoint}
          {...(view && { onWhy: setAsked })}
        />
      )}
    </div>
  );
}

/** What is being done about a list. */
const told = ({ pending, isJudging }: ShortlistView): string | false =>
  pending > 0 ? SHORTLIST.filling(pending) : isJudging && SHORTLIST.judging;
