import { spoken } from './spoken';

/** Words round copying to the clipboard. */
export const COPY = spoken({
  failed: 'The browser did not allow copying.',
} as const);

/** The words of a copied reading: every number with the conditions it holds under. */
export const READING_TEXT = spoken({
  of: (project: string, option: string) => `Project ${project}, option ${option}`,
  sampleHead: 'As a sample (CIELAB under D65, 2 degree observer; LRV is CIE Y under D65, 10 degree observer)',
  installedHead: (setting: string, cct: string | null) =>
    `As installed (setting ${setting}${cct === null ? '' : `; ${cct} K together`}; divided by the light at the place, ` +
    'adapted to D65 by CAT16, D = 1)',
  part: (name: string, share: string) => `${name} (${share})`,
  point: (name: string) => `At the point chosen (${name})`,
  lab: (lab: string) => `Lab ${lab}`,
  lrv: (lrv: string) => `LRV ${lrv}`,
  munsell: (notation: string) => `Munsell ${notation}`,
  known: (words: string, de00: string, spectrum: string) =>
    `${words}, known to about ${de00} dE00 (root mean square); spectrum ${spectrum}`,
  lightsHead:
    'The sample in each light, without the room (adapted to D65 by CAT16, D = 1; shift from D65, range over the spectra the color may have)',
  besideHead: (label: string) => `Beside ${label}`,
  shiftRange: (de00: string, range: string) => `shift ${de00} dE00 (${range})`,
  lx: (lx: string) => `${lx} lx`,
  lightness: (l: string) => `lightness in the room L* ${l}`,
  shift: (de00: string) => `shift ${de00} dE00 (CIEDE2000)`,
  white: (lab: string) => `white there Lab ${lab}`,
  onScreen: (rgb: string) => `on screen without sheen ${rgb}`,
} as const);
