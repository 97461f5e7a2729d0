import type { SheetHead } from '../../../io/sheet/sheet-head';
import { FIELDS, type Field, type ImportChoices } from '../../../io/sheet/types';
import { Menu } from '../../drawer/Menu';
import { FIELD_WORDS, IMPORT } from '../../words/import';
import { reread } from '../../words/spoken';

interface ImportColumnsProps {
  readonly columns: SheetHead['columns'];
  /** None of them gives a color. */
  readonly isColorless: boolean;
  readonly choices: ImportChoices;
  readonly onChoices: (choices: ImportChoices) => void;
}

const fieldWords = (field: Field): string =>
  field.startsWith('nm:') ? IMPORT.band(field.slice('nm:'.length)) : (FIELD_WORDS[field] ?? field);

const CHOICES = reread(
  () => [['', IMPORT.leftOut], ...FIELDS.map((field) => [field, fieldWords(field)] as const)] as const,
);

/** What each column was taken for, to be changed. Columns of a spectrum are told together: there is nothing to choose. */
export function ImportColumns({ columns, isColorless, choices, onChoices }: ImportColumnsProps) {
  const fieldOf = (i: number): Field | null => {
    const chosen = choices.fields?.[i];
    return chosen === undefined ? (columns[i]?.field ?? null) : chosen;
  };
  const numbered = columns.map((column, i) => ({ ...column, i }));
  const bands = numbered.filter(({ field }) => field?.startsWith('nm:'));
  const others = numbered.filter(({ field }) => !field?.startsWith('nm:'));
  const unknown = numbered.filter(({ i }) => fieldOf(i) === null).length;
  const nm = bands.map(({ field }) => Number(field!.slice('nm:'.length)));
  const set = (i: number, field: Field | null) => onChoices({ ...choices, fields: { ...choices.fields, [i]: field } });
  return (
    <details className="import-columns" open={isColorless || (unknown > 0 && others.length <= 12)}>
      <summary>
        {isColorless ? IMPORT.columnsColorless(columns.length) : IMPORT.columnsOf(columns.length, unknown)}
      </summary>
      <ul>
        {others.map(({ heading, example, i, field }) => {
          const name = heading || IMPORT.column(i + 1);
          const chosen = fieldOf(i);
          const choicesOf = field?.startsWith('nm:') ? [...CHOICES, [field, fieldWords(field)] as const] : CHOICES;
          return (
            <li key={i}>
              <span className="import-heading">
                <span>{name}</span>
                {example && <span className="small quiet">{IMPORT.example(example)}</span>}
              </span>
              <Menu<string>
                label={IMPORT.meaning(name)}
                value={chosen ?? ''}
                choices={choicesOf}
                onChoose={(one) => set(i, one === '' ? null : (one as Field))}
              />
            </li>
          );
        })}
      </ul>
      {bands.length > 0 && <p className="small">{IMPORT.bands(bands.length, Math.min(...nm), Math.max(...nm))}</p>}
    </details>
  );
}
