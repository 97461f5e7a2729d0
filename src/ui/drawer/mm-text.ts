import type { Bounds } from '../../model/check-number';
import { JOINT_MM } from '../../model/laying';
import { type LengthUnit, lengthText, parseLength } from '../../model/length-text';

/** What stands in a field for millimeters, and the number in the document it was typed over. */
export interface TypedMm {
  readonly text: string;
  readonly mm: number | undefined;
}

/** The text to show: what was typed, until the document's number becomes another one (undo, another option). */
export const mmText = (typed: TypedMm | null, mm: number | undefined, unit: LengthUnit = 'mm'): string =>
  typed && typed.mm === mm ? typed.text : mm === undefined ? '' : lengthText(mm, unit);

/** The length a text stands for, in mm; null when it is none within the bounds. */
export function mmOf(text: string, [least, most]: Bounds, unit: LengthUnit = 'mm'): number | null {
  // A point at the end is a number on its way.
  const mm = parseLength(text.replace(/[.,]\s*$/, ''), unit);
  return mm !== null && mm >= least && mm <= most ? mm : null;
}

/** The joint a text stands for, mm; null when it is none that can be laid. */
export const jointOf = (text: string): number | null => mmOf(text, JOINT_MM);
