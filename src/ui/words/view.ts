/** Words of how one looks at the room. */
export const VIEW = {
  title: 'View',
  hints: [
    'Drag, or one finger or the pen, to look from another side; arrow keys in the picture do the same.',
    'Pinch, turn the wheel, or press + and \u2212 to go nearer or farther.',
    'Choose the place again to go back to it.',
  ],
} as const;
