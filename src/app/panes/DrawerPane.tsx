import { lazy, Suspense, useEffect, useMemo, useRef } from 'react';
import type { SurfaceId } from '../../engine/surface';
import { presentSurfaces } from '../../kitchen/present-surfaces';
import { familyOf } from '../../model/families';
import { candidatesFor } from '../../model/finish-candidates';
import { layingFor } from '../../model/laying';
import { ledgeSamples } from '../../ui/ledge/ledge-samples';
import { useApp, useAppState } from '../context';
import { projectOf, shownOption } from '../state';
import { usePaints } from '../use-option-paints';
import { useShortlist } from '../use-shortlist';

const Drawer = lazy(() => import('../../ui/drawer/Drawer').then((ui) => ({ default: ui.Drawer })));

export function DrawerPane({ surface }: { readonly surface: SurfaceId }) {
  const { store, actions } = useApp();
  const option = useAppState(shownOption);
  const library = useAppState((state) => projectOf(state).library);
  const room = useAppState((state) => state.room);
  const opened = useAppState((state) => state.drawerOpened);
  const paintOf = usePaints();
  useFocusBack(surface);
  const family = useMemo(() => {
    const present = room && presentSurfaces(room);
    return familyOf(surface).filter((one) => !present || present.includes(one));
  }, [surface, room]);
  const rows = useMemo(() => ledgeSamples(option, library, family), [option, library, family]);
  const sample = [...rows.upright, ...rows.flat].find((one) => one.surfaces.includes(surface));
  // The order is that of the opening: a list that changes under the finger cannot be gone back in.
  // biome-ignore lint/correctness/useExhaustiveDependencies: only where and when the drawer was opened counts
  const laidAtOpening = useMemo(() => option.scheme[surface].finish, [surface, opened]);
  const laidNow = option.scheme[surface].finish;
  const candidates = useMemo(() => {
    const usual = candidatesFor(library, surface);
    // What lies there is always in the list, even when it is no usual choice; then one's own, then the like of it.
    const laid = (id: string) => library.filter((finish) => finish.id === id);
    const [first] = laid(laidAtOpening);
    const own = library.filter((finish) => finish.id.startsWith('OWN-'));
    const like = usual.filter((finish) => finish.class === first?.class);
    return [...new Set([...(first ? [first] : []), ...own, ...like, ...usual, ...laid(laidNow)])];
  }, [library, surface, laidAtOpening, laidNow]);
  const isFixed = option.scheme[surface].state === 'fixed';
  const shortlist = useShortlist(surface, opened, !isFixed);
  if (!sample) return null;
  const follow = (surfaces: readonly SurfaceId[]) => store.setState({ drawer: surfaces[0] ?? surface });
  return (
    <Suspense fallback={null}>
      <Drawer
        key={opened}
        sample={sample}
        family={family}
        library={library}
        candidates={candidates}
        shortlist={isFixed ? 'none' : shortlist}
        onPoint={(surfaces) => store.setState({ pointed: surfaces })}
        paintOf={(finish, bake) =>
          paintOf(finish, layingFor(finish, surface, library, option.scheme[surface].laying), bake)
        }
        onLay={(surfaces, finish) => {
          actions.lay(surfaces, finish);
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
