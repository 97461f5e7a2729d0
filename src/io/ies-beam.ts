import type { IesLamp } from './ies-file';
import { fileStem } from './read-lamp';

/** Digits that are kept of an intensity: no laboratory has more. */
const DIGITS = 6;

/** A lamp read from a file as a project stores its beam, but for the id. */
export function beamOfLamp({ name, web, lumens }: IesLamp, file?: string) {
  const rows = web.vertical_deg.length;
  const rounded = (value: number): number => Number(value.toPrecision(DIGITS));
  return {
    label: name,
    lumens: rounded(lumens),
    vertical_deg: [...web.vertical_deg],
    horizontal_deg: [...web.horizontal_deg],
    candela: Array.from(web.horizontal_deg, (_, j) =>
      Array.from(web.candela.subarray(j * rows, (j + 1) * rows), rounded),
    ),
    ...(file ? { note: `Read from the file ${fileStem(file)}.` } : {}),
  };
}
