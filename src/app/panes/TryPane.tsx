import { useMemo } from 'react';
import { SURFACES } from '../../engine/surface';
import { presentSurfaces } from '../../kitchen/present-surfaces';
import { optionById } from '../../model/commands';
import { relaidSurfaces } from '../../model/decision-path';
import { againstBefore } from '../../ui/try/against-before';
import { TryBar } from '../../ui/try/TryBar';
import { retold } from '../../ui/words/spoken';
import type { SettledMoved } from '../../ui/words/try-out';
import { useApp, useAppState } from '../context';
import { documentOf, projectOf, type TryOut } from '../state';

/** Gravest first. */
const SETTLED = ['fixed', 'ordered', 'decided'] as const satisfies readonly SettledMoved['state'][];

/** The bar of a change on trial; nothing while there is none. */
export function TryPane() {
  const { actions } = useApp();
  const tryOut = useAppState((state) => state.tryOut);
  const kept = useAppState((state) => tryOut && optionById(documentOf(state), tryOut.option));
  const tried = useAppState((state) => tryOut && optionById(projectOf(state), tryOut.option));
  const room = useAppState((state) => state.room);
  const against = useAgainstBefore(tryOut);
  const moves = useMemo(() => {
    const present = room ? presentSurfaces(room) : SURFACES;
    return kept && tried ? relaidSurfaces(kept, tried).filter((one) => present.includes(one)) : [];
  }, [kept, tried, room]);
  if (!tryOut) return null;
  const settled = SETTLED.map((state) => ({
    state,
    surfaces: moves.filter((one) => kept?.scheme[one].state === state),
  })).filter(({ surfaces }) => surfaces.length > 0);
  return (
    <TryBar
      label={retold(tryOut.label)}
      option={tried?.name ?? ''}
      moves={moves}
      settled={settled}
      against={against}
      onKeep={actions.keepTry}
      onDrop={actions.dropTry}
      takesFocus={!tryOut.keepsFocus}
    />
  );
}

/** What a trial does to the findings, once they are held. */
function useAgainstBefore(tryOut: TryOut | null): Parameters<typeof TryBar>[0]['against'] {
  const now = useAppState((state) => tryOut && state.assessments[tryOut.option]);
  const isStale = useAppState((state) => tryOut !== null && state.stale.includes(tryOut.option));
  const setting = useAppState((state) => state.setting);
  const before = tryOut?.before ?? null;
  return useMemo(() => {
    if (!before) return null;
    if (before.setting.id !== setting) return 'other-light';
    const isHeld = now && !isStale && now.status !== 'pending' && now.setting.id === setting;
    return isHeld ? againstBefore(before.warnings, now.warnings) : 'comparing';
  }, [before, now, isStale, setting]);
}
