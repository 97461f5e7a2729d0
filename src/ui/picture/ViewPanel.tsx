import { PanelFrame } from '../room/PanelFrame';
import { VIEW } from '../words/view';
import './view-panel.css';

export interface ViewPanelProps {
  readonly onClose: () => void;
}

/** How one looks at the room. */
export function ViewPanel({ onClose }: ViewPanelProps) {
  return (
    <PanelFrame title={VIEW.title} opener="view" onClose={onClose}>
      <ul className="view-hints small">
        {VIEW.hints.map((hint) => (
          <li key={hint}>{hint}</li>
        ))}
      </ul>
    </PanelFrame>
  );
}
