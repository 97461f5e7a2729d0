import { startHistory } from '../../model/history';
import type { Project } from '../../model/project';
import { KEEPING } from '../../ui/words/keeping';
import { chainOf, planChange } from './chain';
import type { Database } from './database';
import { freeId } from './free-id';
import { writeJournal } from './journal';

type Identity = Pick<Project, 'id' | 'name'>;

/** The identity of a copy beside all projects that are kept. */
export async function copyIdentity(database: Database, { id, name }: Identity): Promise<Identity> {
  const all = await database.getAll('projects');
  const names = all.map((one) => one.name);
  return { id: freeId([...all.map((one) => one.id), id], id), name: KEEPING.copyOf(name, [...names, name]) };
}

/** Keeps a copy of a document beside it, which no tab has open; its id. */
export async function keepCopy(database: Database, project: Project): Promise<string> {
  for (;;) {
    const copy = { ...project, ...(await copyIdentity(database, project)) };
    const change = planChange(null, chainOf(startHistory(copy)));
    const outcome = await writeJournal(database, '', change, { name: copy.name, changed: Date.now(), filed: null });
    // Another tab may have taken the same free id in between.
    if (outcome === 'kept') return copy.id;
  }
}
