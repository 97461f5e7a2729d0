import { X } from 'lucide-react';
import { type KeyboardEvent, use, useDeferredValue, useEffect, useMemo, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { sentenceCase } from '../../engine/judge/surface-words';
import type { DecisionState, SurfaceId } from '../../engine/surface';
import { isEmpty } from '../../model/empty-surface';
import type { Finish, Laying } from '../../model/project';
import { sheenOf } from '../../model/sheens';
import type { LedgeSample } from '../ledge/ledge-samples';
import { Choices } from '../parts/Choices';
import { Locked } from '../parts/locked';
import type { SwatchPaint } from '../swatch/swatch-paint';
import { DRAWER } from '../words/drawer';
import { surfaceName } from '../words/engine-words';
import { labelWithoutCode, SHEEN_WORDS, STATE_MEANING, VARIATION_WORDS } from '../words/finishes';
import { SHORTLIST } from '../words/shortlist';
import { reread } from '../words/spoken';
import type { LibraryChoice } from './FilterFields';
import { asksFacts } from './finish-filters';
import { LayingForm } from './LayingForm';
import { LibraryPart } from './LibraryPart';
import { type Fold, LibraryFold, LibraryTools } from './LibraryTools';
import { libraryValues } from './library-values';
import { ALL, type NoShortlist, PROJECT, type ShortlistView, START_VIEW, shownLibrary } from './shortlist-view';
import { TypeIn } from './TypeIn';
import { useFacts } from './use-facts';
import type { WishFieldsProps } from './WishFields';
import './drawer.css';

export interface DrawerProps {
  readonly sample: LedgeSample;
  /** All surfaces that may take the finish together with this one, this one included. */
  readonly family: readonly SurfaceId[];
  /** The project's own finishes. */
  readonly library: readonly Finish[];
  /** All that may be laid, those of kept libraries, too. */
  readonly offered: readonly Finish[];
  /** All that may fill joints. */
  readonly grouts: readonly Finish[];
  /** Of those that may be laid: made for this surface only perhaps, for their size is not said. */
  readonly unsure: ReadonlySet<string>;
  readonly libraries: LibraryChoice;
  /** False for what only lies there: it is not of the showroom's range. */
  readonly isChoice: (finish: Finish) => boolean;
  /** The showroom's range is still being fetched. */
  readonly isRangeComing: boolean;
  readonly isOutdated: (finish: Finish) => boolean;
  readonly candidates: readonly Finish[];
  /** Null while it is worked out. */
  readonly shortlist: ShortlistView | NoShortlist | null;
  readonly wishing: Omit<WishFieldsProps, 'finishes'>;
  /** What lies there by the document, and what is on trial there instead; `sample` is what is shown. */
  readonly laid: string;
  readonly tried: string | null;
  /** Whether choosing only tries: one of them is settled for good. */
  readonly onlyTries: (surfaces: readonly SurfaceId[]) => boolean;
  /** Colors from outside may be laid. */
  readonly canTypeIn: boolean;
  readonly paintOf: (finish: Finish, bake: boolean) => SwatchPaint;
  readonly onLay: (surfaces: readonly SurfaceId[], finish: string) => void;
  /** Tries a finish; the one on trial is dropped. */
  readonly onTry: (surfaces: readonly SurfaceId[], finish: string) => void;
  readonly onEmpty: (surfaces: readonly SurfaceId[]) => void;
  readonly onLayOwn: (surfaces: readonly SurfaceId[], finish: Finish) => void;
  readonly onState: (surfaces: readonly SurfaceId[], state: DecisionState) => void;
  readonly onLaying: (surfaces: readonly SurfaceId[], laying: Laying) => void;
  /** Told which surfaces to outline. */
  readonly onPoint: (surfaces: readonly SurfaceId[]) => void;
  readonly onReading: (surface: SurfaceId) => void;
  /** Looks after the libraries; null where nobody may. */
  readonly onLibraries: (() => void) | null;
  readonly onClose: () => void;
}

type Part = 'library' | 'type-in' | 'laying';
const PARTS: readonly { readonly id: Part; readonly name: string }[] = reread(() => [
  { id: 'library', name: DRAWER.library },
  { id: 'type-in', name: DRAWER.typeIn },
  { id: 'laying', name: DRAWER.laying },
]);
const STATES: readonly DecisionState[] = ['open', 'decided', 'ordered', 'fixed'];

/** The drawer of one sample: what could lie there instead, one's own color, the laying, and how settled it is. */
export function Drawer(props: DrawerProps) {
  const { sample, family } = props;
  const isLocked = use(Locked);
  const isNothing = isEmpty({ finish: sample.finish.id });
  const [wantedPart, setPart] = useState<Part>('library');
  // What is empty is not laid.
  const part = isNothing && wantedPart === 'laying' ? 'library' : wantedPart;
  const [look, setLook] = useState(START_VIEW);
  const [fold, setFold] = useState<Fold | null>(null);
  /** On a phone: whether all there is to set is shown, or the list has the room. */
  const [isUnfolded, setIsUnfolded] = useState(false);
  const [surfaces, setSurfaces] = useState<readonly SurfaceId[]>(sample.surfaces);
  const drawer = useRef<HTMLDivElement>(null);
  // The list comes a moment after the drawer; a focus that went elsewhere meanwhile stays there.
  const isThere = props.shortlist !== null;
  useEffect(() => {
    const at = document.activeElement;
    if (!isThere || at === drawer.current || !drawer.current?.contains(at)) focusList(drawer.current);
  }, [isThere]);

  const onKey = (event: KeyboardEvent) => {
    if (event.key !== 'Escape' || event.defaultPrevented) return;
    event.stopPropagation();
    props.onClose();
  };
  const toggle = (surface: SurfaceId) => {
    const next = surfaces.includes(surface) ? surfaces.filter((one) => one !== surface) : [...surfaces, surface];
    if (next.length > 0) setSurfaces(family.filter((one) => next.includes(one)));
  };
  const { classes } = libraryValues(props.candidates);
  const { shortlist, laid, tried } = props;
  const onTry = (where: readonly SurfaceId[], finish: string) => {
    // Who tries wants to see it: on a screen for customers the filters give their room to the picture.
    if (isLocked) setFold(null);
    props.onTry(where, finish);
  };
  const view = shortlist === null || typeof shortlist === 'string' ? null : shortlist;
  // Letters come before lists: a large library takes a moment to go through.
  const from = fromOf(look.from, props.libraries);
  const seenAs = useDeferredValue(useMemo(() => ({ ...look, from }), [look, from]));
  const told = useFacts(props.library);
  // They come bit by bit: a large library is gone through again only where they count.
  const facts = asksFacts(seenAs.filters) ? told : 0;
  const own = useMemo(() => new Set(props.library), [props.library]);
  const { list, order, orderNow, pending = 0, isFilled = false } = view ?? {};
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is known of a finish decides whether it passes
  const shown = useMemo(
    () =>
      shownLibrary(
        list && order && orderNow ? { list, order, orderNow, pending, isFilled } : null,
        props.offered,
        props.candidates,
        seenAs,
        [laid, tried].filter((id) => id !== null),
        own,
        props.unsure,
      ),
    [
      list,
      order,
      orderNow,
      pending,
      isFilled,
      props.offered,
      props.candidates,
      props.unsure,
      seenAs,
      laid,
      tried,
      facts,
      own,
    ],
  );
  const { libraries } = props;
  const tools = {
    look,
    libraries,
    onLook: setLook,
    library: shown,
    own: props.library.length,
    wishing: view && props.wishing,
    fold,
    onFold: setFold,
  };
  const triesOnly = props.onlyTries(surfaces);
  return (
    <div
      ref={drawer}
      className={`drawer ${isUnfolded ? 'is-unfolded' : ''}`}
      role="dialog"
      aria-label={sample.name}
      tabIndex={-1}
      onKeyDown={onKey}
      data-drawer={sample.id}
    >
      <div className="drawer-head">
        <div className="drawer-title">
          <h2>{sample.name}</h2>
          <p className="small quiet">
            {isNothing
              ? sentenceCase(sample.finish.label)
              : `${labelWithoutCode(sample.finish.label, sample.finish.id)}, ${sample.finish.id}; ${SHEEN_WORDS[sheenOf(sample.finish.gloss_gu)]}; ${VARIATION_WORDS[sample.finish.variation]}`}
          </p>
        </div>
        <div className="drawer-more">
          {!isLocked && (
            <label className="drawer-state small">
              <span className="hidden-visually">{DRAWER.state}</span>
              <select
                className="select"
                value={sample.state}
                disabled={isNothing}
                onChange={(event) => props.onState(surfaces, event.target.value as DecisionState)}
              >
                {STATES.map((state) => (
                  <option key={state} value={state}>
                    {STATE_MEANING[state]}
                  </option>
                ))}
              </select>
            </label>
          )}
          {!isNothing && (
            <button type="button" className="button button-outlined" onClick={() => props.onReading(surfaces[0]!)}>
              {DRAWER.reading}
            </button>
          )}
          {!isNothing && sample.state === 'open' && tried === null && (
            <button
              type="button"
              className="button button-outlined"
              onClick={() => {
                props.onEmpty(surfaces);
                drawer.current?.focus({ preventScroll: true });
              }}
            >
              {DRAWER.leaveEmpty}
            </button>
          )}
        </div>
        <button
          type="button"
          className="button button-outlined drawer-fold"
          aria-expanded={isUnfolded}
          onClick={() => setIsUnfolded(!isUnfolded)}
        >
          {DRAWER.more}
        </button>
        <button type="button" className="button drawer-close" aria-label={DRAWER.close} onClick={props.onClose}>
          <X className="icon" aria-hidden="true" />
        </button>
      </div>
      {family.length > 1 && (
        <fieldset className="drawer-on">
          <legend className="small quiet">{DRAWER.on}</legend>
          {family.map((surface) => (
            <label key={surface} className="check">
              <input type="checkbox" checked={surfaces.includes(surface)} onChange={() => toggle(surface)} />
              {surfaceName(surface)}
            </label>
          ))}
        </fieldset>
      )}
      <div className="drawer-tools">
        <Choices
          label={DRAWER.parts}
          choices={PARTS.filter(({ id }) => (id === 'laying' ? !isNothing : id !== 'type-in' || props.canTypeIn))}
          chosen={part}
          onChoose={setPart}
        />
        {part === 'library' && shortlist !== null && <LibraryTools {...tools} />}
      </div>
      {part === 'library' && shortlist !== null && <LibraryFold {...tools} />}
      <div className="drawer-part">
        {part === 'library' && (
          <LibraryPart
            shortlist={shortlist}
            library={props.offered}
            own={own}
            shown={shown}
            isRanked={view !== null && seenAs.order === 'fit'}
            isOutdated={props.isOutdated}
            isChoice={props.isChoice}
            isRangeComing={props.isRangeComing}
            putAside={libraries.all.filter(({ id }) => libraries.putAside.includes(id)).length}
            chosen={laid}
            tried={tried}
            onlyTries={triesOnly ? SHORTLIST.settled : null}
            paintOf={props.paintOf}
            onChoose={({ id }) => (triesOnly ? onTry(surfaces, id) : props.onLay(surfaces, id))}
            onTry={({ id }) => onTry(surfaces, id)}
            onPoint={props.onPoint}
            onLibraries={props.onLibraries}
          />
        )}
        {part === 'type-in' && (
          <TypeIn
            library={props.library}
            current={sample.finish}
            classes={classes}
            onUse={(finish) => {
              flushSync(() => {
                props.onLayOwn(surfaces, finish);
                setPart('library');
              });
              focusList(drawer.current);
            }}
          />
        )}
        {part === 'laying' && (
          <LayingForm
            key={sample.finish.id}
            finish={sample.finish}
            surface={surfaces[0] ?? sample.surfaces[0]!}
            laying={sample.laying}
            grouts={props.grouts}
            onLaying={(laying) => props.onLaying(surfaces, laying)}
          />
        )}
      </div>
    </div>
  );
}

/** A library that is no longer there, or not offered, is none to look through. */
const fromOf = (from: string, { all, putAside }: LibraryChoice): string =>
  from === ALL || from === PROJECT || (all.some(({ id }) => id === from) && !putAside.includes(from)) ? from : ALL;

/** Puts the focus on the finish to go on from in the list, or on the drawer where no list is shown. */
function focusList(drawer: HTMLElement | null): void {
  const place = drawer?.querySelector<HTMLElement>('[role=option][tabindex="0"]') ?? drawer;
  place?.focus({ preventScroll: true });
}
