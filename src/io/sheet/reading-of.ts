import type { Problem } from '../../engine/result';
import { isMeasured } from './color-sets';
import { type Columns, greatestIn } from './columns';
import { SURELY_FACTOR } from './reflectance-scale';
import type { ColorReading } from './row-color';
import { spectrumLayout } from './row-spectrum';
import { conditionsInWords } from './said-conditions';
import { IF_RIGHT, sheetProblem } from './sheet-problem';
import type { Field, ImportChoices, Sheet, SheetConditions } from './types';

/** A factor cannot be this large (a fluorescent white stays under 3), so values above are percent. */
const PERCENT_FROM = 3;

interface FoundReading {
  readonly reading: ColorReading;
  readonly notices: readonly Problem[];
  /** Values of spectra could be either: dark colors in percent or bright ones that glow. */
  readonly scaleOpen: boolean;
}

/** What a sheet says of all rows; headings of the color columns that are taken know better. */
function withHeadings(said: SheetConditions, { at, headings }: Columns): SheetConditions {
  const taken = [...at].filter(([field]) => isMeasured(field)).map(([, column]) => headings[column]?.heading ?? '');
  const stated = conditionsInWords(taken);
  const isOtherLight = stated.illuminant !== undefined && said.illuminant !== stated.illuminant;
  // An observer said with another light is not theirs.
  const { observer_deg, ...rest } = said;
  return { ...(isOtherLight ? rest : said), ...stated };
}

/** How the numbers of a sheet are to be read: scales of spectra, XYZ, RGB and LRV by the greatest value, each told. */
export function readingOf(sheet: Sheet, columns: Columns, choices: ImportChoices): FoundReading {
  const { rows, file, said } = sheet;
  const notices: Problem[] = [];
  const tell = (code: string, words: string) => notices.push(sheetProblem(code, words, IF_RIGHT, file));
  const greatestOf = (...fields: readonly Field[]) =>
    greatestIn(
      columns,
      rows,
      fields.flatMap((field) => columns.at.get(field) ?? []),
    );

  const { isOurs } = columns;
  const greatest = greatestIn(
    columns,
    rows,
    columns.bands.map(({ at }) => at),
  );
  const chosen = choices.scale ?? said.scale ?? (isOurs ? 'factor' : undefined);
  const isPercent = chosen ? chosen === 'percent' : greatest > PERCENT_FROM;
  const hasSpectra = columns.bands.length > 1 && greatest > Number.NEGATIVE_INFINITY;
  if (hasSpectra && !chosen) {
    if (isPercent) tell('read-as-percent', 'Reflectances were read as percent.');
    else tell('read-as-factor', 'Reflectances were read as factors from 0 to 1.');
  }
  const lum = greatestOf('xyy_lum');
  const isLumFactor = !isOurs && lum > 0 && lum <= 1 && rows.length > 1;
  if (isLumFactor) tell('lum-times-100', 'Y of x, y, Y was read with 1 for a perfect white.');
  const xyz = greatestOf('xyz_x', 'xyz_y', 'xyz_z');
  const isXyzFactor = !isOurs && xyz > 0 && xyz <= 1.3;
  if (isXyzFactor) tell('xyz-times-100', 'X, Y and Z were read with 1 for a perfect white.');
  const rgb = greatestOf('rgb_r', 'rgb_g', 'rgb_b');
  const isRgbFactor = !isOurs && rgb > 0 && rgb <= 1;
  if (isRgbFactor) tell('rgb-times-255', 'R, G and B were read from 0 to 1.');
  const lrv = greatestOf('lrv');
  const isLrvFactor = !isOurs && lrv > 0 && lrv <= 1 && rows.length > 1;
  if (isLrvFactor) tell('lrv-times-100', 'LRVs were read from 0 to 1.');

  const scaleOpen = hasSpectra && !chosen && greatest > SURELY_FACTOR && greatest <= PERCENT_FROM;
  const reading: ColorReading = {
    columns,
    said: { ...choices.conditions, ...withHeadings(said, columns) },
    spectrum: spectrumLayout(columns, isPercent ? 100 : 1, scaleOpen),
    scales: {
      lum: isLumFactor ? 100 : 1,
      xyz: isXyzFactor ? 100 : 1,
      rgb: isRgbFactor ? 255 : 1,
      lrv: isLrvFactor ? 100 : 1,
    },
  };
  return { reading, notices, scaleOpen };
}
