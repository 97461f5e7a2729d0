import { COVER } from '../words/handover';
import type { SheetPart } from './blocks';
import { boardPart } from './board-part';
import { briefPart } from './brief-part';
import { CoverPage } from './CoverPage';
import { cautionsPart, certaintyPart } from './certainty-part';
import { comparisonPart } from './comparison-part';
import type { HandoverSet } from './handover-set';
import { oneSheetPart } from './one-sheet-part';
import { palettePart } from './palette-part';
import { reportPart } from './report-part';
import type { Paper } from './Sheets';
import { samplesPart } from './samples-part';
import { signPart } from './sign-part';
import { viewsPart } from './views-part';
import './sheet-parts.css';

/** All parts of the set in their order; schedule and quantities where there are any, after the comparison. */
export function handoverParts(set: HandoverSet, paper: Paper, ordering: readonly SheetPart[]): readonly SheetPart[] {
  const { options, signed } = set;
  const parts: readonly SheetPart[] = [
    briefPart(set),
    ...options.map((of) => viewsPart(set, of)),
    palettePart(set, signed),
    ...options.map(reportPart),
    ...(options.length > 1 ? [comparisonPart(set)] : []),
    ...ordering,
    samplesPart(signed.items, set.project.samples),
    cautionsPart(signed),
    certaintyPart(signed),
    signPart(set),
    boardPart(set, signed, paper),
  ];
  const contents = parts.map(({ title }) => title);
  return [
    { id: 'cover', title: COVER.title, isUntitled: true, page: <CoverPage set={set} contents={contents} /> },
    ...parts,
  ];
}

/** The short set: everything that counts on one page. */
export const onePageParts = (set: HandoverSet, paper: Paper): readonly SheetPart[] => [oneSheetPart(set, paper)];
