import { lazy, Suspense, useEffect, useMemo, useRef } from 'react';
import type { Wish } from '../../engine/judge/shortlist/wish';
import { type DecisionState, SURFACES, type SurfaceId } from '../../engine/surface';
import { presentSurfaces } from '../../kitchen/present-surfaces';
import { changesWith } from '../../model/changes-with';
import { optionById } from '../../model/commands';
import { decisionOrder } from '../../model/decision-order';
import { isEmpty } from '../../model/empty-surface';
import { familyOf } from '../../model/families';
import { candidatesFor, mayGoOn } from '../../model/finish-candidates';
import { layingFor } from '../../model/laying';
import { isOutdated } from '../../model/offered-finishes';
import type { Finish } from '../../model/project';
import { isOwn } from '../../ui/drawer/own-finish';
import { ledgeSamples } from '../../ui/ledge/ledge-samples';
import { useSpoken } from '../../ui/parts/use-spoken';
import { useApp, useAppState } from '../context';
import { offeredIn, shelfOf } from '../offered';
import { isInRange } from '../showroom/in-range';
import { documentOf, projectOf, shownOption } from '../state';
import { usePaints } from '../use-option-paints';
import { useShortlist } from '../use-shortlist';

/** On a phone the drawer lies over the picture. */
const COVERS_ALL = '(max-width: 43.99em)';
/** What is not changed by one tap: it stays, or it is paid for. */
const SETTLED: readonly DecisionState[] = ['fixed', 'ordered'];
const NO_WISHES: readonly Wish[] = [];

const Drawer = lazy(() => import('../../ui/drawer/Drawer').then((ui) => ({ default: ui.Drawer })));

