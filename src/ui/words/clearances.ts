import type { ClearanceHint, ClearanceSource, Stretch } from '../../model/clearances/types';
import type { Kitchen } from '../../model/kitchen';
import type { UserNeed } from '../../model/project';
import { capital } from './numbers';
import { spoken } from './spoken';

/** Words round what planners recommend. */
export const CLEARANCES = spoken({
  title: 'Clearances',
  short: (count: number) =>
    count === 0
      ? 'All measures are as recommended.'
      : count === 1
        ? 'One measure misses what is recommended.'
        : `${count} measures miss what is recommended.`,
  fine: (count: number) => `As recommended: ${count}`,
  notLaw: 'These are recommendations, not law; local codes decide.',
  source: (words: string) => `Source: ${words}.`,
  isShort: 'Misses it',
  isFine: 'As recommended',
  users: 'Who uses the kitchen',
  needs: {
    'over-65': 'Somebody over 65',
    'low-vision': 'Somebody with low vision',
    wheelchair: 'Somebody with a wheelchair',
    children: 'Children',
  } satisfies Record<UserNeed, string>,
} as const);

/** Where a figure comes from, in words. */
export const SOURCES: { readonly [S in ClearanceSource]: string } = spoken({
  'planning-guidelines': 'kitchen planning guidelines of the North American trade',
  'planning-guidelines-from-memory': 'kitchen planning guidelines of the North American trade, quoted from memory',
  'stone-trade': 'rule of the stone trade',
  'accessible-us': 'accessible kitchens in the US',
  'accessible-housing-uk': 'accessible housing in the UK, quoted from memory',
  'wheelchair-housing-uk': 'the wheelchair category of housing in the UK',
});

interface Figures {
  /** With units. */
  readonly measured: string;
  readonly wanted: string;
}

const LEGS = spoken(['fridge to sink', 'sink to cooktop', 'cooktop to fridge'] as const);

/** What a hint says, in a sentence. `nth`: how many of its code came before it; they come in a fixed order. */
export const clearanceWords = spoken(hintSentence);

function hintSentence(hint: ClearanceHint, kitchen: Kitchen, nth: number, figures: Figures): string {
  const { measured, wanted } = figures;
  const least = `${wanted} or more`;
  const there = hint.measured_mm > 0 ? `there are ${measured} of counter` : 'there is no counter';
  switch (hint.code) {
    case 'work-aisle':
      return `The aisle between ${betweenWords(hint.at[0], kitchen)} is ${measured}; ${least} is recommended for one cook.`;
    case 'walkway':
      return `The way between ${betweenWords(hint.at[0], kitchen)} is ${measured} wide; ${least} is recommended.`;
    case 'behind-seats':
      return `Behind the seats there are ${measured}; ${least} is recommended to walk past them.`;
    case 'accessible-passage':
      return hint.source === 'wheelchair-housing-uk'
        ? `The narrowest passage is ${measured}; ${least} is recommended with a wheelchair.`
        : `The narrowest passage is ${measured}; ${least} is recommended in accessible homes.`;
    case 'counter-height':
      return `The counter is ${measured} high; ${wanted} at most is recommended with a wheelchair.`;
    case 'seat-width':
      return `Each seat has ${measured} of counter; ${least} is recommended.`;
    case 'knee-depth':
      return `Knees have ${measured} under the counter; ${least} is recommended at its height.`;
    case 'stone-overhang':
      return `The counter reaches ${measured} over the seats; stone of its thickness should reach ${wanted} at most without support.`;
    case 'landing-fridge':
      return `${capital(there)} beside or across from the fridge; ${least} is recommended.`;
    case 'landing-cooktop':
      return `On the ${nth === 0 ? 'shorter' : 'longer'} side of the cooktop ${there}; ${least} is recommended.`;
    case 'landing-sink':
      return `On the ${nth === 0 ? 'shorter' : 'longer'} side of the sink ${there}; ${least} is recommended.`;
    case 'prep-counter':
      return `The counter beside the sink is ${measured} long; ${least} in one piece is recommended to prepare food.`;
    case 'counter-frontage':
      return `All counters together are ${measured} long; ${least} is recommended.`;
    case 'work-triangle':
      return `From fridge to sink to cooktop and back it is ${measured}; ${wanted} at most is recommended.`;
    case 'triangle-leg':
      return `From ${LEGS[nth] ?? LEGS[0]} it is ${measured}; ${hint.bound === 'most' ? `${wanted} at most` : least} is recommended.`;
  }
}

/** What a passage lies between: "the left run and the island". */
function betweenWords(stretch: Stretch | undefined, kitchen: Kitchen): string {
  if (!stretch) return 'two sides';
  const isAlongX = stretch.from[1] === stretch.to[1];
  const [low, high] = isAlongX
    ? (['the left run', 'the right run'] as const)
    : (['the door wall', 'the back run'] as const);
  return `${sideWords(stretch.from, kitchen) ?? low} and ${sideWords(stretch.to, kitchen) ?? high}`;
}

function sideWords([x, y]: Stretch['from'], { room, island }: Kitchen): string | null {
  const touches = (a: number, b: number): boolean => Math.abs(a - b) < 1;
  if (island) {
    const isIn = (at: number, from: number, size: number) => at > from - 1 && at < from + size + 1;
    const isAtIt = isIn(x, island.x, island.width) && isIn(y, island.y, island.depth);
    if (isAtIt) return island.joined ? 'the peninsula' : 'the island';
  }
  if (touches(x, 0)) return 'the left wall';
  if (touches(x, room.width)) return 'the right wall';
  if (touches(y, 0)) return 'the door wall';
  return touches(y, room.depth) ? 'the back wall' : null;
}
