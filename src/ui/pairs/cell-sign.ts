import type { PairVerdict, Severity, Warning } from '../../engine/judge/assessment';
import type { PairTable, TableCell } from '../../engine/judge/pair-table';

/** What is found between two finishes that is no verdict on their colors as such. */
export type BetweenCode = 'weak-edge' | 'pair-splits' | 'patterns-compete' | 'woods-nearly-match';

/** What a square shows. */
export interface CellSign {
  readonly kind: PairVerdict | BetweenCode;
  readonly severity: Severity | null;
}

const GRADES: readonly (Severity | null)[] = [null, 'note', 'visible', 'grave'];

/** The warnings between the finishes of a cell that the table has no verdict for: an edge, a match that parts, busy patterns, woods. */
export const warningsBetween = (
  warnings: readonly Warning[],
  { rows }: PairTable,
  { a, b }: TableCell,
): readonly Warning[] =>
  warnings.filter(
    ({ code, surfaces }) =>
      isBetween(code) && [a, b].every((row) => rows[row]!.surfaces.some((surface) => surfaces.includes(surface))),
  );

/** The worst of a cell: its worst pair of parts, unless a warning between its finishes is graver. */
export function signOf(warnings: readonly Warning[], table: PairTable, cell: TableCell): CellSign {
  const { verdict, severity } = cell.worst;
  let sign: CellSign = { kind: verdict, severity };
  for (const { code, severity: grade } of warningsBetween(warnings, table, cell)) {
    if (isBetween(code) && GRADES.indexOf(grade) > GRADES.indexOf(sign.severity))
      sign = { kind: code, severity: grade };
  }
  return sign;
}

/** How much one wants to see it, larger is more. */
export const urgency = ({ kind, severity }: CellSign): number =>
  2 * GRADES.indexOf(severity) + (kind === 'cannot-tell' ? 1 : 0) + (kind === 'none' ? 0 : 0.5);

const BETWEEN: readonly string[] = [
  'weak-edge',
  'pair-splits',
  'patterns-compete',
  'woods-nearly-match',
] satisfies readonly BetweenCode[];

const isBetween = (code: string): code is BetweenCode => BETWEEN.includes(code);