export function DrawerPane({ surface }: { readonly surface: SurfaceId }) {
  const { store, actions } = useApp();
  const option = useAppState(shownOption);
  // What lies there by the document: a trial changes nothing.
  const kept = useAppState((state) => optionById(documentOf(state), option.id) ?? option);
  const isTrying = useAppState((state) => state.tryOut?.option === option.id);
  const library = useAppState((state) => projectOf(state).library);
  const { finishes: everything } = useAppState((state) => offeredIn(state));
  const shelf = useAppState(shelfOf);
  const room = useAppState((state) => state.room);
  const opened = useAppState((state) => state.drawerOpened);
  const showroom = useAppState((state) => state.showroom);
  const isRangeComing = useAppState((state) => state.isRangeComing);
  const paintOf = usePaints();
  useFocusBack(surface);
  const family = useMemo(() => {
    const present = room && presentSurfaces(room);
    return familyOf(surface).filter((one) => !present || present.includes(one));
  }, [surface, room]);
  const rows = useSpoken(() => ledgeSamples(option, library, family), [option, library, family]);
  const sample = [...rows.upright, ...rows.flat].find((one) => one.surfaces.includes(surface));
  // The order is that of the opening: a list that changes under the finger cannot be gone back in.
  // biome-ignore lint/correctness/useExhaustiveDependencies: only where and when the drawer was opened counts
  const laidAtOpening = useMemo(() => kept.scheme[surface].finish, [surface, opened]);
  const laidNow = kept.scheme[surface].finish;
  const shownNow = option.scheme[surface].finish;
  const tried = isTrying && shownNow !== laidNow ? shownNow : null;
  // Customers of a showroom choose from its range; what lies there now is in the list all the same.
  const isChoice = (finish: Finish) => showroom === null || isInRange(finish, showroom);
  const offered = useMemo(
    () =>
      showroom
        ? everything.filter((finish) => isInRange(finish, showroom) || finish.id === laidNow || finish.id === shownNow)
        : everything,
    [everything, showroom, laidNow, shownNow],
  );
  const unsure = useMemo(
    () => new Set(offered.filter((finish) => mayGoOn(finish, surface)).map(({ id }) => id)),
    [offered, surface],
  );
  const candidates = useMemo(() => {
    const usual = candidatesFor(offered, surface);
    // What lies there is always in the list, even when it is no usual choice; then one's own, then the like of it.
    const laid = (id: string) => offered.filter((finish) => finish.id === id);
    const [first] = laid(laidAtOpening);
    const own = offered.filter(isOwn);
    const like = usual.filter((finish) => finish.class === first?.class);
    const maybe = offered.filter(({ id }) => unsure.has(id));
    return [...new Set([...(first ? [first] : []), ...own, ...like, ...usual, ...laid(laidNow), ...maybe])];
  }, [offered, unsure, surface, laidAtOpening, laidNow]);
  const isFixed = kept.scheme[surface].state === 'fixed';
  const wishes = useAppState((state) => state.wishes[sample?.id ?? surface] ?? NO_WISHES);
  const shortlist = useShortlist(surface, opened, wishes, !isFixed);
  const others = useMemo(() => {
    const changing = changesWith(kept, surface);
    const present = room ? presentSurfaces(room) : SURFACES;
    return decisionOrder(kept).filter(
      (one) => present.includes(one) && !changing.includes(one) && !isEmpty(kept.scheme[one]),
    );
  }, [kept, surface, room]);
  if (!sample) return null;
  const onlyTries = (surfaces: readonly SurfaceId[]) =>
    surfaces.some((one) => SETTLED.includes(kept.scheme[one].state));
  const follow = (surfaces: readonly SurfaceId[]) => store.setState({ drawer: surfaces[0] ?? surface });
  return (
    <Suspense fallback={null}>
      <Drawer
        key={opened}
        sample={sample}
        family={family}
        library={library}
        offered={offered}
        grouts={everything.filter((finish) => finish.class === 'grout')}
        unsure={unsure}
        isChoice={isChoice}
        isRangeComing={isRangeComing}
        libraries={{
          all: shelf.libraries,
          putAside: shelf.putAside,
          onOffer: (id) =>
            store.setState(({ putAside }) => ({
              putAside: putAside.includes(id) ? putAside.filter((one) => one !== id) : [...putAside, id],
            })),
        }}
        isOutdated={(finish) => isOutdated(finish, shelf)}
        candidates={candidates}
        shortlist={isFixed ? 'fixed' : shortlist}
        wishing={{
          others,
          wishes,
          onWishes: (next) => store.setState((state) => ({ wishes: { ...state.wishes, [sample.id]: next } })),
        }}
        laid={laidNow}
        tried={tried}
        onlyTries={onlyTries}
        canTypeIn={showroom?.typesIn ?? true}
        onLibraries={showroom ? null : () => store.setState({ libraries: true })}
        onPoint={(surfaces) => store.setState({ pointed: surfaces })}
        paintOf={(finish, bake) =>
          paintOf(finish, layingFor(finish, surface, library, option.scheme[surface].laying), bake)
        }
        onLay={(surfaces, finish) => {
          // To choose what lies there already takes back what is on trial.
          const liesThere = surfaces.every((one) => kept.scheme[one].finish === finish);
          if (isTrying && liesThere) actions.dropTry();
          else actions.lay(surfaces, finish);
          follow(surfaces);
        }}
        onTry={(surfaces, finish) => {
          if (finish === tried) return actions.dropTry();
          const covers = window.matchMedia(COVERS_ALL).matches;
          // What is settled for good needs an answer of its own: the bar takes the focus.
          actions.tryFinish(
            surfaces,
            finish,
            covers ? { reopens: surface } : { keepsDrawer: true, keepsFocus: !onlyTries(surfaces) },
          );
          // The picture is at the top of the page.
          if (covers) window.scrollTo({ top: 0 });
          else follow(surfaces);
        }}
        onEmpty={(surfaces) => {
          actions.empty(surfaces);
          follow(surfaces);
        }}
        onLayOwn={(surfaces, finish) => {
          actions.layOwn(surfaces, finish);
          follow(surfaces);
        }}
        onState={actions.setState}
        onLaying={actions.setLaying}
        onReading={(reading) => store.setState({ reading, picked: null, panel: null })}
        onClose={() => store.setState({ drawer: null, pointed: [] })}
      />
    </Suspense>
  );
}

/** When the drawer goes, the focus returns to the sample it belongs to, wherever that now is on the ledge. */
function useFocusBack(surface: SurfaceId) {
  const latest = useRef(surface);
  latest.current = surface;
  useEffect(
    () => () => {
      const samples = [...document.querySelectorAll<HTMLElement>('[data-sample]')];
      const home = samples.find((one) => one.dataset['surfaces']?.split(' ').includes(latest.current));
      home?.focus({ preventScroll: true });
    },
    [],
  );
}
