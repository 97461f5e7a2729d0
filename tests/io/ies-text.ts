// All lamps are invented. The layout is that of IES LM-63: keywords, TILT, thirteen numbers, angles, candela.

export const keywords = '[TEST] invented\n[MANUFAC] nobody\n[LUMCAT] X-1\n[LUMINAIRE] Round lamp\n[MORE] for a hall\n';
export const vertical = [0, 15, 30, 45, 60, 75, 90];

/** Lambert, 1000 lm: I0 = 1000 / pi. */
export const lambert = vertical.map((v) => Number(((1000 / Math.PI) * Math.cos((v * Math.PI) / 180)).toFixed(2)));

interface Parts {
  readonly first?: string;
  readonly tilt?: string;
  readonly lamp?: string;
  readonly type?: number;
  readonly size?: string;
  readonly factors?: string;
  readonly vertical?: readonly number[];
  readonly horizontal?: readonly number[];
  readonly planes?: readonly (readonly number[])[];
}

/** An IES file of an invented lamp: round, Lambert, 1000 lm, but for what `parts` say. */
export function ies(parts: Parts = {}): string {
  const { first = `IESNA:LM-63-2002\n${keywords}`, tilt = 'TILT=NONE', lamp = '1 1000 1', type = 1 } = parts;
  const { size = '2 0.1 0.2 0', factors = '1 1 10', horizontal = [0], planes = horizontal.map(() => lambert) } = parts;
  const down = parts.vertical ?? vertical;
  return [
    `${first}${tilt}`,
    `${lamp} ${down.length} ${horizontal.length} ${type} ${size}`,
    factors,
    down.join(' '),
    horizontal.join(' '),
    ...planes.map((plane) => plane.join(' ')),
    '',
  ].join('\n');
}
