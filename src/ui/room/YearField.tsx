import type { Problem } from '../../engine/result';
import { checkYear } from '../../model/check-year';
import { KITCHEN } from '../words/kitchen';
import { QUESTIONS } from '../words/questions';
import { NumberField } from './NumberField';

interface YearFieldProps {
  /** Null: not known. */
  readonly year: number | null;
  readonly onYear: (year: number | null) => readonly Problem[];
}

/** The year the house was built, which may stay unknown. */
export function YearField({ year, onYear }: YearFieldProps) {
  return (
    <div>
      <NumberField
        label={KITCHEN.yearBuilt}
        value={year}
        hint={KITCHEN.yearHint}
        path="year_built"
        onValue={(value) => {
          const problems = checkYear(value, 'year_built');
          return problems.length > 0 ? problems : onYear(value);
        }}
        onEmpty={() => onYear(null)}
      />
      <p className="small quiet">{QUESTIONS.yearWhy}</p>
    </div>
  );
}
