import type { Block } from './blocks';

/** What a block is called in a sentence about what does not fit. */
export const BLOCK_NAMES: { readonly [K in Block['kind']]: string } = {
  counter: 'the counter',
  tall: 'the tall units',
  'wall-unit': 'the wall units',
  shelf: 'the shelf',
  island: 'the island',
  hood: 'the hood',
};
