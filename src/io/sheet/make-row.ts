import { UNCERTAINTY_DE00, wholeCurve } from '../../engine/finish/component';
import type { FinishClass } from '../../engine/finish/types';
import type { Problem } from '../../engine/result';
import { checkFinish } from '../../model/check-finish';
import { givenComponents } from '../../model/given-components';
import type { Finish } from '../../model/project';
import { USUAL_FINISH } from '../../model/usual-finish';
import { placeIn } from '../place-problem';
import { isBlank } from './cell-number';
import { classInWords } from './class-words';
import { cellOf } from './columns';
import { classSaid } from './material-words';
import { otherNotations } from './other-notations';
import { CONDITIONS_MISSING, type ColorReading, colorOfRow, type RowColor } from './row-color';
import { glossOf, patternOf, provenanceOf, sizesOf, supplyOf, textOf, variationOf, wordsOf } from './row-finish';
import { idOfCode, numberedId, type RowIds, takeId } from './row-ids';
import { isCellProblem, numberOf } from './row-numbers';
import type { RowReading } from './row-reading';
import { quoted, sheetProblem } from './sheet-problem';
import type { ImportChoices, KeptRow, RefusedRow, SheetRow } from './types';

/** What all rows of a sheet share while finishes are made of them. */
export interface Making {
  readonly reading: ColorReading;
  readonly choices: ImportChoices;
  readonly ids: RowIds;
  readonly file: string;
}

/** What became of a row, and what it waits for. */
export type RowOutcome = ({ readonly kept: KeptRow } | { readonly kept: null; readonly refused: RefusedRow }) & {
  readonly needs: { readonly class?: boolean; readonly conditions?: boolean; readonly gloss?: boolean };
  readonly kind: FinishClass | null;
  readonly usualTexture: boolean;
};

/** How a spectrum covers the visible is the same in every row and said of no surface. */
const TOLD_OF_NO_ROW: readonly string[] = ['spectrum-extended', 'spectrum-resampled'];

/** A finish from one row, or why there is none. */
export function makeRow(making: Making, row: SheetRow, index: number): RowOutcome {
  const { reading, choices, ids } = making;
  const number = row.row ?? index + 1;
  const of: RowReading = { columns: reading.columns, row, notices: [] };
  const code = textOf(of, 'code') || textOf(of, 'order_code');
  const name = textOf(of, 'name');
  const kind = classOf(making, row);
  const refuse = (problem: Problem, needs: RowOutcome['needs'] = {}): RowOutcome => ({
    kept: null,
    refused: { row: number, code: code || null, name: name || null, problem: placed(problem, making, row) },
    needs,
    kind: typeof kind === 'string' ? kind : null,
    usualTexture: false,
  });

  const before = code === '' ? undefined : ids.lines.get(code);
  if (before !== undefined) return refuse(duplicate(code, before, row.line));

  const color = colorOfRow(reading, row, name);
  const waits = !color.ok && color.problem.code === CONDITIONS_MISSING;
  if (!color.ok && !waits) return refuse(color.problem);
  if (typeof kind !== 'string') return refuse(kind, { class: true, ...(waits && { conditions: true }) });
  const gloss = glossOf(of, kind);
  if (gloss !== null && typeof gloss !== 'number') return refuse(gloss);
  const needs = {
    ...(waits && { conditions: true }),
    ...(gloss === null && choices.gloss_gu === undefined && { gloss: true }),
  };
  if (!color.ok) return refuse(color.problem, needs);
  const uncertainty = numberOf(reading.columns, row, 'uncertainty_de00');
  if (isCellProblem(uncertainty)) return refuse(uncertainty.problem);

  const wanted = idOfCode(code) || numberedId(row, index);
  const variation = variationOf(of);
  const usual = USUAL_FINISH[kind];
  const finish = assemble(of, making, color.value, {
    code,
    name,
    id: wanted,
    kind,
    gloss: gloss ?? (typeof choices.gloss_gu === 'number' ? choices.gloss_gu : usual.gloss_gu),
    variation: variation ?? usual.variation,
    uncertainty,
  });
  const problem = checkFinish(finish, 'finish')[0] ?? null;
  if (problem) return refuse({ ...problem, text: problem.text.replace(/^finish\.(?:components\[0\]\.color\.)?/, '') });
  const made = wholeCurve(givenComponents(finish)[0]!);
  if (!made.ok) return refuse(made.problem);

  const id = takeId(ids, wanted);
  if (code !== '') ids.lines.set(code, row.line);
  const told: readonly Problem[] = [
    ...of.notices,
    ...color.value.notices,
    ...(code === '' ? [numbered(id)] : id === wanted ? [] : [renamed(code, id)]),
    ...(finish.provenance === 'screen' && color.value.color.kind === 'hex' ? [SCREEN_COLOR] : []),
    ...(needs.gloss ? [usualGloss(kind)] : []),
    ...otherNotations(made.value.curve, color.value.others, kind),
    ...(made.notices ?? []).filter((one) => !TOLD_OF_NO_ROW.includes(one.code)),
  ];
  const named = id === wanted ? finish : { ...finish, id, label: labelOf(name, code, id) };
  return {
    kept: { row: number, finish: named, notices: told.map((one) => placed(one, making, row)) },
    needs,
    kind,
    usualTexture: variation === null,
  };
}

