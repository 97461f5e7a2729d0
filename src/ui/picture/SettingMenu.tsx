import { Ellipsis } from 'lucide-react';
import { useId, useRef, useState } from 'react';
import type { Setting } from '../../model/project';
import { PICTURE } from '../words/picture';

export interface SettingMenuProps {
  readonly setting: Setting;
  readonly settings: readonly Setting[];
  /** Gives back what is wrong with the name, or null. */
  readonly onCopy: (name: string) => string | null;
  readonly onRename: (name: string) => string | null;
  readonly onRemove: () => void;
  readonly open: boolean;
  readonly onOpen: (open: boolean) => void;
}

/** More settings than a row of choices holds. */
const MOST_SETTINGS = 6;
const MOST_LETTERS = 60;

/** Keeps the light on screen as a setting of its own, renames or removes it: one step away from the row of settings. */
export function SettingMenu(props: SettingMenuProps) {
  const { setting, settings, onCopy, onRename, onRemove, open, onOpen } = props;
  const id = useId();
  const button = useRef<HTMLButtonElement>(null);
  const [typed, setTyped] = useState<{ readonly of: string; readonly name: string } | null>(null);
  const [wrong, setWrong] = useState<string | null>(null);
  const of = `${setting.id}/${setting.name}`;
  const name = typed?.of === of ? typed.name : setting.name;
  const isFull = settings.length >= MOST_SETTINGS;
  const use = (act: (name: string) => string | null, others: readonly Setting[]) => {
    const plain = name.trim();
    if (plain === '') return setWrong(PICTURE.noName);
    if (others.some((one) => one.name === plain)) return setWrong(PICTURE.sameName);
    const problem = act(plain);
    setWrong(problem);
    if (problem === null) setTyped(null);
  };
  return (
    <>
      <button
        ref={button}
        type="button"
        className="button button-outlined"
        aria-label={PICTURE.editSettings}
        title={PICTURE.editSettings}
        aria-expanded={open}
        aria-controls={`${id}-panel`}
        onClick={() => onOpen(!open)}
      >
        <Ellipsis className="icon" aria-hidden="true" />
      </button>
      <fieldset
        id={`${id}-panel`}
        className="setting-menu"
        aria-label={PICTURE.editSettings}
        hidden={!open}
        onKeyDown={(event) => {
          if (event.key !== 'Escape') return;
          // Esc closes what is open, one thing at a time: the page must not hear of this press.
          event.stopPropagation();
          onOpen(false);
          button.current?.focus();
        }}
      >
        <div className="setting-name">
          <label htmlFor={`${id}-name`}>{PICTURE.settingName}</label>
          <input
            id={`${id}-name`}
            className="input"
            value={name}
            maxLength={MOST_LETTERS}
            autoComplete="off"
            aria-invalid={wrong !== null}
            aria-describedby={`${id}-told`}
            onChange={(event) => {
              setTyped({ of, name: event.target.value });
              setWrong(null);
            }}
          />
        </div>
        <button
          type="button"
          className="button button-outlined"
          disabled={isFull}
          onClick={() => use(onCopy, settings)}
        >
          {PICTURE.copySetting}
        </button>
        <button
          type="button"
          className="button button-outlined"
          disabled={name.trim() === setting.name}
          onClick={() =>
            use(
              onRename,
              settings.filter((one) => one !== setting),
            )
          }
        >
          {PICTURE.renameSetting}
        </button>
        <button type="button" className="button button-outlined" disabled={settings.length === 1} onClick={onRemove}>
          {PICTURE.removeSetting}
        </button>
        <p id={`${id}-told`} className="small quiet setting-told" role="status">
          {wrong ?? (isFull ? PICTURE.mostSettings(MOST_SETTINGS) : PICTURE.copySettingHint)}
        </p>
      </fieldset>
    </>
  );
}
