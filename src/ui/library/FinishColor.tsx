import type { Finish } from '../../model/project';
import { ColorBox } from '../drawer/ColorBox';
import { ColorDetails } from '../drawer/ColorDetails';
import { Menu } from '../drawer/Menu';
import { isNumbers, type OwnFinishEntry, withKind } from '../drawer/own-finish';
import { TYPE_IN } from '../words/drawer';
import { FINISH_FORM } from '../words/libraries';
import { reread } from '../words/spoken';

interface FinishColorProps {
  /** Null: a new one, which needs a color. */
  readonly finish: Finish | null;
  /** Another color as typed; null: as it is. */
  readonly color: OwnFinishEntry | null;
  readonly isWrong: boolean;
  readonly meaningId: string;
  readonly onColor: (change: (before: OwnFinishEntry | null) => OwnFinishEntry | null) => void;
}

const KINDS = reread(() =>
  (['numbers', 'munsell', 'hex', 'lrv', 'spectrum'] as const).map((id) => [id, TYPE_IN.kinds[id]] as const),
);

/** Another color for a finish of one color; patterns keep theirs. */
export function FinishColor({ finish, color, isWrong, meaningId, onColor }: FinishColorProps) {
  const colors = finish?.components.length ?? 1;
  if (colors > 1) return <p className="small quiet">{FINISH_FORM.manyColors(colors)}</p>;
  if (color === null) {
    return (
      <button
        type="button"
        className="button button-outlined"
        onClick={() =>
          onColor(() => ({ kind: 'lab', value: '', name: '', class: finish?.class ?? 'paint', sheen: 'satin' }))
        }
      >
        {FINISH_FORM.changeColor}
      </button>
    );
  }
  return (
    <div className="finish-color">
      <Menu
        label={TYPE_IN.kind}
        value={isNumbers(color.kind) ? 'numbers' : color.kind}
        choices={KINDS}
        onChoose={(kind) => onColor((before) => before && withKind(before, kind === 'numbers' ? 'lab' : kind))}
      />
      <ColorBox
        entry={color}
        isWrong={isWrong}
        meaningId={meaningId}
        onEntry={(change) => onColor((before) => before && change(before))}
      />
      <div className="finish-color-details">
        <ColorDetails entry={color} onChange={(changes) => onColor((before) => before && { ...before, ...changes })} />
      </div>
      {finish && (
        <button type="button" className="button button-outlined" onClick={() => onColor(() => null)}>
          {FINISH_FORM.keepColor}
        </button>
      )}
    </div>
  );
}
