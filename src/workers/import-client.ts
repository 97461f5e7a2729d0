import type { ImportDesk, ImportEvents } from '../io/sheet/sheet-head';
import type { KeptRow, RefusedRow } from '../io/sheet/types';
import { calculationFailed } from './failure';
import type { FromImport, ToImport } from './import-messages';

/** Reads a file in a worker of its own, which ends with it: to cancel is to end the worker. */
export function openImport(file: File, events: ImportEvents): ImportDesk {
  const worker = new Worker(new URL('./import.worker.ts', import.meta.url), { type: 'module', name: 'import' });
  let run = 0;
  let kept: KeptRow[] = [];
  let refused: RefusedRow[] = [];
  worker.onmessage = ({ data }: MessageEvent<FromImport>) => {
    switch (data.kind) {
      case 'progress':
        return events.progress(data.progress);
      case 'sheet':
        return events.sheet(data.head);
      case 'library':
        return events.library(data.library, data.refused, data.notices);
      case 'failed':
        return events.failed(data.problem, data.more);
      case 'part':
        if (data.run !== run) return;
        kept.push(...data.part.kept);
        refused.push(...data.part.refused);
        return;
      case 'made':
        if (data.run === run) events.outcome({ kept, refused, ...data.rest });
    }
  };
  worker.onerror = (event) => {
    event.preventDefault();
    events.failed(calculationFailed('The file', event.message));
  };
  const ask = (message: ToImport) => worker.postMessage(message);
  ask({ kind: 'read', file });
  return {
    make: (choices) => {
      run++;
      kept = [];
      refused = [];
      ask({ kind: 'make', run, choices });
    },
    close: () => worker.terminate(),
  };
}
