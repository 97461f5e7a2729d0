import type { StoreApi } from 'zustand/vanilla';
import type { Problem } from '../engine/result';
import type { Region } from '../model/kitchen';
import { type Answers, newProject } from '../model/new-project';
import type { Finish, Project } from '../model/project';
import type { ProjectShelf } from './keeping/shelf';
import { readsUk } from './manner';
import { type AppState, documentOf } from './state';
import { APP_WORDS } from './words';

/** What a new project begins from: the demo, and the finishes and looks of the present project that may go along. */
interface NewProjectParts {
  readonly store: StoreApi<AppState>;
  readonly projects: Pick<ProjectShelf, 'openDocument'>;
  readonly demo: Project;
}

/**
 * Makes a project of the answers and shows it in place of the present one, which stays kept. It begins with the finishes of the demo, and
 * with those of the present project that were said to stay: what belongs to another client stays with that one. What is wrong with it
 * where it cannot be made: nothing changes then.
 */
export function startNewProject({ store, projects, demo }: NewProjectParts, answers: Answers): readonly Problem[] {
  const region = startRegion(store.getState(), demo);
  const made = newProject(answers, startOf(documentOf(store.getState()), demo, region, answers), idAt(new Date()));
  if (!made.ok) return [made.problem, ...(made.more ?? [])];
  void projects.openDocument(made.value, {
    label: APP_WORDS.newProject,
    ...(made.notices && { notices: made.notices }),
  });
  return [];
}

/** Finishes one may choose from for what stays: those of the demo, and one's own. */
export const startLibrary = (present: Project, demo: Project): readonly Finish[] => [
  ...demo.library,
  ...present.library.filter(({ id }) => !demo.library.some((one) => one.id === id)),
];

/** Whose usual sizes a new kitchen takes until one says: one's own last kitchen's; at first those of the UK where one reads UK words. */
export function startRegion(state: AppState, demo: Project): Region {
  const { id, kitchen } = documentOf(state);
  const isFirst = id === demo.id && kitchen.region === demo.kitchen.region;
  return isFirst && readsUk(state) ? 'uk' : kitchen.region;
}

function startOf(present: Project, demo: Project, region: Region, { stays = [] }: Answers): Project {
  const library = startLibrary(present, demo).filter(
    (finish) => demo.library.includes(finish) || stays.some((one) => one.finish === finish.id),
  );
  const { looks: _, ...rest } = demo;
  // A look is entered in the demo to be carried to a kitchen of one's own; one of another project is somebody else's.
  const looks = present.id === demo.id ? present.looks : demo.looks;
  return { ...rest, library, ...(looks && { looks }), kitchen: { ...demo.kitchen, region } };
}

/** The file takes its name from the id: two kitchens begun one after the other are not to be saved over each other. */
const idAt = (date: Date): string =>
  `kitchen-${date.toISOString().slice(0, 19).replace(/[-:]/g, '').replace('T', '-')}`;
