import type { FilePurpose } from '../../io/file-of';
import { spoken } from './spoken';

/** Words for files that are dropped on the page. */
export const DROP = spoken({
  frame: 'Drop a file to open it',
  frameMore: 'A project, a look, a library, or a table of finishes.',
  several: (count: number) => `${count} files were dropped at once.`,
  severalRemedy: 'Drop one file at a time.',
  unknown: (file: string) => `"${file}" is no kind of file this program opens.`,
  noFinishes: (file: string) => `"${file}" is a text in which no finish is found. Nothing was opened.`,
  unknownRemedy: 'Projects, looks, libraries and tables of finishes (CSV, CGATS, CxF) can be dropped here.',
  lookAdded: (name: string) => `The look "${name}" was taken into the project.`,
  lookAddedRemedy: 'Choose it in the panel of the copied look to carry it over.',
} as const);

/** Files that a panel of its own asks for: what they are, and where they go. */
export const TAKEN_ELSEWHERE: {
  readonly [P in Exclude<FilePurpose, 'project' | 'look' | 'finishes'>]: {
    readonly text: (file: string) => string;
    readonly remedy: string;
  };
} = spoken({
  beam: {
    text: (file) => `"${file}" says how a lamp spreads its light.`,
    remedy: 'Open Lamps, choose the lamp it belongs to, and give it to that one.',
  },
  lamp: {
    text: (file) => `"${file}" is the spectrum of a lamp.`,
    remedy: 'Open Light under the picture, and give it to the lamps there.',
  },
  picture: {
    text: (file) => `"${file}" is a picture.`,
    remedy: 'For a look to copy, open More, Copied look. For a sample, choose a surface and photograph it there.',
  },
});
