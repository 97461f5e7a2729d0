import type { SlabPiece } from '../slab-types';

/** What a piece is called within a sentence. */
export const saidName = ({ id, name }: Pick<SlabPiece, 'id' | 'name'>): string => name ?? `"${id}"`;

/** The same where a sentence begins with it. */
export const saidFirst = (piece: Pick<SlabPiece, 'id' | 'name'>): string => {
  const name = saidName(piece);
  return `${name[0]!.toUpperCase()}${name.slice(1)}`;
};

/** A size to a tenth of a millimeter. */
export const saidSize = (mm: number): string => `${Math.round(mm * 10) / 10} mm`;
