import { useMemo, useSyncExternalStore } from 'react';
import type { SurfaceId } from '../engine/surface';
import { NO_FINISH } from '../model/empty-surface';
import type { Finish, Laying, Option } from '../model/project';
import type { SwatchPaint } from '../ui/swatch/swatch-paint';
import { useApp, useAppState } from './context';
import { projectOf } from './state';

/** The project's library by id, with what stands in where nothing is chosen. */
function useLibrary(): ReadonlyMap<string, Finish> {
  const library = useAppState((state) => projectOf(state).library);
  return useMemo(() => new Map([NO_FINISH, ...library].map((finish) => [finish.id, finish])), [library]);
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
