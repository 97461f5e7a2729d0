import { sentenceCase } from '../../engine/judge/surface-words';
import type { Kitchen } from '../../model/kitchen';
import type { Change, NamedThing, PlacementChange } from '../../model/what-changed';
import { shownName } from './built-in';
import { surfacesPhrase } from './engine-words';
import { STATE_WORDS } from './finishes';
import { listed } from './numbers';
import { spoken } from './spoken';

const THINGS: { readonly [T in NamedThing | 'finish']: readonly [one: string, many: string] } = spoken({
  option: ['Option', 'Options'],
  setting: ['Light', 'Lights'],
  look: ['Copied look', 'Copied looks'],
  lamp: ['Lamp', 'Lamps'],
  beam: ['Beam', 'Beams'],
  finish: ['Finish', 'Finishes'],
});

const DID = spoken({ came: 'added', went: 'removed', changed: 'changed' } as const);

const PARTS: { readonly [P in keyof Kitchen]: string } = spoken({
  name: 'its name',
  region: 'region',
  room: 'size of the room',
  runs: 'runs of cabinets',
  island: 'island',
  fronts: 'style of the fronts',
  base: 'base cabinets',
  counter: 'counter sizes',
  wall_units: 'wall cabinets',
  tall_height: 'height of tall units',
  sink: 'sink',
  cooktop: 'cooktop and hood',
  dishwasher: 'dishwasher',
  fridge: 'fridge',
  site: 'place and bearing',
  openings: 'windows',
  open_side: 'open side',
  door: 'door',
  skirting_height: 'baseboard',
  upstand_height: 'upstand',
  fixtures: 'lamps of the room',
  objects: 'things on the counter',
});

const NOTHING = 'nothing';

/** More names than this make no sentence. */
const MOST_NAMES = 6;

/** What changed in one sentence. `severalOptions`: the option is named with its surfaces. */
export function changeSentence(change: Change, severalOptions: boolean): string {
  switch (change.kind) {
    case 'placement':
      return placementSentence(change, severalOptions);
    case 'option-note':
      return `The note of ${change.option} changed.`;
    case 'option-order':
      return change.tags.length === 0 || change.tags.length > MOST_NAMES
        ? `What is said of the schedule of ${change.option} changed.`
        : `What is said of ${listed(change.tags)} in the schedule of ${change.option} changed.`;
    case 'job':
      return 'Whom the work is for, or when, changed.';
    case 'quantities':
      return 'What quantities rest on changed.';
    case 'samples':
      return 'Samples changed.';
    case 'finishes': {
      const { did, labels } = change;
      return `${THINGS.finish[labels.length === 1 ? 0 : 1]} ${DID[did]}: ${namesOf(labels.map(shownName))}.`;
    }
    case 'came':
    case 'went':
    case 'changed': {
      const { kind, what, names } = change;
      return `${THINGS[what][names.length === 1 ? 0 : 1]} ${DID[kind]}: ${namesOf(names)}.`;
    }
    case 'renamed':
      return `${THINGS[change.what][0]} renamed: ${change.before} is now ${change.after}.`;
    case 'order':
      return `${THINGS[change.what][1]} stand in another order.`;
    case 'kitchen':
      return `Kitchen changed: ${listed(change.parts.map((part) => PARTS[part]))}.`;
    case 'users':
      return 'Who uses the kitchen changed.';
    case 'year':
      return 'The year of the house changed.';
    case 'project-name':
      return `Project renamed: ${change.before} is now ${change.after}.`;
    case 'project-note':
      return 'The note of the project changed.';
  }
}

function placementSentence(
  { option, surfaces, finish, state, laying }: PlacementChange,
  severalOptions: boolean,
): string {
  const { text, plural } = surfacesPhrase(surfaces);
  const where = severalOptions ? `${option}, ${text}` : sentenceCase(text.replace(/^the /, ''));
  const what = [
    ...(finish ? [`${shownName(finish.after ?? NOTHING)} instead of ${shownName(finish.before ?? NOTHING)}`] : []),
    ...(state ? [`${STATE_WORDS[state.after]}, ${plural ? 'were' : 'was'} ${STATE_WORDS[state.before]}`] : []),
    // Another finish mostly lies in another way; that goes without saying.
    ...(laying && !finish ? ['laid in another way'] : []),
  ];
  return `${where}: ${what.join('; ')}.`;
}

const namesOf = (names: readonly string[]): string =>
  names.length <= MOST_NAMES
    ? listed(names)
    : listed([...names.slice(0, MOST_NAMES - 1), `${names.length - MOST_NAMES + 1} more`]);
