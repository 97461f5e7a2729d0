import { type ReactNode, useEffect, useId, useRef, useState } from 'react';
import type { Problem } from '../../engine/result';
import type { SurfaceId } from '../../engine/surface';
import type { Region } from '../../model/kitchen';
import type { LengthUnit } from '../../model/length-text';
import { kitchenFor } from '../../model/new-kitchen';
import type { LayoutId } from '../../model/new-kitchen/layout-drafts';
import type { Answers } from '../../model/new-project';
import type { Finish } from '../../model/project';
import { KITCHEN } from '../words/kitchen';
import { problemWords } from '../words/problems';
import { QUESTIONS } from '../words/questions';
import { retold } from '../words/spoken';
import { BearingQuestion } from './BearingQuestion';
import { LampsQuestion } from './LampsQuestion';
import { LeaveQuestion } from './LeaveQuestion';
import type { QuestionProps } from './question-props';
import { RoomQuestion } from './RoomQuestion';
import { StaysQuestion } from './StaysQuestion';
import { UsersQuestion } from './UsersQuestion';
import '../room/room-panel.css';
import './questions.css';

export interface NewProjectProps {
  readonly candidates: (surface: SurfaceId) => readonly Finish[];
  /** Region of the present project. */
  readonly region: Region;
  /** Null: nobody chose one. */
  readonly unit: LengthUnit | null;
  readonly onUnit: (unit: LengthUnit) => void;
  /** The present project has changes that are in no file. */
  readonly isUnsaved: boolean;
  readonly onSave: () => void;
  /** Makes the project; what is wrong with it, and nothing was made then. */
  readonly onMake: (answers: Answers) => readonly Problem[];
  readonly onClose: () => void;
}

const roomTooSmall = (layout: LayoutId): Problem => ({
  code: 'does-not-fit',
  text: KITCHEN.layoutTooLarge(KITCHEN.layouts[layout]),
  remedy: '',
});

const goesIn = ({ layout, region, ...size }: NonNullable<Answers['room']>): boolean =>
  kitchenFor(layout, region, size) !== null;

const STEPS = ['stays', 'room', 'bearing', 'lamps', 'users'] as const;
type StepId = (typeof STEPS)[number];

/**
 * Five questions, one at a time, each of which may be skipped; Esc keeps the present project. Where something was answered it asks first:
 * the answers go with the questions.
 */
export function NewProject(props: NewProjectProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const title = useId();
  const [step, setStep] = useState(0);
  const [answers, setAnswers] = useState<Answers>({});
  const [refused, setRefused] = useState<readonly Problem[]>([]);
  const [wasSaved, setWasSaved] = useState(false);
  const [isLeaving, setIsLeaving] = useState(false);
  const close = () => dialog.current?.close();
  const leave = () => (Object.keys(answers).length > 0 ? setIsLeaving(true) : close());
  const stay = () => {
    setIsLeaving(false);
    heading.current?.focus();
  };
  // Fields with something that cannot be read hold Next back: leaving them would drop it without a word.
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each question takes the focus when it comes
  useEffect(() => heading.current?.focus(), [step]);
  const id = STEPS[step]!;
  const isLast = step === STEPS.length - 1;
  const go = (kept: Answers) => {
    setAnswers(kept);
    // Said where it can still be changed with what one sees.
    const { room } = kept;
    if (id === 'room' && room && !goesIn(room)) return setRefused([roomTooSmall(room.layout)]);
    setRefused([]);
    if (!isLast) return setStep(step + 1);
    const problems = props.onMake(kept);
    setRefused(problems);
    if (problems.length === 0) close();
  };
  const next = () => {
    // What is typed is taken when its field is left.
    (document.activeElement as HTMLElement | null)?.blur();
    requestAnimationFrame(() => {
      const wrong = form.current?.querySelector<HTMLElement>('[aria-invalid="true"]');
      if (wrong) wrong.focus();
      else go(latest.current);
    });
  };
  const latest = useRef(answers);
  latest.current = answers;
  return (
    <dialog
      ref={dialog}
      className="questions"
      aria-labelledby={title}
      onClose={props.onClose}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.stopPropagation();
        // A browser lets a second press close the dialog without asking, unless it never hears of it.
        event.preventDefault();
        if (isLeaving) stay();
        else leave();
      }}
      onCancel={(event) => {
        event.preventDefault();
        leave();
      }}
    >
      <div className="questions-head">
        <p id={title} className="small quiet">
          {QUESTIONS.title}, {QUESTIONS.progress(step + 1, STEPS.length)}
        </p>
        <h2 ref={heading} tabIndex={-1}>
          {QUESTIONS[id]}
        </h2>
      </div>
      <form
        ref={form}
        className="questions-body"
        onSubmit={(event) => {
          event.preventDefault();
          next();
        }}
      >
        {step === 0 && <p className="small quiet">{QUESTIONS.intro}</p>}
        {step === 0 && props.isUnsaved && (
          <div className="questions-told small">
            <p>{wasSaved ? QUESTIONS.saved : QUESTIONS.unsaved}</p>
            {!wasSaved && (
              <button
                type="button"
                className="button button-outlined"
                onClick={() => {
                  props.onSave();
                  setWasSaved(true);
                }}
              >
                {QUESTIONS.save}
              </button>
            )}
          </div>
        )}
        <Question key={id} id={id} answers={answers} onAnswers={setAnswers} {...props} />
        {refused.length > 0 && (
          <div className="questions-told small" role="alert">
            <p>{QUESTIONS.refused}</p>
            {refused.map((problem) => (
              <p key={problem.text}>
                {problemWords(problem)} {retold(problem.remedy)}
              </p>
            ))}
          </div>
        )}
        {isLeaving && <LeaveQuestion onLeave={close} onStay={stay} />}
        <div className="questions-foot" hidden={isLeaving}>
          <button type="button" className="button button-plain" onClick={leave}>
            {QUESTIONS.cancel}
          </button>
          <span className="questions-ways">
            {step > 0 && (
              <button
                type="button"
                className="button button-outlined"
                onClick={() => {
                  setRefused([]);
                  setStep(step - 1);
                }}
              >
                {QUESTIONS.back}
              </button>
            )}
            <button type="button" className="button button-outlined" onClick={() => go(without(answers, id))}>
              {QUESTIONS.skip}
            </button>
            <button type="submit" className="button button-strong">
              {isLast ? QUESTIONS.make : QUESTIONS.next}
            </button>
          </span>
        </div>
      </form>
    </dialog>
  );
}

function Question({ id, ...props }: NewProjectProps & QuestionProps & { readonly id: StepId }): ReactNode {
  switch (id) {
    case 'stays':
      return <StaysQuestion {...props} />;
    case 'room':
      return <RoomQuestion {...props} />;
    case 'bearing':
      return <BearingQuestion {...props} />;
    case 'lamps':
      return <LampsQuestion {...props} />;
    case 'users':
      return <UsersQuestion {...props} />;
  }
}

const ANSWERED_BY = {
  stays: 'stays',
  room: 'room',
  bearing: 'bearing_deg',
  lamps: 'lamps',
  users: 'users',
} as const satisfies Record<StepId, keyof Answers>;

/** The answers without one of them. */
function without(answers: Answers, id: StepId): Answers {
  const { [ANSWERED_BY[id]]: _, ...rest } = answers;
  if (id !== 'room') return rest;
  // The year of the house is asked with the room.
  const { year_built: _year, ...others } = rest;
  return others;
}
