import { spoken } from './spoken';

/** Words of working without a network, and of going over to a newer version. */
export const OFFLINE = spoken({
  states: {
    never: 'Needs a network here: the browser keeps nothing for this address.',
    coming: 'Getting ready to work offline …',
    works: 'Works offline.',
  },
  newly: 'Works offline now.',
  version: (version: string) => `Version ${version}.`,
  region: 'Newer version',
  ready: 'A newer version is ready.',
  keepsWork: 'The page loads again; your work stays.',
  unsaved: 'The page loads again. There are changes that are kept nowhere yet: save them first.',
  update: 'Update now',
  later: 'Later',
} as const);
