import type { Result } from '../engine/result';
import { parseLibrary } from '../io/library-file';
import { checkingLibrary } from '../io/library-rows';
import { makingFinishes } from '../io/sheet/finishes-of';
import { readSheet } from '../io/sheet/read-sheet';
import { headOf, looksLikeJson } from '../io/sheet/sheet-head';
import type { Sheet } from '../io/sheet/types';
import type { Library } from '../model/library';
import { calculationFailed } from './failure';
import type { FromImport, ToImport } from './import-messages';

/** Rows in one part of an outcome: some milliseconds of work for the page. */
const PART = 500;

/** How often progress is told, and newer choices are looked for. */
const TELL_EVERY_MS = 100;

const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

/**
 * The inner part of the import worker: reads one file, then makes finishes of it as often as the choices change. Newer choices end what is
 * made of older ones.
 */
export function createImportDesk(post: (message: FromImport) => void): (message: ToImport) => Promise<void> {
  let sheet: Sheet | null = null;
  let latest = 0;
  const fail = ({ problem, more = [] }: Extract<Result<unknown>, { ok: false }>) =>
    post({ kind: 'failed', problem, more });
  const tellColors = (share: number) => post({ kind: 'progress', progress: { stage: 'colors', share } });
  const read = async (file: File) => {
    const bytes = await bytesOf(file, (share) => post({ kind: 'progress', progress: { stage: 'bytes', share } }));
    post({ kind: 'progress', progress: { stage: 'rows', share: null } });
    if (looksLikeJson(bytes)) {
      const library = parseLibrary(new TextDecoder().decode(bytes), file.name);
      if (!library.ok) return fail(library);
      return post({
        kind: 'library',
        ...coloredOf(library.value, file.name, tellColors),
        notices: library.notices ?? [],
      });
    }
    const result = readSheet(bytes, file.name);
    if (!result.ok) return fail(result);
    sheet = result.value;
    post({ kind: 'sheet', head: headOf(sheet) });
  };
  const make = async ({ run, choices }: Extract<ToImport, { kind: 'make' }>) => {
    if (!sheet) return;
    latest = run;
    const steps = makingFinishes(sheet, choices);
    for (let told = performance.now(); ; ) {
      const step = steps.next();
      if (step.done) {
        const { kept, refused, ...rest } = step.value;
        for (let i = 0; i < Math.max(kept.length, refused.length); i += PART) {
          post({ kind: 'part', run, part: { kept: kept.slice(i, i + PART), refused: refused.slice(i, i + PART) } });
        }
        return post({ kind: 'made', run, rest });
      }
      if (performance.now() - told < TELL_EVERY_MS) continue;
      told = performance.now();
      const { done, rows } = step.value;
      tellColors(done / Math.max(1, rows));
      await pause();
      if (run !== latest) return;
    }
  };
  return async (message) => {
    try {
      await (message.kind === 'read' ? read(message.file) : make(message));
    } catch (error) {
      fail({ ok: false, problem: calculationFailed('The file', error) });
    }
  };
}

/** A library without the finishes whose colors no surface can have, and these; tells how much of it is looked at. */
function coloredOf(library: Library, file: string, tell: (share: number) => void) {
  const steps = checkingLibrary(library, () => ({ file }));
  for (let told = performance.now(); ; ) {
    const step = steps.next();
    if (step.done) {
      const { kept, refused } = step.value;
      return { library: { ...library, finishes: kept.map(({ finish }) => finish) }, refused };
    }
    if (performance.now() - told < TELL_EVERY_MS) continue;
    told = performance.now();
    tell(step.value / library.finishes.length);
  }
}

/** All bytes of a file; tells how much of it is read. */
async function bytesOf(file: File, tell: (share: number) => void): Promise<Uint8Array> {
  const bytes = new Uint8Array(file.size);
  const reader = file.stream().getReader();
  let told = 0;
  for (let at = 0; ; ) {
    const { done, value } = await reader.read();
    if (done) return bytes.subarray(0, at);
    const part = value.subarray(0, bytes.length - at);
    bytes.set(part, at);
    at += part.length;
    if (performance.now() - told < TELL_EVERY_MS) continue;
    told = performance.now();
    tell(at / Math.max(1, file.size));
  }
}
