import * as v from 'valibot';
import { parseProject, projectText } from '../../io/project-file';
import type { OpenDatabase } from '../keeping/database';
import type { Showroom } from './showroom-state';
import { startProject } from './start-project';

/** Says before anything is read that the mode is on. */
const MARK = 'upstand-showroom';
const NOTE = 'showroom';

/** As it is kept: the start project as the text of its file, so that it is read as any file is. */
const noteSchema = v.object({
  name: v.string(),
  range: v.object({ project: v.boolean(), libraries: v.array(v.string()) }),
  // Absent where an older version kept it: the first one then.
  option: v.optional(v.string(), ''),
  minutes: v.pipe(v.number(), v.minValue(0.1), v.maxValue(24 * 60)),
  fillsScreen: v.boolean(),
  typesIn: v.boolean(),
  start: v.string(),
});
type ShowroomNote = v.InferOutput<typeof noteSchema>;

/** A store that takes longer does not hold the page up any more, ms. */
const MOST_WAIT_MS = 4000;
/** How often a store that fails is asked, and the pause between, ms. */
const TRIES = 3;
const PAUSE_MS = 400;

const isMarked = (): boolean => {
  try {
    return localStorage.getItem(MARK) !== null;
  } catch {
    return false;
  }
};

/** What a kept note says; null where it is no note of a showroom, or its project cannot be read. */
export function showroomOfNote(note: unknown): Showroom | null {
  const read = v.safeParse(noteSchema, note);
  if (!read.success) return null;
  const start = parseProject(read.output.start);
  return start.ok ? { ...read.output, start: start.value } : null;
}

const readNote = async (open: OpenDatabase): Promise<unknown> => (await open()).get('notes', NOTE);

/** The showroom as it was set up last, whether or not it is on; null where there is none or it cannot be read. */
export async function keptShowroom(open: OpenDatabase): Promise<Showroom | null> {
  try {
    return showroomOfNote(await readNote(open));
  } catch {
    return null;
  }
}

/** The mode is on, but cannot begin: the browser does not answer for now, or what it kept cannot be read. */
export type Stuck = 'unanswered' | 'unreadable';

/**
 * The showroom that is on when the page is opened; null, at once, where none is. `lost`: one is on, but the browser no longer has it: the mode
 * is off then. It stays on through everything else, for a customer is not to get to the project of staff because a store failed once.
 */
export async function showroomAtStart(
  open: OpenDatabase,
  { most_ms, pause_ms } = { most_ms: MOST_WAIT_MS, pause_ms: PAUSE_MS },
): Promise<Showroom | 'lost' | Stuck | null> {
  if (!isMarked()) return null;
  const late = new Promise<typeof UNANSWERED>((resolve) => setTimeout(() => resolve(UNANSWERED), most_ms));
  const note = await Promise.race([askedAgain(open, pause_ms), late]);
  if (note === UNANSWERED) return 'unanswered';
  if (note === undefined) {
    turnShowroomOff();
    return 'lost';
  }
  const showroom = showroomOfNote(note);
  return showroom ? { ...showroom, start: startProject(showroom) } : 'unreadable';
}

const UNANSWERED = Symbol('unanswered');

/** The note, asked for again where that fails; undefined where there is none. */
async function askedAgain(open: OpenDatabase, pause_ms: number): Promise<unknown> {
  for (let tried = 1; ; tried++) {
    try {
      return await readNote(open);
    } catch {
      if (tried === TRIES) return UNANSWERED;
      await new Promise((resolve) => setTimeout(resolve, pause_ms));
    }
  }
}

/** Keeps a showroom and turns the mode on from the next start of the page. Rejects where the browser keeps nothing. */
export async function turnShowroomOn(open: OpenDatabase, showroom: Showroom): Promise<void> {
  const note: ShowroomNote = {
    ...v.parse(v.omit(noteSchema, ['start']), showroom),
    start: projectText(showroom.start),
  };
  await (await open()).put('notes', note, NOTE);
  localStorage.setItem(MARK, 'on');
}

/** Turns the mode off from the next start of the page; how it was set up stays kept. */
export function turnShowroomOff(): void {
  localStorage.removeItem(MARK);
}
