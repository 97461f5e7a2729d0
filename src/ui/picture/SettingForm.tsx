import { useId, useState } from 'react';
import type { Setting } from '../../model/project';
import { PICTURE } from '../words/picture';

export interface SettingFormProps {
  readonly setting: Setting;
  readonly settings: readonly Setting[];
  /** Gives back what is wrong with the name, or null. */
  readonly onCopy: (name: string) => string | null;
  readonly onRename: (name: string) => string | null;
  readonly onRemove: () => void;
}

/** More settings than a row of choices holds. */
const MOST_SETTINGS = 6;
const MOST_LETTERS = 60;

/** Keeps the light on screen as a setting of its own, renames or removes it. */
export function SettingForm({ setting, settings, onCopy, onRename, onRemove }: SettingFormProps) {
  const id = useId();
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
    <fieldset className="setting-form" aria-label={PICTURE.editSettings}>
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
      <button type="button" className="button button-outlined" disabled={isFull} onClick={() => use(onCopy, settings)}>
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
  );
}
