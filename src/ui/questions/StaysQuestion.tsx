import { SURFACES, type SurfaceId } from '../../engine/surface';
import type { Finish } from '../../model/project';
import { Menu } from '../drawer/Menu';
import { shownName } from '../words/built-in';
import { surfaceName } from '../words/engine-words';
import { QUESTIONS } from '../words/questions';
import type { QuestionProps } from './question-props';

interface StaysQuestionProps extends QuestionProps {
  readonly candidates: (surface: SurfaceId) => readonly Finish[];
}

/** What stays in the room, and for each whether a finish of the library is close to it. */
export function StaysQuestion({ answers, onAnswers, candidates }: StaysQuestionProps) {
  const stays = answers.stays ?? [];
  const put = (surface: SurfaceId, isKept: boolean, finish: string | null = null) => {
    const others = stays.filter((one) => one.surface !== surface);
    const next = isKept ? [...others, { surface, finish }] : others;
    const { stays: _, ...rest } = answers;
    onAnswers(next.length > 0 ? { ...rest, stays: next } : rest);
  };
  return (
    <fieldset className="questions-set">
      <legend className="small quiet">{QUESTIONS.staysHint}</legend>
      <div className="questions-grid">
        {SURFACES.map((surface) => {
          const kept = stays.find((one) => one.surface === surface);
          return (
            <div key={surface} className="questions-stay">
              <label className="check">
                <input type="checkbox" checked={!!kept} onChange={(event) => put(surface, event.target.checked)} />
                {surfaceName(surface)}
              </label>
              {kept && (
                <Menu
                  label={QUESTIONS.finishOf(surfaceName(surface))}
                  value={kept.finish ?? ''}
                  choices={[
                    ['', QUESTIONS.finishUnknown],
                    ...candidates(surface).map(({ id, label }) => [id, shownName(label)] as const),
                  ]}
                  onChoose={(finish) => put(surface, true, finish || null)}
                />
              )}
            </div>
          );
        })}
      </div>
    </fieldset>
  );
}