interface Parts {
  readonly code: string;
  readonly name: string;
  readonly id: string;
  readonly kind: FinishClass;
  readonly gloss: number;
  readonly variation: Finish['variation'];
  readonly uncertainty: number | null;
}

function assemble(of: RowReading, { choices }: Making, { color, lrv }: RowColor, parts: Parts): Finish {
  const { code, name, id, kind, gloss, variation, uncertainty } = parts;
  const orderCode = textOf(of, 'order_code') || (code === id ? '' : code);
  const supply = supplyOf(of, orderCode === id ? '' : orderCode);
  const said = provenanceOf(of) ?? choices.provenance ?? (color.kind === 'spectrum' ? 'measured' : 'declared');
  return {
    id,
    label: labelOf(name, code, id, orderCode),
    class: kind,
    gloss_gu: gloss,
    components: [{ role: 'base', share: 1, color, ...(lrv !== undefined && { lrv }) }],
    pattern: patternOf(of, kind),
    variation,
    ...sizesOf(of),
    provenance: color.kind === 'hex' ? 'screen' : color.kind === 'lrv' ? 'by-eye' : said,
    ...(uncertainty !== null && { uncertainty_de00: uncertainty }),
    ...wordsOf(of),
    ...(supply && { supply }),
  };
}

/** Name, then id, as all labels are; a name that only says a code again stands alone, as a label without a name does. */
function labelOf(name: string, code: string, id: string, orderCode = ''): string {
  if (name === '') return code || id;
  if (name === id || name === code || name === orderCode) return name;
  return name.endsWith(`, ${id}`) ? name : `${name}, ${id}`;
}

function classOf({ reading: { columns }, choices }: Making, row: SheetRow): FinishClass | Problem {
  const cell = cellOf(columns, row, 'class');
  if (isBlank(cell))
    return choices.class ?? sheetProblem('class-missing', 'The row does not say what it is made of.', SAY_CLASS);
  return (
    classSaid(choices.classes, cell) ??
    classInWords(cell) ??
    choices.class ??
    sheetProblem('class-unknown', `${quoted(cell)} is no class of finishes that is known here.`, SAY_CLASS)
  );
}

const SAY_CLASS = 'Say the class: paint, stone, engineered, wood, laminate, glazed, porcelain, ...';

const placed = (problem: Problem, { file }: Making, { line }: SheetRow): Problem => ({
  ...problem,
  at: { ...placeIn(file, line), ...(problem.at?.path && { path: problem.at.path }) },
});

const duplicate = (code: string, first: number, second: number): Problem =>
  sheetProblem(
    'duplicate-code',
    `${quoted(code)} stands in line ${first} and again in line ${second}; the first was taken.`,
    'Give each finish its own code, or take the second out.',
  );

const numbered = (id: string): Problem =>
  sheetProblem('code-missing', `The row has no code; it is called ${id}.`, 'Give it the code it is ordered by.');

const renamed = (code: string, id: string): Problem =>
  sheetProblem(
    'id-changed',
    `Another finish has the id of ${quoted(code)}; this one is called ${id}.`,
    'Nothing to do, unless the codes are mistyped.',
  );

const SCREEN_COLOR = sheetProblem(
  'screen-color',
  `The row gives only a screen color, known to about ${UNCERTAINTY_DE00.screen} CIEDE2000 units.`,
  'Give measured L*, a*, b* or a spectrum for firm verdicts.',
);

const usualGloss = (kind: FinishClass): Problem =>
  sheetProblem(
    'gloss-usual',
    `The row says no gloss at 60°; ${USUAL_FINISH[kind].gloss_gu} gloss units were taken, usual for ${kind}.`,
    'Give gloss units at 60° if you have them.',
  );
