import { conditionsWords } from '../../../engine/finish/conditions';
import type { Conditions } from '../../../engine/finish/given-color';
import { FINISH_CLASSES } from '../../../engine/finish/types';
import type { ImportChoices, ImportQuestion } from '../../../io/sheet/types';
import { Menu } from '../../drawer/Menu';
import { TYPE_IN } from '../../words/drawer';
import { CLASS_WORDS } from '../../words/finishes';
import { IMPORT } from '../../words/import';
import { reread } from '../../words/spoken';

interface ImportQuestionsProps {
  readonly asked: readonly ImportQuestion[];
  readonly choices: ImportChoices;
  readonly onChoices: (choices: ImportChoices) => void;
}

const CONDITIONS: readonly Conditions[] = [
  { illuminant: 'D65', observer_deg: 10 },
  { illuminant: 'D65', observer_deg: 2 },
  { illuminant: 'D50', observer_deg: 2 },
  { illuminant: 'D50', observer_deg: 10 },
  { illuminant: 'C', observer_deg: 2 },
  { illuminant: 'A', observer_deg: 2 },
  { illuminant: 'A', observer_deg: 10 },
];
const UNSAID = reread(() => ['', IMPORT.unsaid] as const);
const SCALES = ['factor', 'percent'] as const;

/** What the file does not say and rows wait for. Usual answers are offered; none is taken by itself. */
export function ImportQuestions({ asked, choices, onChoices }: ImportQuestionsProps) {
  const isOpen = asked.some(({ rows }) => rows > 0);
  return (
    <section className="import-questions" aria-label={IMPORT.questions}>
      <h4>{isOpen ? IMPORT.questions : IMPORT.questionsDone}</h4>
      {asked.map((question) => {
        const { about, rows, usual } = question;
        const usualWords = usual && usualOf(usual);
        return (
          <div key={about} className="import-question" data-open={rows > 0 || undefined}>
            {about === 'columns' ? (
              <p>
                <strong>{IMPORT.about.columns}</strong>
              </p>
            ) : (
              <Answer about={about} choices={choices} onChoices={onChoices} />
            )}
            <p className="small quiet">
              {IMPORT.why[about]}{' '}
              {rows > 0 && about !== 'columns' && (about === 'gloss' ? IMPORT.usualTaken(rows) : IMPORT.waits(rows))}
            </p>
            {rows > 0 && usual && usualWords && (
              <button
                type="button"
                className="button button-outlined"
                onClick={() => onChoices({ ...choices, ...usual })}
              >
                {IMPORT.usual(usualWords)}
              </button>
            )}
          </div>
        );
      })}
    </section>
  );
}

interface AnswerProps extends Omit<ImportQuestionsProps, 'asked'> {
  readonly about: Exclude<ImportQuestion['about'], 'columns'>;
}

function Answer({ about, choices, onChoices }: AnswerProps) {
  const set = <K extends keyof ImportChoices>(key: K, value: ImportChoices[K] | undefined) => {
    const { [key]: _, ...rest } = choices;
    onChoices((value === undefined ? rest : { ...rest, [key]: value }) as ImportChoices);
  };
  const menu = (value: string, answers: readonly (readonly [string, string])[], onChoose: (id: string) => void) => (
    <Menu<string> label={IMPORT.about[about]} value={value} choices={[UNSAID, ...answers]} onChoose={onChoose} />
  );
  switch (about) {
    case 'class':
      return menu(
        choices.class ?? '',
        FINISH_CLASSES.map((one) => [one, CLASS_WORDS[one]]),
        (id) =>
          set(
            'class',
            FINISH_CLASSES.find((one) => one === id),
          ),
      );
    case 'conditions':
      return menu(
        choices.conditions ? conditionsWords(choices.conditions) : '',
        CONDITIONS.map((one) => [conditionsWords(one), TYPE_IN.conditionsOf[conditionsWords(one)] ?? '']),
        (id) =>
          set(
            'conditions',
            CONDITIONS.find((one) => conditionsWords(one) === id),
          ),
      );
    case 'gloss': {
      const gloss = choices.gloss_gu;
      const isOther = typeof gloss === 'number' && !IMPORT.glosses.some(([gu]) => gu === gloss);
      const glosses = isOther ? [...IMPORT.glosses, [gloss, IMPORT.glossWords(gloss)] as const] : IMPORT.glosses;
      return menu(
        gloss === undefined ? '' : String(gloss),
        [['usual', IMPORT.glossUsual], ...glosses.map(([gu, words]) => [String(gu), words] as const)],
        (id) => set('gloss_gu', id === '' ? undefined : id === 'usual' ? id : Number(id)),
      );
    }
    case 'scale':
      return menu(
        choices.scale ?? '',
        SCALES.map((one) => [one, IMPORT.scales[one]]),
        (id) =>
          set(
            'scale',
            SCALES.find((one) => one === id),
          ),
      );
  }
}

/** An answer in words. */
function usualOf({ class: kind, conditions, gloss_gu, scale }: ImportChoices): string {
  if (kind) return CLASS_WORDS[kind];
  if (conditions) return conditionsWords(conditions);
  if (gloss_gu === 'usual') return IMPORT.glossOfEach;
  if (gloss_gu !== undefined) {
    return IMPORT.glosses.find(([gu]) => gu === gloss_gu)?.[1] ?? IMPORT.glossWords(gloss_gu);
  }
  return scale ? IMPORT.scales[scale] : '';
}
