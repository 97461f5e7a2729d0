import { type FormEvent, useEffect, useId, useRef, useState } from 'react';
import { Menu } from '../drawer/Menu';
import { SHOWROOM } from '../words/showroom';
import './showroom.css';

/** What staff choose, without the start project. */
export interface ShowroomChoices {
  readonly name: string;
  readonly range: { readonly project: boolean; readonly libraries: readonly string[] };
  /** The option each customer begins in, by id. */
  readonly option: string;
  readonly minutes: number;
  readonly fillsScreen: boolean;
  readonly typesIn: boolean;
}

export interface ShowroomSetupProps {
  /** As it was set up last, or as is usual; in the option on screen. */
  readonly before: ShowroomChoices;
  readonly project: string;
  readonly options: readonly { readonly id: string; readonly name: string }[];
  readonly libraries: readonly { readonly id: string; readonly name: string; readonly count: number }[];
  readonly canKeepAwake: boolean;
  readonly canFillScreen: boolean;
  /** Begins; false where the browser keeps nothing. */
  readonly onBegin: (choices: ShowroomChoices) => Promise<boolean>;
  readonly onClose: () => void;
}

const LEAST_MINUTES = 0.5;
const MOST_MINUTES = 60;

/** The form by which staff set the showroom mode up and begin it. */
export function ShowroomSetup(props: ShowroomSetupProps) {
  const { before, project, libraries, onClose } = props;
  const id = useId();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  const [name, setName] = useState(before.name);
  const [minutes, setMinutes] = useState(String(before.minutes));
  const [range, setRange] = useState(before.range);
  const [option, setOption] = useState(before.option);
  const [fillsScreen, setFillsScreen] = useState(before.fillsScreen && props.canFillScreen);
  const [typesIn, setTypesIn] = useState(before.typesIn);
  const [isRefused, setRefused] = useState(false);
  const count = Number(minutes.trim().replace(',', '.'));
  const isMinutes = minutes.trim() !== '' && count >= LEAST_MINUTES && count <= MOST_MINUTES;
  const there = range.libraries.filter((one) => libraries.some((library) => library.id === one));
  const isRange = range.project || there.length > 0;
  const begin = async (event: FormEvent) => {
    event.preventDefault();
    if (!isMinutes || !isRange) return;
    const choices = { name: name.trim() || SHOWROOM.unnamed, range: { ...range, libraries: there }, option };
    setRefused(!(await props.onBegin({ ...choices, minutes: count, fillsScreen, typesIn })));
  };
  const check = (label: string, checked: boolean, onCheck: (on: boolean) => void) => (
    <label className="check" key={label}>
      <input type="checkbox" checked={checked} onChange={(event) => onCheck(event.target.checked)} />
      {label}
    </label>
  );
  return (
    <dialog ref={dialog} className="showroom-box showroom-setup" aria-labelledby={`${id}-title`} onClose={onClose}>
      <form className="showroom-inside" onSubmit={(event) => void begin(event)}>
        <h2 id={`${id}-title`} className="showroom-title">
          {SHOWROOM.title}
        </h2>
        <p>{SHOWROOM.what}</p>
        <p className="small">{SHOWROOM.lockedWhat}</p>
        <div className="field">
          <label htmlFor={`${id}-name`}>{SHOWROOM.name}</label>
          <input
            id={`${id}-name`}
            className="input"
            value={name}
            maxLength={60}
            placeholder={SHOWROOM.nameHint}
            autoComplete="off"
            onChange={(event) => setName(event.target.value)}
          />
        </div>
        <p className="small">
          {SHOWROOM.start(project)} <span className="quiet">{SHOWROOM.startOther}</span>
        </p>
        {props.options.length > 1 && (
          <Menu<string>
            label={SHOWROOM.option}
            value={option}
            choices={props.options.map(({ id, name }) => [id, name] as const)}
            onChoose={setOption}
          />
        )}
        <fieldset className="showroom-set" aria-describedby={isRange ? undefined : `${id}-range`}>
          <legend className="small quiet">{SHOWROOM.range}</legend>
          {check(SHOWROOM.rangeProject, range.project, (project) => setRange({ ...range, project }))}
          {libraries.map((library) =>
            check(SHOWROOM.rangeLibrary(library.name, library.count), range.libraries.includes(library.id), (on) =>
              setRange({
                ...range,
                libraries: on ? [...range.libraries, library.id] : range.libraries.filter((one) => one !== library.id),
              }),
            ),
          )}
          {!isRange && (
            <p id={`${id}-range`} className="small" role="alert">
              {SHOWROOM.rangeNone}
            </p>
          )}
        </fieldset>
        <div className="field">
          <label htmlFor={`${id}-minutes`}>{SHOWROOM.minutes}</label>
          <input
            id={`${id}-minutes`}
            className="input showroom-minutes"
            inputMode="decimal"
            autoComplete="off"
            value={minutes}
            aria-invalid={!isMinutes}
            aria-describedby={`${id}-minutes-note`}
            onChange={(event) => setMinutes(event.target.value)}
          />
          <p id={`${id}-minutes-note`} className="small quiet">
            {isMinutes ? SHOWROOM.minutesHint : SHOWROOM.minutesWrong(LEAST_MINUTES, MOST_MINUTES)}
          </p>
        </div>
        <div className="showroom-set">
          {props.canFillScreen && check(SHOWROOM.fillsScreen, fillsScreen, setFillsScreen)}
          {check(SHOWROOM.typesIn, typesIn, setTypesIn)}
        </div>
        <section aria-labelledby={`${id}-staff`}>
          <h3 id={`${id}-staff`}>{SHOWROOM.staff}</h3>
          <ul className="showroom-checks small">
            {SHOWROOM.checks.map((one) => (
              <li key={one}>{one}</li>
            ))}
            <li>{props.canKeepAwake ? SHOWROOM.awake : SHOWROOM.notAwake}</li>
          </ul>
        </section>
        {isRefused && (
          <p role="alert">
            <strong>{SHOWROOM.notKept}</strong>
          </p>
        )}
        <div className="showroom-acts">
          <button type="submit" className="button button-strong" disabled={!isMinutes || !isRange}>
            {SHOWROOM.begin}
          </button>
          <button type="button" className="button button-outlined" onClick={() => dialog.current?.close()}>
            {SHOWROOM.cancel}
          </button>
        </div>
      </form>
    </dialog>
  );
}
