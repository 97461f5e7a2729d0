import { useMemo, useSyncExternalStore } from 'react';
import { NO_FINISH } from '../../model/empty-surface';
import { type Library, newLibrary } from '../../model/library';
import type { Finish } from '../../model/project';
import { ImportPane } from '../../ui/library/import/ImportPane';
import { LibrariesDialog } from '../../ui/library/LibrariesDialog';
import { PROJECT_LIBRARY } from '../../ui/library/library-props';
import { LIBRARIES } from '../../ui/words/libraries';
import { openImport } from '../../workers/import-client';
import { useApp, useAppState } from '../context';
import { projectChanges } from '../libraries/project-changes';
import { saveLibrary } from '../libraries/save-library';
import { useKeptLibraries } from '../libraries/use-kept-libraries';
import { documentOf } from '../state';

const PLAIN = { layout: 'plain' } as const;

/** The libraries of this browser and the finishes of the project. */
export function LibrariesPane() {
  const { store, actions, paints } = useApp();
  const finishes = useAppState((state) => documentOf(state).library);
  const dropped = useAppState((state) => state.dropped);
  const steps = useAppState((state) => state.librarySteps);
  const kept = useKeptLibraries();
  const takeDropped = () => {
    store.setState({ dropped: null });
    return dropped;
  };
  useSyncExternalStore(paints.subscribe, paints.version);
  const project = useMemo(
    (): Library =>
      newLibrary({
        id: PROJECT_LIBRARY,
        name: LIBRARIES.project,
        note: '',
        finishes: finishes.filter(({ id }) => id !== NO_FINISH.id),
      }),
    [finishes],
  );
  const paintOf = (finish: Finish) => paints.paintOf(alone(finish), finish, PLAIN, true);
  return (
    <LibrariesDialog
      {...kept}
      project={project}
      onProject={(after, label) => {
        const commands = projectChanges(project.finishes, after);
        const [problem] = actions.attempt({ kind: 'together', label, commands });
        if (problem) return { problem };
        const done = documentOf(store.getState());
        return {
          undo: () => {
            if (documentOf(store.getState()) !== done) return false;
            actions.undo();
            return true;
          },
        };
      }}
      steps={steps}
      onSteps={(change) => store.setState((state) => ({ librarySteps: change(state.librarySteps) }))}
      newId={newId}
      paintOf={paintOf}
      onSave={async (library, format) => saveLibrary(library, format)}
      importing={(place) => (
        <ImportPane {...place} takeFirst={takeDropped} openImport={openImport} newId={newId} paintOf={paintOf} />
      )}
      begins={dropped ? 'import' : 'shelf'}
      onClose={() => store.setState({ libraries: false, dropped: null })}
    />
  );
}

/** No two are made in the same thousandth of a second on one device; chance tells devices apart. */
const newId = (): string => `library-${Date.now().toString(36)}-${Math.floor(Math.random() * 1e6).toString(36)}`;

const libraries = new WeakMap<Finish, ReadonlyMap<string, Finish>>();

/** Nothing is laid with a grout here, so a finish is all of the library its sample needs. */
function alone(finish: Finish): ReadonlyMap<string, Finish> {
  const known = libraries.get(finish) ?? new Map([[finish.id, finish]]);
  libraries.set(finish, known);
  return known;
}
