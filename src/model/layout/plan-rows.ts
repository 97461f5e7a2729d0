import type { Kitchen } from '../kitchen';
import { baseRow } from './base-row';
import { isFilledMirrored } from './handedness';
import { islandRow } from './island-row';
import { ACROSS, mirrorKitchen } from './mirror-kitchen';
import { mirrorIsland, mirrorRun } from './mirror-rows';
import { overRow } from './over-row';
import type { IslandRows, Rows, RunRows } from './types';

/** Rows of a kitchen as far as they can be planned: null for a run or an island into which its modules do not go. */
export interface TriedRows {
  readonly runs: readonly (RunRows | null)[];
  readonly island: IslandRows | null;
}

/**
 * Fits standard modules into every run and the island, mm; what remains becomes fillers. The rows of a mirrored kitchen are the mirror
 * image of its own. For kitchens not yet checked.
 */
export function tryRows(kitchen: Kitchen): TriedRows {
  if (!isFilledMirrored(kitchen)) return fillRows(kitchen);
  const { width } = kitchen.room;
  const image = mirrorKitchen(kitchen);
  const { runs, island } = fillRows(image);
  return {
    runs: kitchen.runs.map(({ wall }) => {
      const run = runs[image.runs.findIndex((one) => one.wall === ACROSS[wall])] ?? null;
      return run && mirrorRun(width, run);
    }),
    island: island && mirrorIsland(width, island),
  };
}

function fillRows(kitchen: Kitchen): TriedRows {
  return {
    runs: kitchen.runs.map((run) => {
      const base = baseRow(kitchen, run);
      return base && { ...base, ...overRow(kitchen, run, base) };
    }),
    island: kitchen.island && islandRow(kitchen, kitchen.island),
  };
}

/** The rows of a kitchen that fits its room (see `checkKitchen`), mm. Throws for one that does not. */
export function planRows(kitchen: Kitchen): Rows {
  const rows = wholeRows(kitchen, tryRows(kitchen));
  if (!rows) throw new Error(`no modules fit the runs of "${kitchen.name}"`);
  return rows;
}

/** The rows when all of them could be planned. */
export function wholeRows(kitchen: Kitchen, { runs, island }: TriedRows): Rows | null {
  const planned = runs.filter((run) => run !== null);
  if (planned.length < runs.length || (kitchen.island && !island)) return null;
  return { runs: planned, island };
}
