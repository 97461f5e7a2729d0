import { spoken } from './spoken';

/** Words of how one looks at the room. */
export const VIEW = spoken({
  title: 'View',
  eye: 'Eye height',
  eyesOf: 'How high you look from',
  eyes: { place: 'By the place', standing: 'Standing', seated: 'Seated' },
  above: 'above the floor',
  unit: 'Unit',
  units: { mm: 'mm', in: 'inch' },
  heightRange: (least: string, most: string, unit: string) =>
    `Eyes are between ${least} and ${most} ${unit} above the floor.`,
  moved: (height: string) => `The eye has moved and is ${height} above the floor.`,
  back: 'Back to the place',
  show: 'Show the picture in',
  modes: { color: 'Color', gray: 'Gray', lightness: 'Steps of lightness' },
  clipped: 'Mark what is too bright',
  modesMean: {
    color: 'Colors as they are seen.',
    gray: 'Only light and dark: what merges here has little contrast.',
    lightness:
      'Ten steps of lightness (L*), each one gray: what is in one step is less than 10 apart; neighbors in two steps may be nearer.',
  },
  clippedMean:
    'Wide stripes: darker here than it would look, so that color and pattern stay to be seen. Close stripes: brighter than the screen can show.',
  told: {
    color: null,
    gray: 'Shown in gray.',
    lightness: 'Shown in ten steps of lightness.',
  },
  clippedTold: 'Wide stripes: darkened. Close stripes: brighter than the screen.',
  toColor: 'Show it in color',
  noMarks: 'Take the marks away',
  noHeight: 'That is no height of an eye.',
  keep: 'Keep the picture',
  size: 'Size',
  sizeOf: (scale: number) => `${scale}\u00d7`,
  pixels: (width: number, height: number) => `${width} by ${height} pixels, and the words below it`,
  save: 'Save picture',
  copy: 'Copy picture',
  saving: 'Drawing the picture',
  saved: (file: string) => `Saved as ${file}.`,
  copied: 'The picture is on the clipboard.',
  notCopied: 'The browser did not allow copying the picture. Save it instead.',
  failed: 'The picture could not be drawn. Try a smaller size.',
  hands: 'Hands and keys',
  hints: [
    ['One finger, pen or mouse', 'look from another side'],
    ['Two fingers, right button or Shift', 'move the eye sideways, up and down'],
    ['Pinch or wheel', 'go nearer or farther'],
    ['Arrow keys in the picture', 'look from another side'],
    ['Shift + arrow keys', 'walk, as far as walls and furniture let you'],
    ['Page Up, Page Down', 'raise or lower the eye'],
    ['Choose the place again', 'go back to it'],
    ['Press and hold the option switch, or O', 'see the other option'],
    ['Press and hold a light, or L', 'see it for as long as you hold'],
  ],
} as const);
