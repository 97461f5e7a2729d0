import { integer } from './numbers';
import { spoken } from './spoken';

/** Words of links that hold an option. */
export const LINK = spoken({
  title: 'Link to this option',
  what: (option: string) =>
    `Holds ${option} whole: the kitchen with its place, who uses it, the lights, and the finishes in use. Notes, log, revisions, photos, and other options stay here.`,
  where: 'All of it is in the link itself. Nothing is sent anywhere until you send the link to someone.',
  make: 'Make the link',
  makeAnew: 'Make it anew',
  changed: 'The option changed since this link was made.',
  copy: 'Copy the link',
  copied: 'Copied.',
  length: (characters: number) => `${integer(characters)} characters.`,
  code: 'The link as a QR code',
  noCode: 'Too long for a QR code.',
  failed: 'The link could not be made: a part of the program could not be loaded.',
  failedRemedy: 'Reload the page and try again.',

  source: 'link',
  brings: (option: string) => `A link brings ${option}`,
  contents: (project: string, kitchen: string, finishes: number, lights: number) =>
    `${project}: ${kitchen}, ${finishes === 1 ? '1 finish' : `${finishes} finishes`}, ${lights === 1 ? '1 light' : `${lights} lights`}.`,
  beside: 'It opens as a project of its own, beside those kept in this browser.',
  open: 'Open it',
  leave: 'Not now',
  /** What the project is called that a link opens: others of its name may be kept. */
  nameOf: (project: string, option: string) =>
    project.replace(/ \(copy( \d+)?\)$/, '').endsWith(option) ? project : `${project}, ${option}`,
  opened: (option: string) => `open ${option} from a link`,
} as const);
