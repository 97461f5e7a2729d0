import type { ReactNode } from 'react';
import type { Option, Project, Revision } from '../../model/project';
import { OpenFileButton } from '../parts/OpenFileButton';
import { FreezeForm } from '../revisions/FreezeForm';
import { PanelFrame } from '../room/PanelFrame';
import { shownName } from '../words/built-in';
import { PROJECTS } from '../words/projects';
import { KeptList, type KeptListProps } from './KeptList';
import { NameField } from './NameField';
import { NoteField } from './NoteField';
import { ProjectLog } from './ProjectLog';
import { RevisionItem } from './RevisionItem';
import './projects.css';

interface ProjectsPanelProps {
  /** As it is kept, without what is only tried. */
  readonly project: Project;
  readonly option: Option;
  readonly kept: Omit<KeptListProps, 'present'>;
  readonly onName: (name: string, continues: boolean) => void;
  readonly onNote: (note: string, continues: boolean) => void;
  readonly onOptionNote: (note: string, continues: boolean) => void;
  readonly onSave: () => void;
  readonly onNewProject: () => void;
  readonly onFile: (file: File) => void;
  readonly onAddNote: (text: string) => void;
  readonly onRemoveNote: (entry: number) => void;
  readonly onFreeze: (name: string, note: string) => void;
  readonly onRenameRevision: (revision: string, name: string) => void;
  readonly onGoBack: (revision: string) => void;
  readonly onRemoveRevision: (revision: string) => void;
  readonly onSaveRevision: (revision: Revision) => void;
  readonly onClose: () => void;
  /** The link to the option on screen. */
  readonly children: ReactNode;
}

/** The present project with its name, notes, log and revisions, and all others kept in this browser. */
export function ProjectsPanel(props: ProjectsPanelProps) {
  const { project, option } = props;
  const { log = [], revisions = [] } = project;
  return (
    <PanelFrame title={PROJECTS.title} opener="projects" onClose={props.onClose}>
      <div className="project-part">
        <NameField
          isLive
          key={`name-${project.id}`}
          label={PROJECTS.name}
          value={project.name}
          whenEmpty={PROJECTS.nameEmpty}
          onName={props.onName}
        />
        <NoteField
          key={`note-${project.id}`}
          label={PROJECTS.note}
          value={shownName(project.note)}
          onNote={props.onNote}
        />
        <NoteField
          key={`note-${project.id}-${option.id}`}
          label={PROJECTS.noteOf(option.name)}
          value={option.note ?? ''}
          onNote={props.onOptionNote}
        />
        <div className="project-row">
          <button type="button" className="button button-outlined" onClick={props.onSave}>
            {PROJECTS.save}
          </button>
        </div>
      </div>
      <section className="project-part room-part" aria-label={PROJECTS.kept}>
        <h3>{PROJECTS.kept}</h3>
        <KeptList {...props.kept} present={project.id} />
        <div className="project-row">
          <button type="button" className="button button-outlined" onClick={props.onNewProject}>
            {PROJECTS.newProject}
          </button>
          <OpenFileButton title={PROJECTS.openFileTitle} accept="application/json,.json" onFile={props.onFile}>
            {PROJECTS.openFile}
          </OpenFileButton>
        </div>
        <p className="small quiet">{PROJECTS.keptNote}</p>
      </section>
      <section className="project-part room-part" aria-label={PROJECTS.log}>
        <h3>{PROJECTS.log}</h3>
        <ProjectLog log={log} onAdd={props.onAddNote} onRemove={props.onRemoveNote} />
      </section>
      <section className="project-part room-part" aria-label={PROJECTS.revisions}>
        <h3>{PROJECTS.revisions}</h3>
        <p className="small quiet">{PROJECTS.revisionsNote}</p>
        <FreezeForm usual={PROJECTS.revisionUsual(revisions.length + 1)} onFreeze={props.onFreeze} />
        <ul className="project-list">
          {revisions.toReversed().map((revision) => (
            <RevisionItem
              key={revision.id}
              revision={revision}
              others={revisions.filter((one) => one !== revision)}
              present={project}
              onRename={(name) => props.onRenameRevision(revision.id, name)}
              onGoBack={() => props.onGoBack(revision.id)}
              onSave={() => props.onSaveRevision(revision)}
              onRemove={() => props.onRemoveRevision(revision.id)}
            />
          ))}
        </ul>
      </section>
      {props.children}
    </PanelFrame>
  );
}
