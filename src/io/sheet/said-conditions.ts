import type { Specular } from '../../engine/finish/given-color';
import { illuminantId } from '../color-line';
import type { SheetConditions } from './types';

const LIGHT_AND_OBSERVER =
  /(?<![\p{L}\d])(?:illuminant\s*[,:=]?\s*)?(D\d\d|FL?\d\d?|TL8[34]|CWF|LED[- ]?[A-Z]+\d|A|C|E)(?:\s*[/,_-]?\s*(10|2)(?:\s*(?:°|º|deg(?:rees?)?))?(?![\d.,]))?(?![\p{L}\d])/iu;
const OBSERVER = /(?<![\d.,])(10|2)\s*(?:°|º|[_-]?deg(?:rees?|r[eé]s?)?(?![a-z])|[_-]?grad)/i;

/** CIE 15: the standard observers by the years of their tables. */
const YEARS: readonly (readonly [RegExp, 2 | 10])[] = [
  [/\b1931\b/, 2],
  [/\b1964\b/, 10],
];

/** Light and observer in a cell: "D65", "D65/10°", "ILLUMINANT, D50", "D50 2 degree". What is not said is absent. */
export function conditionsInCell(cell: string): SheetConditions {
  const found = LIGHT_AND_OBSERVER.exec(cell);
  const illuminant = found ? illuminantId(found[1]!) : null;
  const observer = observerInCell(found?.[2] ?? OBSERVER.exec(cell)?.[1] ?? '');
  return { ...(illuminant && { illuminant }), ...(observer && { observer_deg: observer }) };
}

/** The light that a cell names and that is not known here, as "D60" or "E/2"; null where there is none. */
export function otherLightIn(cell: string): string | null {
  const named = LIGHT_AND_OBSERVER.exec(cell)?.[1];
  return named && !illuminantId(named) ? named.toUpperCase() : null;
}

/** "10", "10°", "2 degree", "CIE 1964"; null for anything else. */
export function observerInCell(cell: string): 2 | 10 | null {
  const degrees = /^\D{0,20}?(?<!\d)(2|10)\s*(?:°|º|deg.*|grad.*|°.*)?$/i.exec(cell.trim())?.[1];
  if (degrees) return degrees === '2' ? 2 : 10;
  return YEARS.find(([year]) => year.test(cell))?.[1] ?? null;
}

/** Whether the mirror-like part was counted: "SCI", "excluded", "di:8". */
export function specularInCell(cell: string): Specular | null {
  if (/\b(?:SCI|SPIN|incl\w*|di\s?[:/]\s?8)/i.test(cell)) return 'included';
  return /\b(?:SCE|SPEX|excl\w*|de\s?[:/]\s?8)/i.test(cell) ? 'excluded' : null;
}

/** As headings and titles say it: "L* SCE", "L_SCI", "specular component included". */
const SPECULAR: readonly (readonly [Specular, RegExp])[] = [
  ['included', /(?<![A-Za-z0-9])(?:SCI|SPIN)(?![A-Za-z0-9])|\bspec(?:ular)?\.?\s+(?:comp\w*\.?\s+)?incl/i],
  ['excluded', /(?<![A-Za-z0-9])(?:SCE|SPEX)(?![A-Za-z0-9])|\bspec(?:ular)?\.?\s+(?:comp\w*\.?\s+)?excl/i],
];

/** What headings, titles and comments say of all rows; what they say differently is left open. */
export function conditionsInWords(texts: readonly string[]): SheetConditions {
  const said = texts.map((text): SheetConditions => {
    // A letter alone is a name of a column; only what is written out counts here.
    const found =
      /(?<![\p{L}\d])(D\d\d|FL\d\d?|TL8[34]|CWF)(?![\p{L}\d])(?:\s*[/,;_-]?\s*(10|2)\s*(?:°|º|deg|(?=\s*[)\],;]|\s*$)))?/iu.exec(
        text,
      ) ?? /(?<![\p{L}\d])([ACE]|F\d\d?)\s*\/\s*(10|2)(?![\d.,])/u.exec(text);
    const illuminant = found ? illuminantId(found[1]!) : null;
    const observer = found?.[2] ?? /observer\W{0,3}(10|2)\b/i.exec(text)?.[1] ?? OBSERVER.exec(found ? text : '')?.[1];
    const specular = SPECULAR.find(([, pattern]) => pattern.test(text))?.[0];
    return {
      ...(illuminant && { illuminant }),
      ...(observer && { observer_deg: observer === '2' ? 2 : 10 }),
      ...(specular && { specular }),
    };
  });
  return { ...sameIn(said, 'illuminant'), ...sameIn(said, 'observer_deg'), ...sameIn(said, 'specular') };
}

function sameIn(said: readonly SheetConditions[], key: 'illuminant' | 'observer_deg' | 'specular'): SheetConditions {
  const values = new Set(said.flatMap((one) => (one[key] === undefined ? [] : [one[key]])));
  return values.size === 1 ? { [key]: [...values][0] } : {};
}
