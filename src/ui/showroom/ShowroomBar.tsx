import { Columns2, ListChecks, RotateCcw } from 'lucide-react';
import { LedgeMark } from '../bar/LedgeMark';
import { OptionSwitch } from '../bar/OptionSwitch';
import type { TopBarProps } from '../bar/TopBar';
import { UndoButtons } from '../bar/UndoButtons';
import { SHOWROOM } from '../words/showroom';
import { BAR } from '../words/top-bar';
import { StaffMenu, type StaffMenuProps } from './StaffMenu';
import '../bar/top-bar.css';
import './showroom.css';

export interface ShowroomBarProps
  extends Pick<
    TopBarProps,
    'optionSwitch' | 'sideBySide' | 'onSideBySide' | 'undoLabel' | 'redoLabel' | 'onUndo' | 'onRedo'
  > {
  readonly name: string;
  readonly onList: () => void;
  readonly onStartOver: () => void;
  /** Null where there is nothing to bring back. */
  readonly onBringBack: (() => void) | null;
  readonly staff: StaffMenuProps;
}

/** The bar of the showroom mode: whose screen it is, the options, and what a customer can do with all of it. */
export function ShowroomBar(props: ShowroomBarProps) {
  const { optionSwitch, onBringBack } = props;
  return (
    <div className="bar showroom-bar">
      <div className="bar-names">
        <LedgeMark />
        <h1 className="bar-product">{SHOWROOM.bar(props.name)}</h1>
      </div>
      <div className="bar-options">
        {optionSwitch.options.length > 1 && (
          <>
            <OptionSwitch {...optionSwitch} />
            <button
              type="button"
              className="button"
              aria-pressed={props.sideBySide}
              onClick={() => props.onSideBySide(!props.sideBySide)}
            >
              <Columns2 className="icon" aria-hidden="true" />
              <span className="steady bar-word" data-text={BAR.sideBySide}>
                {BAR.sideBySide}
              </span>
            </button>
          </>
        )}
      </div>
      <div className="bar-actions">
        <UndoButtons {...props} />
        <button type="button" className="button" onClick={props.onList}>
          <ListChecks className="icon" aria-hidden="true" />
          <span className="bar-word">{SHOWROOM.listShort}</span>
        </button>
        <button type="button" className="button button-outlined" onClick={props.onStartOver}>
          <RotateCcw className="icon" aria-hidden="true" />
          {SHOWROOM.startOver}
        </button>
        <StaffMenu {...props.staff} />
      </div>
      <div className="showroom-back" role="status">
        {onBringBack && (
          <>
            <p>{SHOWROOM.startedOver}</p>
            <button type="button" className="button button-outlined" onClick={onBringBack}>
              {SHOWROOM.bringBack}
            </button>
            <p className="small quiet">{SHOWROOM.backWhile}</p>
          </>
        )}
      </div>
    </div>
  );
}
