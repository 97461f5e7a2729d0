import type { Kitchen, Wall } from '../kitchen';
import type { Block } from './blocks';
import type { Extent } from './wall-box';

/** The blocks that touch a wall. */
export const blocksAtWall = (kitchen: Pick<Kitchen, 'room'>, blocks: readonly Block[], wall: Wall): readonly Block[] =>
  blocks.filter((block) => distance(kitchen, block, wall) <= 1);

function distance({ room }: Pick<Kitchen, 'room'>, { x, y }: Block, wall: Wall): number {
  switch (wall) {
    case 'left':
      return x[0];
    case 'right':
      return room.width - x[1];
    case 'front':
      return y[0];
    case 'back':
      return room.depth - y[1];
  }
}

/** Where a block lies along a wall. */
export const alongWall = ({ x, y }: Pick<Block, 'x' | 'y'>, wall: Wall): Extent =>
  wall === 'left' || wall === 'right' ? y : x;
