import type { ComponentRecord } from '../../engine/judge/assessment';
import type { Problem } from '../../engine/result';
import type { Finish } from '../../model/project';
import { Swatch } from '../swatch/Swatch';
import { flatPaint } from '../swatch/swatch-color';
import { TYPE_IN } from '../words/drawer';
import { undertoneLabel } from '../words/findings';
import { PROVENANCE_WORDS } from '../words/finishes';
import { capital, decimal, labText } from '../words/numbers';
import { offBy } from '../words/off-by';
import { uncertaintyWord } from '../words/reading';
import { retold } from '../words/spoken';
import { ownDoubts } from './own-finish';

interface TypeInMeaningProps {
  /** The finish the form makes, with its facts; null where it makes none. */
  readonly finish: Finish | null;
  readonly facts: ComponentRecord | null;
  /** How the text or file was read. */
  readonly read: readonly Problem[];
  readonly problem: Problem | null;
  /** What to do where nothing was given yet. */
  readonly empty: string;
}

/** What the form's color is, how far it can be trusted, and what is odd about it; or what is wrong with it. */
export function TypeInMeaning({ finish, facts, read, problem, empty }: TypeInMeaningProps) {
  if (problem) {
    return (
      <div className="small">
        <p>
          <strong>{retold(problem.text)}</strong>
        </p>
        <p>{retold(problem.remedy)}</p>
      </div>
    );
  }
  if (!finish || !facts) return <p className="small">{empty}</p>;
  return <Meaning finish={finish} facts={facts} read={read} />;
}

/** From here on the uncertainty swallows most differences between whites, CIEDE2000 units (root mean square). */
const WIDE_DE00 = 4;

/** From here on an unknown mirror reflection or a rounded notation is worth a word: what most eyes see. */
const SEEN_DE00 = 1;

interface MeaningProps {
  readonly finish: Finish;
  readonly facts: ComponentRecord;
  readonly read: readonly Problem[];
}

function Meaning({ finish, facts, read }: MeaningProps) {
  const { given, notices, roundingDe00, specularDe00 } = ownDoubts(finish);
  return (
    <div className="meaning small">
      <Swatch paint={flatPaint(facts.lab_d65, finish.gloss_gu)} width={72} height={72} />
      <div>
        <p>
          <strong>{capital(retold(facts.name))}</strong>
        </p>
        <p>{TYPE_IN.result(labText(facts.lab_d65), decimal(facts.lrv), undertoneLabel(facts))}</p>
        {given && <p>{TYPE_IN.given(retold(given))}</p>}
        {finish.piece_mm && <p>{TYPE_IN.pieces(...finish.piece_mm)}</p>}
      </div>
      <p className="meaning-wide">
        {TYPE_IN.uncertain(
          PROVENANCE_WORDS[finish.provenance],
          offBy(facts.uncertainty_de00),
          uncertaintyWord(facts.uncertainty_de00),
        )}{' '}
        {finish.provenance === 'screen' && TYPE_IN.screen} {facts.uncertainty_de00 >= WIDE_DE00 && TYPE_IN.wide}
      </p>
      {roundingDe00 >= SEEN_DE00 && <p className="meaning-wide">{TYPE_IN.rounded(decimal(roundingDe00))}</p>}
      {specularDe00 >= SEEN_DE00 && <p className="meaning-wide">{TYPE_IN.specularOpen(decimal(specularDe00))}</p>}
      {[...notices, ...read].map(({ code, text, remedy }) => (
        <p key={code} className="meaning-wide">
          {retold(text)} {!remedy.startsWith('Nothing to do') && retold(remedy)}
        </p>
      ))}
    </div>
  );
}
