import type { ReactNode } from 'react';
import { Choices } from '../parts/Choices';
import { PanelFrame } from '../room/PanelFrame';
import { reread } from '../words/spoken';
import { VIEW } from '../words/view';
import { EyeForm, type EyeFormProps } from './EyeForm';
import './view-panel.css';

/** What the picture shows of each color. */
export type ShownAs = keyof typeof VIEW.modes;

export interface ViewPanelProps {
  /** Null where no room is drawn. */
  readonly eye: EyeFormProps | null;
  readonly shownAs: ShownAs;
  readonly onShownAs: (shownAs: ShownAs) => void;
  readonly marksClipped: boolean;
  readonly onMarksClipped: (on: boolean) => void;
  /** The form that saves the picture. */
  readonly keep: ReactNode;
  readonly onClose: () => void;
}

const MODES = reread(() => (Object.keys(VIEW.modes) as ShownAs[]).map((id) => ({ id, name: VIEW.modes[id] })));

/** How one looks at the room: how high the eye is, what is shown of the colors, and how to keep the picture. */
export function ViewPanel({ eye, shownAs, onShownAs, marksClipped, onMarksClipped, keep, onClose }: ViewPanelProps) {
  return (
    <PanelFrame title={VIEW.title} opener="view" onClose={onClose}>
      {eye && <EyeForm {...eye} />}
      <div className="view-part room-part">
        <h3>{VIEW.show}</h3>
        <Choices label={VIEW.show} choices={MODES} chosen={shownAs} onChoose={onShownAs} />
        <p className="small quiet">{VIEW.modesMean[shownAs]}</p>
        <label className="check">
          <input type="checkbox" checked={marksClipped} onChange={({ target }) => onMarksClipped(target.checked)} />
          {VIEW.clipped}
        </label>
        {marksClipped && <p className="small quiet">{VIEW.clippedMean}</p>}
      </div>
      {keep}
      <div className="view-part room-part">
        <h3>{VIEW.hands}</h3>
        <dl className="view-hints small">
          {VIEW.hints.map(([how, does]) => (
            <div key={how}>
              <dt>{how}</dt>
              <dd>{does}</dd>
            </div>
          ))}
        </dl>
      </div>
    </PanelFrame>
  );
}
