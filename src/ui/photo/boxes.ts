import type { PicturePoint, PictureQuad } from '../../engine/photo/types';

export type BoxId = 'sample' | 'card' | 'card-second';

export interface PhotoBox {
  readonly id: BoxId;
  readonly quad: PictureQuad;
}

export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

/** A box by its edges as parts of the picture, 0-1. */
export function boxAt(
  { width, height }: PictureSize,
  left: number,
  top: number,
  right: number,
  bottom: number,
): PictureQuad {
  return [
    { x: left * width, y: top * height },
    { x: right * width, y: top * height },
    { x: right * width, y: bottom * height },
    { x: left * width, y: bottom * height },
  ];
}

/** Where boxes lie before anybody has moved them: the card on the left, the sample beside it. */
export const startBoxes = (size: PictureSize): readonly PhotoBox[] => [
  { id: 'sample', quad: boxAt(size, 0.42, 0.25, 0.88, 0.75) },
  { id: 'card', quad: boxAt(size, 0.1, 0.35, 0.3, 0.65) },
];

export const middleOf = (quad: PictureQuad): PicturePoint => ({
  x: quad.reduce((sum, { x }) => sum + x / 4, 0),
  y: quad.reduce((sum, { y }) => sum + y / 4, 0),
});

/** The box with one corner (0-3) or, for null, its middle put to a place; it stays within the picture. */
export function movedBox(quad: PictureQuad, corner: number | null, to: PicturePoint, size: PictureSize): PictureQuad {
  const held = (value: number, most: number) => Math.min(most, Math.max(0, value));
  if (corner !== null) {
    const place = { x: held(to.x, size.width), y: held(to.y, size.height) };
    return quad.map((one, i) => (i === corner ? place : one)) as unknown as PictureQuad;
  }
  const middle = middleOf(quad);
  const xs = quad.map(({ x }) => x);
  const ys = quad.map(({ y }) => y);
  const dx = Math.min(size.width - Math.max(...xs), Math.max(-Math.min(...xs), to.x - middle.x));
  const dy = Math.min(size.height - Math.max(...ys), Math.max(-Math.min(...ys), to.y - middle.y));
  return quad.map(({ x, y }) => ({ x: x + dx, y: y + dy })) as unknown as PictureQuad;
}
