import { ProjectsPanel } from '../../ui/projects/ProjectsPanel';
import { useApp, useAppState } from '../context';
import { dropFiles } from '../drop-file';
import { saveProject, saveRevision } from '../files';
import { chosenOption, documentOf } from '../state';
import { useKeptProjects } from '../use-kept-projects';
import { LinkPane } from './LinkPane';

/** The present project with its log and revisions, and all that are kept in this browser. */
export function ProjectsPane() {
  const { store, actions, projects } = useApp();
  const project = useAppState(documentOf);
  const option = useAppState(chosenOption);
  const kept = useKeptProjects();
  // Kept at its first change.
  const isDemo = useAppState((state) => state.keeping.state === 'nothing');
  return (
    <ProjectsPanel
      project={project}
      option={project.options.find(({ id }) => id === option.id) ?? option}
      kept={{
        ...kept,
        isDemo,
        onOpen: (id) => void projects.open(id),
        onCopy: async (id) => (await projects.copy(id)) !== null,
        onRemove: projects.remove,
        onBringBack: projects.bringBack,
        onDemo: () => void projects.openDemo(),
      }}
      onName={(name, continues) => actions.run({ kind: 'rename', what: 'project', name }, continues)}
      onNote={(note, continues) => actions.run({ kind: 'set-note', what: 'project', note }, continues)}
      onOptionNote={(note, continues) =>
        actions.run({ kind: 'set-note', what: 'option', option: option.id, note }, continues)
      }
      onSave={() => saveProject(store)}
      onNewProject={() => store.setState({ asking: true })}
      onFile={(file) => void dropFiles(store, { actions, projects }, [file])}
      onAddNote={actions.note}
      onRemoveNote={(entry) => actions.run({ kind: 'remove-log', entry })}
      onFreeze={actions.freeze}
      onRenameRevision={(revision, name) => actions.run({ kind: 'rename-revision', revision, name })}
      onGoBack={actions.goBack}
      onRemoveRevision={actions.removeRevision}
      onSaveRevision={(revision) => saveRevision(project, revision)}
      onClose={() => store.setState({ panel: null })}
    >
      <LinkPane project={project} option={project.options.find(({ id }) => id === option.id) ?? option} />
    </ProjectsPanel>
  );
}
