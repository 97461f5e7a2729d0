import { spoken } from './spoken';

/** Words of the part of a reading that tells how a color leans beside another. */
export const BESIDE = spoken({
  title: 'How it leans beside',
  inThisLight: 'in this light',
  byTheWindow: 'by the window',
  what: 'Beside a white or a surface',
  whites: 'Comparison whites',
  surfaces: 'Surfaces here',
  whole: 'The whole, as a sample',
  part: (role: string, share: string) => `${role}, ${share}, as a sample`,
  installed: 'The whole, as installed here',
  numbers: 'Numbers',
  difference: 'Difference',
  parts: (de00: string, chroma: string, lightness: string) =>
    `${de00} dE00: ${chroma} in chroma and hue, ${lightness} in lightness`,
  direction: 'Toward hue',
  degrees: (angle: string) => `${angle}° in a*, b*`,
  lightness: 'Lightness',
  steps: (l: string) => `L* ${l} against it`,
  warmth: 'Relative warmth against it',
  whiteness: 'Whiteness WID against it',
  noWhites: 'not two whites: no whiteness is compared',
  wid: (value: string) => `${value} (2.6 is accepted)`,
  known: 'Known together',
  within: (de00: string) => `as a rule within ${de00} dE00`,
  holds: 'How firmly',
  tries: (share: string) => `it leans that way in ${share} of the tries within what is known`,
} as const);
