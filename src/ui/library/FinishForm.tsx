import { ChevronLeft, ChevronRight } from 'lucide-react';
import { type FormEvent, useEffect, useId, useRef, useState } from 'react';
import type { Library } from '../../model/library';
import type { Finish } from '../../model/project';
import { finishFacts } from '../drawer/finish-facts';
import type { OwnFinishEntry } from '../drawer/own-finish';
import { TypeInMeaning } from '../drawer/TypeInMeaning';
import { Swatch } from '../swatch/Swatch';
import { TYPE_IN } from '../words/drawer';
import { FINISH_FORM, LIBRARIES } from '../words/libraries';
import { FinishColor } from './FinishColor';
import { FinishFieldset } from './FinishFieldset';
import { EMPTY_FIELDS, fieldsOf, finishOfFields } from './finish-fields';
import type { PaintOf } from './library-props';
import { nameOf } from './near-lrv';
import type { LibraryEditor } from './use-editor';
import './finish-form.css';

interface FinishFormProps {
  readonly library: Library;
  /** Null: a new one. */
  readonly finish: Finish | null;
  /** The list it was opened from. */
  readonly shown: readonly Finish[];
  readonly editor: LibraryEditor;
  readonly paintOf: PaintOf;
  readonly onShow: (id: string) => void;
  /** Back to the list, at this finish. */
  readonly onBack: (id: string | null) => void;
}

/** One finish to change, or a new one. Going on to the next keeps what was changed. */
export function FinishForm({ library, finish, shown, editor, paintOf, onShow, onBack }: FinishFormProps) {
  const [start] = useState(() => (finish ? fieldsOf(finish) : EMPTY_FIELDS));
  const [fields, setFields] = useState(start);
  const [color, setColor] = useState<OwnFinishEntry | null>(finish ? null : NEW_COLOR);
  /** What waits for an answer whether to leave. */
  const [leaving, setLeaving] = useState<(() => void) | null>(null);
  const [isTried, setTried] = useState(false);
  const heading = useRef<HTMLHeadingElement>(null);
  const meaning = useId();
  useEffect(() => heading.current?.focus(), []);
  const isChanged = fields !== start || (color !== null && (finish !== null || color.value !== ''));
  const made = finishOfFields(fields, finish, color, library.finishes);
  const facts = made.ok ? finishFacts(made.value) : null;
  const problem = made.ok ? (facts?.ok === false ? facts.problem : null) : made.problem;
  const isEmpty = !made.ok && (made.problem.code === 'no-color' || (color?.value === '' && color.kind !== 'spectrum'));
  useEffect(() => {
    editor.held.current = isChanged ? (act) => setLeaving(() => act) : null;
    return () => {
      editor.held.current = null;
    };
  }, [editor.held, isChanged]);
  const at = shown.findIndex(({ id }) => id === finish?.id);
  const keep = async (): Promise<boolean> => {
    setTried(true);
    if (!made.ok || problem) return false;
    if (!isChanged) return true;
    const name = nameOf(made.value);
    const finishes = finish
      ? library.finishes.map((one) => (one === finish ? made.value : one))
      : [...library.finishes, made.value];
    return editor.setFinishes(library, finishes, LIBRARIES.labels[finish ? 'edit' : 'add'](name));
  };
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (await keep()) onBack(made.ok ? made.value.id : null);
  };
  const step = async (by: number) => {
    const next = shown[at + by];
    if (next && (await keep())) onShow(next.id);
  };
  return (
    <form
      className="finish-form"
      onSubmit={submit}
      noValidate
      aria-label={finish ? nameOf(finish) : FINISH_FORM.newTitle}
    >
      <div className="finish-form-head">
        <button
          type="button"
          className="button button-plain"
          onClick={() => editor.leave(() => onBack(finish?.id ?? null))}
        >
          <ChevronLeft className="icon" aria-hidden="true" />
          {FINISH_FORM.back}
        </button>
        <h3 ref={heading} tabIndex={-1}>
          {finish ? nameOf(finish) : FINISH_FORM.newTitle}
        </h3>
        {finish && (
          <span className="finish-form-steps">
            {([-1, 1] as const).map((by) => (
              <button
                key={by}
                type="button"
                className="button button-outlined"
                disabled={!shown[at + by] || at < 0}
                onClick={() => void step(by)}
              >
                {by < 0 && <ChevronLeft className="icon" aria-hidden="true" />}
                {by < 0 ? FINISH_FORM.previous : FINISH_FORM.next}
                {by > 0 && <ChevronRight className="icon" aria-hidden="true" />}
              </button>
            ))}
          </span>
        )}
      </div>
      <div className="finish-form-body">
        <FinishFieldset
          fields={fields}
          finishes={library.finishes}
          hasOneColor={(finish?.components.length ?? 1) === 1 && color === null}
          isScreen={color?.kind === 'hex' || color?.kind === 'lrv'}
          onFields={(change) => setFields((before) => ({ ...before, ...change }))}
        />
        <aside className="finish-form-color" aria-label={FINISH_FORM.color}>
          {finish && finish.components.length > 1 && <Swatch paint={paintOf(finish)} width={160} height={96} />}
          <div id={meaning} aria-live="polite">
            <TypeInMeaning
              finish={made.ok && facts?.ok ? made.value : null}
              facts={facts?.ok ? facts.value : null}
              read={made.ok ? (made.notices ?? []) : []}
              problem={isEmpty ? null : problem}
              empty={color?.kind === 'spectrum' ? TYPE_IN.emptySpectrum : TYPE_IN.empty}
            />
          </div>
          <FinishColor
            finish={finish}
            color={color}
            isWrong={!isEmpty && problem !== null}
            meaningId={meaning}
            onColor={setColor}
          />
        </aside>
      </div>
      <div className="finish-form-foot">
        {leaving ? (
          <p role="alert">
            <strong>{FINISH_FORM.leave}</strong>{' '}
            <button type="button" className="button button-strong" onClick={() => setLeaving(null)}>
              {FINISH_FORM.leaveNo}
            </button>{' '}
            <button type="button" className="button button-outlined" onClick={leaving}>
              {FINISH_FORM.leaveYes}
            </button>
          </p>
        ) : (
          <>
            <p className="small" role="status">
              {isTried && problem && !isEmpty && problem.text}
            </p>
            <button type="button" className="button button-plain" onClick={() => onBack(finish?.id ?? null)}>
              {LIBRARIES.cancel}
            </button>
            <button
              type="submit"
              className="button button-strong"
              disabled={!isChanged || !made.ok || problem !== null}
            >
              {finish ? FINISH_FORM.save : FINISH_FORM.add}
            </button>
          </>
        )}
      </div>
    </form>
  );
}

const NEW_COLOR: OwnFinishEntry = { kind: 'lab', value: '', name: '', class: 'paint', sheen: 'satin' };
