import { useState } from 'react';
import type { FinishClass } from '../../engine/finish/types';
import type { AssessedSurface } from '../../engine/judge/assessment';
import type { Lean } from '../../engine/judge/lean';
import { inducedSentence } from '../../engine/judge/lean-sentence';
import { COMPARISON_WHITES } from '../../kitchen/study/held-whites';
import { BESIDE } from '../words/beside';
import { surfaceName } from '../words/engine-words';
import { HELD } from '../words/held';
import { capital, decimal, integer, percent } from '../words/numbers';
import { retold } from '../words/spoken';
import { type BesideChoice, besideWords, leansBeside } from './leans-beside';

interface BesidePartProps {
  readonly surface: AssessedSurface;
  readonly others: readonly AssessedSurface[];
  /** Class of a finish of the library, by its id. */
  readonly classOf: (finish: string) => FinishClass;
}

/** How the surface leans beside a white or another surface: as a sample, part by part, and as installed here. */
export function BesidePart({ surface, others, classOf }: BesidePartProps) {
  const [choice, setChoice] = useState<BesideChoice>('neutral-white');
  // The other surface may be the very one that is read next.
  const chosen = choice === surface.surface ? 'neutral-white' : choice;
  const other = others.find((one) => one.surface === chosen) ?? null;
  const leans = leansBeside(surface, other ?? (chosen as (typeof COMPARISON_WHITES)[number]), classOf);
  const beside = besideWords(chosen);
  return (
    <section className="reading-part" aria-label={BESIDE.title}>
      <h3>{BESIDE.title}</h3>
      <label className="field">
        <span className="label">{BESIDE.what}</span>
        <select className="select" value={chosen} onChange={(event) => setChoice(event.target.value as BesideChoice)}>
          <optgroup label={BESIDE.whites}>
            {COMPARISON_WHITES.map((id) => (
              <option key={id} value={id}>
                {HELD.whites[id]}
              </option>
            ))}
          </optgroup>
          <optgroup label={BESIDE.surfaces}>
            {others
              .filter((one) => one.surface !== surface.surface)
              .map((one) => (
                <option key={one.surface} value={one.surface}>
                  {surfaceName(one.surface)}
                </option>
              ))}
          </optgroup>
        </select>
      </label>
      <div aria-live="polite">
        {leans.map(({ of, sentence, lean }) => (
          <div key={of} className="reading-lean">
            {leans.length > 1 && <h4>{of}</h4>}
            <p>{sentence}</p>
            <details className="fold">
              <summary>{BESIDE.numbers}</summary>
              <LeanNumbers lean={lean} beside={beside} />
            </details>
          </div>
        ))}
      </div>
    </section>
  );
}

function LeanNumbers({ lean, beside }: { readonly lean: Lean; readonly beside: string }) {
  const told = inducedSentence(lean, beside);
  const induced = told && retold(told);
  return (
    <>
      <dl className="numbers">
        <dt>{BESIDE.difference}</dt>
        <dd>{BESIDE.parts(decimal(lean.de00), decimal(lean.chromaPart), decimal(lean.lightnessPart))}</dd>
        {lean.hueDeg !== null && (
          <>
            <dt>{BESIDE.direction}</dt>
            <dd>{BESIDE.degrees(integer(lean.hueDeg))}</dd>
          </>
        )}
        <dt>{BESIDE.lightness}</dt>
        <dd>{BESIDE.steps(decimal(lean.dL))}</dd>
        <dt>{BESIDE.warmth}</dt>
        <dd>{decimal(lean.dW)}</dd>
        <dt>{BESIDE.whiteness}</dt>
        <dd>{lean.dWid === null ? BESIDE.noWhites : BESIDE.wid(decimal(lean.dWid))}</dd>
        <dt>{BESIDE.known}</dt>
        <dd>{BESIDE.within(decimal(lean.combinedDe00))}</dd>
        {lean.holdsIn !== null && (
          <>
            <dt>{BESIDE.holds}</dt>
            <dd>{capital(BESIDE.tries(percent(lean.holdsIn)))}</dd>
          </>
        )}
      </dl>
      {induced && <p className="small quiet">{induced}</p>}
    </>
  );
}
