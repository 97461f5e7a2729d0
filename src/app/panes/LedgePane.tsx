import { useMemo } from 'react';
import type { Assessment } from '../../engine/judge/assessment';
import type { SurfaceId } from '../../engine/surface';
import { likelySurfaces, presentSurfaces } from '../../kitchen/present-surfaces';
import { nextOpen } from '../../model/decision-order';
import { Ledge } from '../../ui/ledge/Ledge';
import { type LedgeSample, ledgeSamples } from '../../ui/ledge/ledge-samples';
import { useSpoken } from '../../ui/parts/use-spoken';
import { flatPaint } from '../../ui/swatch/swatch-color';
import type { SwatchPaint } from '../../ui/swatch/swatch-paint';
import { useApp, useAppState } from '../context';
import { projectOf, shownOption } from '../state';
import { usePaints } from '../use-option-paints';

export function LedgePane() {
  const { store } = useApp();
  const option = useAppState(shownOption);
  const library = useAppState((state) => projectOf(state).library);
  const present = useAppState((state) =>
    state.room ? presentSurfaces(state.room) : likelySurfaces(projectOf(state).kitchen),
  );
  const assessment = useAppState((state) => state.assessments[shownOption(state).id] ?? null);
  const drawer = useAppState((state) => state.drawer);
  const pointed = useAppState((state) => state.pointed);
  const paintOf = usePaints();
  const rows = useSpoken(() => ledgeSamples(option, library, present), [option, library, present]);
  const here = useMemo(() => installedPaints(assessment), [assessment]);
  const next = nextOpen(option, present);
  const nextSample = [...rows.upright, ...rows.flat].find((sample) => next && sample.surfaces.includes(next));
  return (
    <Ledge
      rows={rows}
      next={nextSample?.name ?? null}
      paintOf={(sample) => paintOf(sample.finish, sample.laying)}
      groutPaintOf={(sample) => (sample.grout ? paintOf(sample.grout, { layout: 'plain' }) : null)}
      hereOf={(sample: LedgeSample) => here.get(sample.id) ?? null}
      open={drawer}
      outlined={pointed}
      onOpen={(sample) =>
        store.setState((state) => ({ drawer: sample.id, drawerOpened: state.drawerOpened + 1, pointed: [] }))
      }
      onDecisions={() => store.setState({ panel: 'decisions', reading: null })}
      onPoint={(surfaces) => store.setState({ pointed: surfaces })}
    />
  );
}

/** How each surface reads in place, where most of it is seen. */
function installedPaints(assessment: Assessment | null): ReadonlyMap<SurfaceId, SwatchPaint> {
  return new Map(
    (assessment?.surfaces ?? []).flatMap((surface) => {
      const [most] = [...surface.installed].sort((a, b) => b.view_share - a.view_share);
      return most ? [[surface.surface, flatPaint(most.lab_d65)] as const] : [];
    }),
  );
}
