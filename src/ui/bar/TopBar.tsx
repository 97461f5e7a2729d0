import { ClipboardList, Columns2, FolderOpen, Save } from 'lucide-react';
import { useRef } from 'react';
import { PROJECTS } from '../words/projects';
import { BAR } from '../words/top-bar';
import { LedgeMark } from './LedgeMark';
import { MoreMenu, type MoreMenuProps } from './MoreMenu';
import { OptionSwitch, type OptionSwitchProps } from './OptionSwitch';
import { UndoButtons, type UndoButtonsProps } from './UndoButtons';
import './top-bar.css';

export interface TopBarProps extends UndoButtonsProps {
  readonly projectName: string;
  readonly projectsOpen: boolean;
  readonly onProjects: () => void;
  /** Whether and where the project is kept; its place is there also while there is nothing to say. */
  readonly keptText: string;
  readonly isKept: boolean;
  readonly optionSwitch: OptionSwitchProps;
  readonly sideBySide: boolean;
  readonly onSideBySide: (on: boolean) => void;
  readonly onSchedule: () => void;
  readonly onOpen: (file: File) => void;
  readonly onSave: () => void;
  readonly more: MoreMenuProps;
}

/** The bar on top: what this is, which option, and what can be done with the whole project. */
export function TopBar(props: TopBarProps) {
  const canCompare = props.optionSwitch.options.length > 1;
  return (
    <div className="bar">
      <div className="bar-names">
        <LedgeMark />
        <h1 className="bar-product">{BAR.product}</h1>
        <div className="bar-where">
          <button
            type="button"
            className="button bar-project"
            aria-expanded={props.projectsOpen}
            aria-label={PROJECTS.openPanel(props.projectName)}
            title={PROJECTS.openPanel(props.projectName)}
            data-opens="projects"
            onClick={props.onProjects}
          >
            <span className="bar-project-name">{props.projectName}</span>
          </button>
          <p className={`bar-kept ${props.isKept ? '' : 'is-not-kept'}`} role="status">
            {props.keptText}
          </p>
        </div>
      </div>
      <div className="bar-options">
        <OptionSwitch {...props.optionSwitch} />
        <button
          type="button"
          className="button"
          aria-pressed={props.sideBySide && canCompare}
          disabled={!canCompare}
          title={canCompare ? undefined : BAR.onlyOne}
          onClick={() => props.onSideBySide(!props.sideBySide)}
        >
          <Columns2 className="icon" aria-hidden="true" />
          <span className="steady bar-word" data-text={BAR.sideBySide}>
            {BAR.sideBySide}
          </span>
        </button>
      </div>
      <div className="bar-actions">
        <UndoButtons {...props} />
        <button
          type="button"
          className="button bar-file"
          title={BAR.scheduleHint}
          data-opens="schedule"
          onClick={props.onSchedule}
        >
          <ClipboardList className="icon" aria-hidden="true" />
          <span className="bar-word">{BAR.schedule}</span>
        </button>
        <OpenButton onOpen={props.onOpen} />
        <button type="button" className="button bar-file" onClick={props.onSave}>
          <Save className="icon" aria-hidden="true" />
          <span className="bar-word">{BAR.save}</span>
        </button>
        <MoreMenu {...props.more} />
      </div>
    </div>
  );
}

function OpenButton({ onOpen }: { readonly onOpen: (file: File) => void }) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" className="button bar-file" onClick={() => input.current?.click()}>
        <FolderOpen className="icon" aria-hidden="true" />
        <span className="bar-word">{BAR.open}</span>
      </button>
      <input
        ref={input}
        type="file"
        accept="application/json,.json"
        hidden
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file) onOpen(file);
        }}
      />
    </>
  );
}
