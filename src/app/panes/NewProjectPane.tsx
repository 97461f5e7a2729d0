import { useMemo } from 'react';
import type { SurfaceId } from '../../engine/surface';
import { candidatesFor } from '../../model/finish-candidates';
import { NewProject } from '../../ui/questions/NewProject';
import { useApp, useAppState } from '../context';
import { saveProject } from '../files';
import { startLibrary, startNewProject, startRegion } from '../start-new-project';
import { documentOf, isUnsaved } from '../state';

/** The questions of a new project. */
export function NewProjectPane() {
  const { store, projects, demo } = useApp();
  const present = useAppState(documentOf);
  const library = useMemo(() => startLibrary(present, demo), [present, demo]);
  const region = useAppState((state) => startRegion(state, demo));
  const unit = useAppState((state) => state.lengthUnit);
  const unsaved = useAppState(isUnsaved);
  return (
    <NewProject
      candidates={(surface: SurfaceId) => candidatesFor(library, surface)}
      region={region}
      unit={unit}
      onUnit={(lengthUnit) => store.setState({ lengthUnit })}
      isUnsaved={unsaved}
      onSave={() => saveProject(store)}
      onMake={(answers) => {
        const problems = startNewProject({ store, projects, demo }, answers);
        // The kitchen that was made is what one looks at next, with the message above it.
        if (problems.length === 0) {
          store.setState({ panel: null, drawer: null });
          window.scrollTo(0, 0);
        }
        return problems;
      }}
      onClose={() => store.setState({ asking: false })}
    />
  );
}
