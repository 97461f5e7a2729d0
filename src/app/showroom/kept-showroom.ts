import { parseProject, projectText } from '../../io/project-file';
import type { OpenDatabase } from '../keeping/database';
import type { Showroom, ShowroomRules } from './showroom-state';
import { startProject } from './start-project';

/** Says before anything is read that the mode is on. */
const MARK = 'upstand-showroom';
const NOTE = 'showroom';

/** As it is kept: the start project as the text of its file, so that it is read as any file is. */
interface KeptShowroom extends ShowroomRules {
  readonly start: string;
}

const marked = (): boolean => {
  try {
    return localStorage.getItem(MARK) !== null;
  } catch {
    return false;
  }
};

/** The showroom as it was set up last, whether or not it is on; null where there is none or it cannot be read. */
export async function keptShowroom(open: OpenDatabase): Promise<Showroom | null> {
  try {
    const kept = (await (await open()).get('notes', NOTE)) as KeptShowroom | undefined;
    if (!kept) return null;
    const start = parseProject(kept.start);
    return start.ok ? { ...kept, start: start.value } : null;
  } catch {
    return null;
  }
}

/**
 * The showroom that is on when the page is opened; null, at once, where none is. `lost`: one is on, but the browser no longer has it: the mode
 * is off then.
 */
export async function showroomAtStart(open: OpenDatabase): Promise<Showroom | 'lost' | null> {
  if (!marked()) return null;
  const showroom = await keptShowroom(open);
  if (showroom) return { ...showroom, start: startProject(showroom) };
  turnShowroomOff();
  return 'lost';
}

/** Keeps a showroom and turns the mode on from the next start of the page. Rejects where the browser keeps nothing. */
export async function turnShowroomOn(open: OpenDatabase, showroom: Showroom): Promise<void> {
  const kept: KeptShowroom = { ...showroom, start: projectText(showroom.start) };
  await (await open()).put('notes', kept, NOTE);
  localStorage.setItem(MARK, 'on');
}

/** Turns the mode off from the next start of the page; how it was set up stays kept. */
export function turnShowroomOff(): void {
  localStorage.removeItem(MARK);
}
