import type { SurfaceId } from '../../engine/surface';
import { spoken } from './spoken';

/** The surfaces a point of a picture may stand for, as people call them. */
const SURFACES = spoken({
  counter: 'Counter',
  floor: 'Floor',
  'base-fronts': 'Cabinet fronts',
  'island-fronts': 'Island fronts',
  backsplash: 'Backsplash',
  wall: 'Wall',
  hardware: 'Handles',
} as const satisfies Partial<Record<SurfaceId, string>>);

const relations = (count: number): string => `${count} ${count === 1 ? 'relation' : 'relations'}`;

type Effect = Readonly<Record<'mends' | 'costs' | 'worsens' | 'opens', number>>;

/** Words of the panel of a copied look. */
export const LOOK = spoken({
  title: 'Copied look',
  intro: 'A look is held by how its surfaces stand to each other, never as colors to match.',
  which: 'The look',
  fromOption: (name: string) => `${name} (option)`,
  fromPicture: (name: string) => `${name} (picture)`,
  fromScheme: (name: string) => `${name} (scheme)`,
  nothing: 'There is no other option and no look yet. Take one from a picture, or open a file.',
  picture: 'From a picture',
  pictureTitle: 'Open a picture and place points on its surfaces. It stays on this device and is not kept.',
  file: 'From a file',
  fileTitle: 'A look file, or a project file: its first option',
  keep: 'Save as a look file',
  remove: 'Remove this look',
  mode: 'How it is judged',
  modes: [
    { id: 'carried', name: 'Carried over' },
    { id: 'as-is', name: 'As it stands' },
  ],
  modeNote: {
    carried: (option: string) => `As it would be with the look laid on ${option}; what is fixed or ordered stays.`,
    'as-is': (option: string) => `${option} as it is now, held against the look.`,
  },
  result: 'What becomes of the look',
  working: 'Working it out ...',
  notYet: 'Cannot be told yet: the light of this setting is not known, or it is dark.',
  counts: (breaks: number, holds: number, open: number) =>
    `${breaks === 0 ? 'Nothing breaks' : `${relations(breaks)} ${breaks === 1 ? 'breaks' : 'break'}`}, ${holds} ${holds === 1 ? 'holds' : 'hold'}${open > 0 ? `, ${open} cannot be told` : ''}.`,
  noRelations: 'The look yields no relation that is sure enough: give it more surfaces, or surer colors.',
  there: 'There',
  goesWith: (count: number) => `${relations(count)} ${count === 1 ? 'goes' : 'go'} with it`,
  basis: 'Relations are of samples side by side.',
  inPlaceAll: 'In this room and light all of it that can be read there shows, too.',
  inPlaceSome: (shown: number, read: number) =>
    `In this room and light ${shown} of the ${read} that can be read there ${shown === 1 ? 'shows' : 'show'}, too.`,
  typicalViews: 'Nobody knows the look’s room: its shares of the view are those of a typical kitchen.',
  inPlace: {
    breaks: 'It shows in this room and light, too.',
    holds: 'In this room and light it does not show.',
    'cannot-tell': 'Whether it shows in this room and light is too close to call.',
  },
  also: (count: number) => `${count} more ${count === 1 ? 'step goes' : 'steps go'} with these.`,
  stays: (surfaces: string, plural: boolean) =>
    `${surfaces} ${plural ? 'stay' : 'stays'} as ${plural ? 'they are' : 'it is'}.`,
  sure: (there: number, here: number | null) =>
    `True of the look in ${Math.round(100 * there)}% of tries${here === null ? '' : `, here in ${Math.round(100 * here)}%`}.`,
  repairs: 'What would mend it',
  repairsNote:
    'Each was tried as samples and in this room and light; none brings a new warning here, and none breaks more than it mends. ' +
    'First what mends the whole (warm and cool, the pattern), then order, edges and undertones, then the rest; each less what it loses.',
  noRepairs: 'No one or two changes from the library mend more than they break, without asking for something new.',
  beyond: (what: string) => `Nothing mends ${what} while the surfaces stay.`,
  effect: ({ mends, costs, worsens, opens }: Effect) =>
    [
      `Mends ${mends}`,
      costs === 0 ? 'breaks none' : `breaks ${costs}`,
      ...(worsens > 0 ? [`makes ${worsens} worse`] : []),
      ...(opens > 0 ? [`leaves ${opens} open`] : []),
    ].join(', '),
  effects: { mends: 'Mended', costs: 'Broken', worsens: 'Worse', opens: 'Left open' },
  decided: (surfaces: string) => `That changes what is decided: ${surfaces}.`,
  change: (label: string, surfaces: string) => `${label} on ${surfaces}`,
  lay: 'Lay as a new option',
  tryIt: 'Try',
  layWith: 'Lay with this change',
  tryLabel: (change: string) => `look with ${change}`,
  layHere: (option: string) => `Lay on ${option}`,
  laidAlready: (option: string) => `${option} has all of it already that is not fixed or ordered.`,
  sideBySide: 'Side by side',
  full: 'A project compares three options at most: it is laid on this option, and undo takes it back.',
  laidName: (look: string) => `${look}, carried`,
  layLabel: (look: string) => `lay look "${look}"`,
  changeLabel: 'change that mends a look',
  held: (count: number) => `What holds (${count})`,
  open: (count: number) => `Cannot be told (${count})`,
  leftOut: (count: number) => `Not sure enough in the look (${count})`,
  laidHow: 'What was laid',
  kept: (surfaces: string, plural: boolean, why: string) =>
    `${surfaces} ${plural ? 'stay as they are' : 'stays as it is'}: ${why}.`,
  why: { fixed: 'fixed', ordered: 'ordered', 'not-in-look': 'not in the look' },
  fromPictureNote: 'From a picture: its colors are known to about plus or minus 10, so only relations are taken.',
} as const);

/** Words of placing points on a picture. */
export const POINTS = spoken({
  title: 'Look from a picture',
  intro:
    'Click the picture to place a point, then say what it stands on. Choose places in even light, away from gloss and shadow. ' +
    'A picture gives colors to about plus or minus 10 CIEDE2000: only the relations below are taken from it.',
  picture: 'Picture',
  add: 'Add a point',
  hint: 'Arrow keys move a point, with Shift in larger steps; Delete removes it.',
  point: (number: number, surface: string) => `Point ${number}: ${surface}`,
  surfaces: SURFACES,
  surface: 'Stands on',
  part: 'Part',
  parts: { flat: 'Main color', vein: 'Vein or fleck' },
  remove: (number: number) => `Remove point ${number}`,
  spread: (de00: number) => (de00 < 3 ? 'even' : `uneven, spread ${de00.toFixed(0)} CIEDE2000`),
  clipped: 'burnt out or black: no color to take',
  none: 'No point yet.',
  loupe: 'Magnified around the point',
  yields: 'Relations it yields',
  needs: 'Place points on at least two surfaces.',
  working: 'Working it out ...',
  sure: (share: number) => `${Math.round(100 * share)}% sure`,
  leftOut: 'Seen, but not sure enough to take',
  name: 'Name',
  usualName: 'Look from a picture',
  save: 'Keep this look',
  cancel: 'Cancel',
  kept: 'Only the points’ colors are kept in the project. The picture, and where it was taken, are not.',
} as const);

/** What is wrong with a picture that was chosen. */
export const PICTURE_PROBLEMS = spoken({
  unreadable: 'This file cannot be shown as a picture.',
  unreadableRemedy: 'Choose a JPEG, PNG or WebP picture.',
  tooSmall: 'The picture is only a few pixels large.',
  tooSmallRemedy: 'Choose a larger one.',
} as const);
