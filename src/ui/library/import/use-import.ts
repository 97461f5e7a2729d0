import { useEffect, useRef, useState } from 'react';
import type { Problem } from '../../../engine/result';
import type { ImportDesk, ImportEvents, ImportProgress, SheetHead } from '../../../io/sheet/sheet-head';
import type { ImportChoices, ImportOutcome, ImportQuestion, RefusedRow } from '../../../io/sheet/types';
import type { Library } from '../../../model/library';
import { IMPORT } from '../../words/import';
import { PROBLEMS } from '../../words/problems';

export type OpenImport = (file: File, events: ImportEvents) => ImportDesk;

/** How far an import is. */
export type ImportState =
  | { readonly at: 'start'; readonly problems: readonly Problem[] }
  | { readonly at: 'reading'; readonly file: string; readonly progress: ImportProgress }
  | {
      readonly at: 'library';
      readonly library: Library;
      readonly refused: readonly RefusedRow[];
      readonly notices: readonly Problem[];
    }
  | SheetState;

/** A table that was read. */
export interface SheetState {
  readonly at: 'sheet';
  readonly head: SheetHead;
  readonly choices: ImportChoices;
  /** Of the choices before, while it is worked out again; null at first. */
  readonly outcome: ImportOutcome | null;
  readonly isWorking: boolean;
  /** Of the colors, 0-1; null where it is not known yet. */
  readonly share: number | null;
  /** Everything that was asked so far, so that an answer can be changed. */
  readonly asked: readonly ImportQuestion[];
}

/** Ten thousand finishes with spectra have ten megabytes. More than this is no file of finishes, and takes the memory of a phone. */
const MOST_MEGABYTES = 64;
const BYTES_PER_MEGABYTE = 1e6;

const START: ImportState = { at: 'start', problems: [] };

export interface Import {
  readonly state: ImportState;
  readonly read: (file: File) => void;
  readonly choose: (choices: ImportChoices) => void;
  /** Ends what is going on and begins anew. */
  readonly stop: () => void;
}

/** Reads a file and makes finishes of it anew at every choice. What came too late is dropped with its desk. */
export function useImport(openImport: OpenImport): Import {
  const [state, setState] = useState<ImportState>(START);
  const desk = useRef<ImportDesk | null>(null);
  useEffect(() => () => desk.current?.close(), []);
  const end = () => {
    desk.current?.close();
    desk.current = null;
  };
  const fail = (problem: Problem, more: readonly Problem[] = []) => {
    end();
    setState({ at: 'start', problems: [problem, ...more] });
  };
  const onSheet = (change: (before: SheetState) => SheetState) =>
    setState((before) => (before.at === 'sheet' ? change(before) : before));
  const read = (file: File) => {
    end();
    const problem = beforeReading(file);
    if (problem) return fail(problem);
    setState({ at: 'reading', file: file.name, progress: { stage: 'bytes', share: 0 } });
    const opened: ImportDesk = openImport(file, {
      progress: (progress) =>
        setState((before) => {
          if (before.at === 'reading') return { ...before, progress };
          return before.at === 'sheet' ? { ...before, share: progress.share } : before;
        }),
      failed: fail,
      library: (library, refused, notices) => {
        end();
        setState({ at: 'library', library, refused, notices });
      },
      sheet: (head) => {
        setState({ at: 'sheet', head, choices: {}, outcome: null, isWorking: true, share: null, asked: [] });
        opened.make({});
      },
      outcome: (outcome) =>
        onSheet((before) => ({ ...before, outcome, isWorking: false, asked: askedAfter(before.asked, outcome) })),
    });
    desk.current = opened;
  };
  return {
    state,
    read,
    choose: (choices) => {
      onSheet((before) => ({ ...before, choices, isWorking: true, share: null }));
      desk.current?.make(choices);
    },
    stop: () => {
      end();
      setState(START);
    },
  };
}

function beforeReading(file: File): Problem | null {
  const at = { file: file.name };
  const megabytes = Math.ceil(file.size / BYTES_PER_MEGABYTE);
  if (megabytes > MOST_MEGABYTES) {
    return {
      code: 'file-too-large',
      text: IMPORT.tooLarge(megabytes, MOST_MEGABYTES),
      at,
      remedy: IMPORT.tooLargeRemedy,
    };
  }
  if (file.size === 0) return { code: 'empty-file', text: IMPORT.empty, at, remedy: PROBLEMS.unreadableRemedy };
  return null;
}

/** What was asked before and is no longer open stays, with no rows waiting. */
export function askedAfter(
  asked: readonly ImportQuestion[],
  { questions }: Pick<ImportOutcome, 'questions'>,
): readonly ImportQuestion[] {
  const open = (about: ImportQuestion['about']) => questions.find((one) => one.about === about);
  return [
    ...asked.map((one) => open(one.about) ?? { ...one, rows: 0 }),
    ...questions.filter(({ about }) => !asked.some((one) => one.about === about)),
  ];
}
