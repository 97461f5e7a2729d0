import { Ellipsis } from 'lucide-react';
import { type ReactNode, useId, useState } from 'react';
import type { LengthUnit } from '../../model/length-text';
import type { TradeWords } from '../../model/trade-words';
import { Choices } from '../parts/Choices';
import { SeenBy, type SeenByProps } from '../picture/SeenBy';
import { LIBRARIES } from '../words/libraries';
import { LOOK } from '../words/look';
import { QUESTIONS } from '../words/questions';
import { SHOWROOM } from '../words/showroom';
import { BAR } from '../words/top-bar';

export type Theme = 'light' | 'dark' | 'system';

export interface MoreMenuProps {
  readonly sheen: boolean;
  readonly onSheen: (on: boolean) => void;
  /** Null where no picture is drawn. */
  readonly seenBy: SeenByProps | null;
  readonly letterKeys: boolean;
  readonly onLetterKeys: (on: boolean) => void;
  readonly theme: Theme;
  readonly onTheme: (theme: Theme) => void;
  readonly words: TradeWords;
  readonly onWords: (words: TradeWords) => void;
  /** Null: as is usual in the kitchen's region. */
  readonly unit: LengthUnit | null;
  readonly onUnit: (unit: LengthUnit | null) => void;
  readonly onKeysHelp: () => void;
  readonly onNewProject: () => void;
  readonly onCopiedLook: () => void;
  readonly onLibraries: () => void;
  readonly onHandover: () => void;
  /** Null where the bar has no room for more. */
  readonly onCopyOption: (() => void) | null;
  /** Null for the last one. */
  readonly onRemoveOption: (() => void) | null;
  /** What is said of the program itself. */
  readonly about: ReactNode;
  readonly onShowroom: () => void;
  /** Null where the browser cannot. */
  readonly onFullScreen: (() => void) | null;
}

const OPTION_ACTS = ['onCopyOption', 'onRemoveOption'] as const;

/** What is seldom needed, one step away: a native popover, so Esc and a click outside close it. */
export function MoreMenu(props: MoreMenuProps) {
  const panel = useId();
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" className="button bar-file" popoverTarget={panel} aria-expanded={open} data-opens="look">
        <Ellipsis className="icon" aria-hidden="true" />
        <span className="bar-word">{BAR.more}</span>
      </button>
      <section
        id={panel}
        popover="auto"
        className="more"
        aria-label={BAR.more}
        onToggle={(event) => setOpen(event.newState === 'open')}
      >
        <button
          type="button"
          className="button button-outlined"
          popoverTarget={panel}
          popoverTargetAction="hide"
          onClick={props.onNewProject}
        >
          {QUESTIONS.open}
        </button>
        <button
          type="button"
          className="button button-outlined"
          popoverTarget={panel}
          popoverTargetAction="hide"
          onClick={props.onCopiedLook}
        >
          {LOOK.title}
        </button>
        <button
          type="button"
          className="button button-outlined"
          popoverTarget={panel}
          popoverTargetAction="hide"
          onClick={props.onLibraries}
        >
          {LIBRARIES.open}
        </button>
        <button
          type="button"
          className="button button-outlined"
          popoverTarget={panel}
          popoverTargetAction="hide"
          onClick={props.onHandover}
        >
          {BAR.handover}
        </button>
        <div className="more-options">
          {OPTION_ACTS.map((act) => (
            <button
              key={act}
              type="button"
              className="button button-outlined"
              disabled={props[act] === null}
              title={act === 'onCopyOption' && props[act] === null ? BAR.mostOptions : undefined}
              onClick={(event) => {
                // By hand: a button that its own click disables would leave the menu open.
                event.currentTarget.closest<HTMLElement>('[popover]')?.hidePopover();
                props[act]?.();
              }}
            >
              {act === 'onCopyOption' ? BAR.copyOption : BAR.removeOption}
            </button>
          ))}
        </div>
        <label className="check">
          <input type="checkbox" checked={props.sheen} onChange={(event) => props.onSheen(event.target.checked)} />
          {BAR.sheen}
        </label>
        {props.seenBy && <SeenBy {...props.seenBy} />}
        <label className="check">
          <input
            type="checkbox"
            checked={props.letterKeys}
            onChange={(event) => props.onLetterKeys(event.target.checked)}
          />
          {BAR.letterKeys}
        </label>
        <div className="field">
          <span className="label">{BAR.theme}</span>
          <Choices label={BAR.theme} choices={BAR.themes} chosen={props.theme} onChoose={props.onTheme} />
        </div>
        <div className="field">
          <span className="label">{BAR.words}</span>
          <Choices label={BAR.words} choices={BAR.tradeWords} chosen={props.words} onChoose={props.onWords} />
        </div>
        <div className="field">
          <span className="label">{BAR.units}</span>
          <Choices
            label={BAR.units}
            choices={BAR.lengthUnits}
            chosen={props.unit ?? 'usual'}
            onChoose={(unit) => props.onUnit(unit === 'usual' ? null : unit)}
          />
        </div>
        <button type="button" className="button button-outlined" onClick={props.onKeysHelp}>
          {BAR.keys}
        </button>
        {props.onFullScreen && (
          <button type="button" className="button button-outlined" onClick={props.onFullScreen}>
            {BAR.fullScreen}
          </button>
        )}
        <button
          type="button"
          className="button button-outlined"
          popoverTarget={panel}
          popoverTargetAction="hide"
          onClick={props.onShowroom}
        >
          {SHOWROOM.open}
        </button>
        {props.about}
        <p className="small quiet">{BAR.privacy}</p>
      </section>
    </>
  );
}
