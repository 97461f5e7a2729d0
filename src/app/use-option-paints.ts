import { useSyncExternalStore } from 'react';
import type { SurfaceId } from '../engine/surface';
import { NO_FINISH } from '../model/empty-surface';
import type { Offered } from '../model/offered-finishes';
import type { Finish, Laying, Option } from '../model/project';
import type { SwatchPaint } from '../ui/swatch/swatch-paint';
import { useApp, useAppState } from './context';
import { offeredIn } from './offered';

const libraries = new WeakMap<Offered, ReadonlyMap<string, Finish>>();

/** All that may be laid by id, with what stands in where nothing is chosen. */
function useLibrary(): ReadonlyMap<string, Finish> {
  const offered = useAppState((state) => offeredIn(state));
  const made = libraries.get(offered) ?? new Map([[NO_FINISH.id, NO_FINISH], ...offered.byId]);
  libraries.set(offered, made);
  return made;
}

/**
 * Paints of finishes as laid; the component renders again when a pattern was baked. What lies in the room gets its pattern
 * from the picture, so baking is asked for only where samples are looked through.
 */
export function usePaints(): (finish: Finish, laying: Laying, bake?: boolean) => SwatchPaint {
  const { paints } = useApp();
  const library = useLibrary();
  useSyncExternalStore(paints.subscribe, paints.version);
  return (finish, laying, bake = false) => paints.paintOf(library, finish, laying, bake);
}

/** Paints of what lies on the surfaces of an option. */
export function useOptionPaints(option: Option): (surface: SurfaceId) => SwatchPaint {
  const library = useLibrary();
  const paintOf = usePaints();
  return (surface) => {
    const { finish, laying } = option.scheme[surface];
    return paintOf(library.get(finish)!, laying);
  };
}
