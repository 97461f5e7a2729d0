import type { GivenColor } from '../engine/finish/given-color';
import type { Provenance } from '../engine/finish/types';
import { labD65FromMunsell } from '../engine/naming/munsell';
import { failure, type Problem, type Result, success } from '../engine/result';
import { checkGivenColor } from '../model/check-finish';

/** A color as typed, and how far it can be trusted by the way it was given. */
export interface TypedColor {
  readonly color: GivenColor;
  readonly provenance: Provenance;
}

/**
 * Reads a color as one types it: `#a1b2c3` (with or without #, also three digits), `lab:88.5,-0.8,-0.3` (CIELAB, D65,
 * 2 degrees), `munsell:5Y 9/1`, `lrv:70 warm gray` (light reflectance value 0-100 and a word for the hue).
 */
export function parseColorValue(text: string): Result<TypedColor> {
  const value = text.trim();
  const prefix = /^(lab|munsell|lrv|hex)\s*:\s*(.*)$/i.exec(value);
  if (!prefix) return readHex(value, text);
  const rest = prefix[2]!.trim();
  switch (prefix[1]!.toLowerCase()) {
    case 'lab':
      return readLab(rest, text);
    case 'munsell':
      return readMunsell(rest);
    case 'lrv':
      return readLrv(rest, text);
    default:
      return readHex(rest, text);
  }
}

function readHex(digits: string, text: string): Result<TypedColor> {
  const match = /^#?([0-9a-f]{6}|[0-9a-f]{3})$/i.exec(digits);
  if (!match) return failure(notAColor(text));
  const short = match[1]!.toLowerCase();
  const hex = `#${short.length === 3 ? [...short].map((digit) => digit + digit).join('') : short}`;
  return success({ color: { kind: 'hex', hex }, provenance: 'screen' });
}

function readLab(rest: string, text: string): Result<TypedColor> {
  const parts = rest.split(/\s*[,;]\s*|\s+/).map((part) => (part === '' ? Number.NaN : Number(part)));
  const [l, a, b] = parts;
  if (parts.length !== 3 || parts.some(Number.isNaN)) return failure(notAColor(text));
  return checked({ kind: 'lab', lab: [l!, a!, b!], illuminant: 'D65', observer_deg: 2 }, 'declared');
}

function readMunsell(rest: string): Result<TypedColor> {
  const lab = labD65FromMunsell(rest);
  if (!lab.ok) return lab;
  const { l, a, b } = lab.value;
  return success({
    color: { kind: 'lab', lab: [l, a, b], illuminant: 'D65', observer_deg: 2 },
    provenance: 'declared',
  });
}

function readLrv(rest: string, text: string): Result<TypedColor> {
  const match = /^(\d+(?:\.\d+)?)\s*%?[\s,]*(.*)$/.exec(rest);
  if (!match) return failure(notAColor(text));
  const hue = match[2]!.trim();
  if (hue === '') {
    return failure({
      code: 'hue-missing',
      text: `"${text}" says how light the color is, not which color.`,
      remedy: 'Add a word for the hue: lrv:70 warm gray.',
    });
  }
  return checked({ kind: 'lrv', lrv: Number(match[1]), hue }, 'by-eye');
}

function checked(color: GivenColor, provenance: Provenance): Result<TypedColor> {
  const [problem, ...more] = checkGivenColor(color, 'color');
  return problem ? failure(problem, more) : success({ color, provenance });
}

const notAColor = (text: string): Problem => ({
  code: 'not-a-color',
  text: `"${text}" is no color that can be read.`,
  remedy: 'Write #a1b2c3, lab:88.5,-0.8,-0.3, munsell:5Y 9/1, lrv:70 warm gray, or name a file with a spectrum.',
});
