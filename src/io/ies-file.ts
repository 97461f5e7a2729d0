import { turnedOver } from '../engine/photometry/turn-over';
import type { PhotometricWeb } from '../engine/photometry/types';
import { frontShare, webFlux } from '../engine/photometry/web-flux';
import { failure, type Problem, type Result, success } from '../engine/result';
import { BEAM_LUMENS } from '../model/check-beam';
import { type IesFields, openingOf, readIesFields } from './ies-fields';
import { readIesHeader } from './ies-header';
import { type IesCursor, iesProblem, nextWord } from './ies-numbers';
import { readIesWeb } from './ies-web';
import { placeIn } from './place-problem';

/** A lamp as its IES file gives it. */
export interface IesLamp {
  readonly name: string;
  readonly web: PhotometricWeb;
  /**
   * Lumens that leave the lamp: the integral of its intensities, also where the file gives the lumens of the bulbs, of which
   * the lamp keeps some.
   */
  readonly lumens: number;
  /** Luminous opening: width across, length along horizontal angle 0; 0 for a point. A round one gives its diameter. */
  readonly size_m: readonly [width: number, length: number];
}

/** A lamp's file has some ten thousand characters; at the limit of intensities it has a million. */
const MOST_CHARACTERS = 4_000_000;
/** Rounding and coarse angles explain this much light over that of the bulbs (our judgment). */
const MOST_EFFICIENCY = 1.05;
/** Light that goes backwards is spoken of from this share on (our judgment). */
const BACK_SHARE = 0.02;

/**
 * Reads a lamp from an IES file (LM-63 of 1986 to 2019, type C): how its light spreads, its lumens and size. The web has its
 * multiplier and ballast factors in it and looks down: a lamp with all its light above 90 degrees is turned over. Notices
 * say what was left out or taken differently. Problems carry the file and the line.
 */
export function webFromIes(text: string, file?: string): Result<IesLamp> {
  const refused = refuse(text, file);
  if (refused) return failure(refused);
  const cursor: IesCursor = { text: text.replace(/\r\n?/g, '\n'), file, at: 0, line: 1 };
  const header = readIesHeader(cursor);
  if (!header.ok) return header;
  const { name, isBefore1995 } = header.value;
  const fields = readIesFields(cursor);
  if (!fields.ok) return fields;
  const { rows, columns, multiplier, ballast, former } = fields.value;
  const factor = multiplier.value * ballast.value * (isBefore1995 && former.value > 0 ? former.value : 1);
  const read = readIesWeb(cursor, rows.value, columns.value, factor);
  if (!read.ok) return read;
  const rest = restOf(cursor);
  if (!rest.ok) return rest;
  const isUplight = read.value.web.vertical_deg[0] === 90;
  const web = isUplight ? turnedOver(read.value.web) : read.value.web;
  const lumens = webFlux(web);
  const [least, most] = BEAM_LUMENS;
  if (!(lumens >= least && lumens <= most)) {
    const text = `the intensities add up to ${Number(lumens.toPrecision(3))} lm, which no lamp of a room gives.`;
    const remedy =
      'Check the multiplier and the intensities against the data sheet of the lamp, or fetch the file again.';
    return failure(iesProblem('bad-lumens', multiplier.line, text, remedy, file));
  }
  const lamp = { name, web, lumens, size_m: openingOf(fields.value) };
  const notices = [
    ...header.value.notices,
    ...read.value.notices,
    ...rest.value,
    ...lightNotices(lamp, isUplight, fields.value, file),
  ];
  return success(lamp, notices);
}

/** What cannot be an IES file, before anything is looked at. */
function refuse(text: string, file?: string): Problem | null {
  const at = placeIn(file);
  if (text.length > MOST_CHARACTERS) {
    return {
      code: 'file-too-large',
      text: `The file has ${text.length} characters; the file of a lamp has far fewer.`,
      at,
      remedy: 'Choose the photometric file of one lamp, in IES format.',
    };
  }
  if (!text.includes('\0')) return null;
  return {
    code: 'not-a-text',
    text: 'The file is no plain text.',
    at,
    remedy: 'Choose the photometric file of the lamp in IES format; take it out of its archive first.',
  };
}

/** What follows the last intensity: numbers mean that the counts do not fit, words are left out. */
function restOf(cursor: IesCursor): Result<readonly Problem[]> {
  const rest = nextWord(cursor);
  if (!rest) return success([]);
  const { line } = rest;
  if (/^[+-]?\.?\d/.test(rest.word)) {
    const text = 'more numbers follow than the counts of angles say.';
    const remedy =
      'Fetch the file again. Numbers need decimal points, as commas part them, and counts must fit the angles.';
    return failure(iesProblem('too-many-numbers', line, text, remedy, cursor.file));
  }
  const text = 'what follows the last intensity was not read.';
  return success([iesProblem('rest-left-out', line, text, 'Nothing to do.', cursor.file)]);
}

/** What one should know of the light that was read. */
function lightNotices(lamp: IesLamp, isUplight: boolean, fields: IesFields, file?: string): readonly Problem[] {
  const { bulbs, bulbLumens, multiplier, ballast, rows } = fields;
  const notices: Problem[] = [];
  if (isUplight) {
    const text = 'the lamp shines upward only; its light was turned to where its face looks.';
    notices.push(iesProblem('turned-over', rows.line, text, 'Let the face of this lamp look up.', file));
  }
  const back = 1 - frontShare(lamp.web);
  if (back > BACK_SHARE) {
    const text = `${Math.round(100 * back)} % of the light goes up, behind the face of the lamp; it is taken as lost.`;
    const remedy = 'Right for a lamp in the ceiling. A lamp that hangs free gives the room more light than is shown.';
    notices.push(iesProblem('light-behind', rows.line, text, remedy, file));
  }
  const rated = bulbs.value * bulbLumens.value * Math.max(1, multiplier.value) * ballast.value;
  if (rated > 0 && lamp.lumens > MOST_EFFICIENCY * rated) {
    const [found, given] = [lamp.lumens, rated].map((lm) => Math.round(lm));
    const text = `the intensities add up to ${found} lm, more than the ${given} lm of the bulbs.`;
    const remedy = `${found} lm are used. Check the lumens against the lamp's data sheet.`;
    notices.push(iesProblem('more-than-bulbs', bulbLumens.line, text, remedy, file));
  }
  return notices;
}
