import { FINISH_CLASSES, type FinishClass } from '../../../engine/finish/types';
import { materialKey } from '../../../io/sheet/material-words';
import type { ImportChoices, MaterialWord } from '../../../io/sheet/types';
import { Menu } from '../../drawer/Menu';
import { CLASS_WORDS } from '../../words/finishes';
import { IMPORT } from '../../words/import';
import { reread } from '../../words/spoken';

interface ImportMaterialsProps {
  readonly words: readonly MaterialWord[];
  readonly choices: ImportChoices;
  readonly onChoices: (choices: ImportChoices) => void;
}

const CLASSES = reread(() => FINISH_CLASSES.map((one) => [one, CLASS_WORDS[one]] as const));

/** More are seen by opening the list only. */
const MOST_OPEN = 8;

/** What the file's words for materials were taken for; a change holds for all rows with the word. */
export function ImportMaterials({ words, choices, onChoices }: ImportMaterialsProps) {
  const unknown = words.filter((one) => one.class === null).length;
  return (
    <details className="import-columns import-materials" open={unknown > 0 || words.length <= MOST_OPEN}>
      <summary>{IMPORT.materialsOf(words.length, unknown)}</summary>
      <ul>
        {words.map(({ word, class: kind, rows }) => (
          <li key={word}>
            <span className="import-heading">
              <span>{word}</span>
              <span className="small quiet">{IMPORT.rows(rows)}</span>
            </span>
            <Menu<FinishClass | ''>
              label={IMPORT.meaning(word)}
              value={kind ?? ''}
              choices={kind === null ? [['', IMPORT.unsaid], ...CLASSES] : CLASSES}
              onChoose={(one) =>
                one !== '' && onChoices({ ...choices, classes: { ...choices.classes, [materialKey(word)]: one } })
              }
            />
          </li>
        ))}
      </ul>
    </details>
  );
}
