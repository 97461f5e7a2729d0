import type { PhotometricWeb } from './types';

/** A web as plain lists: one list of candela for each horizontal angle. */
interface WebRecord {
  readonly vertical_deg: readonly number[];
  readonly horizontal_deg: readonly number[];
  readonly candela: readonly (readonly number[])[];
}

/** The web of a record that has been checked: lists as long as their angles, angles rising. */
export function webFromRecord({ vertical_deg, horizontal_deg, candela }: WebRecord): PhotometricWeb {
  return {
    vertical_deg: Float64Array.from(vertical_deg),
    horizontal_deg: Float64Array.from(horizontal_deg),
    candela: Float64Array.from(candela.flat()),
  };
}
