import type { LosableTall, Loss, SinglePart } from '../../model/new-kitchen/losses';
import { FIXTURES } from './fixtures';
import { KITCHEN } from './kitchen';
import { spoken } from './spoken';

const SINGLES: { readonly [P in SinglePart]: string } = spoken({
  dishwasher: 'the dishwasher',
  oven: 'the oven',
  'built-in-hood': 'the built-in hood',
  island: 'the island or peninsula',
  seats: 'the stools',
  'open-side': 'the opening to the next room',
});
const TALLS: { readonly [T in LosableTall]: string } = spoken({ larder: 'a pantry', fridge: 'a fridge' });
const HEADS: { readonly [F in Exclude<Loss['fate'], 'anew'>]: string } = spoken({
  'left-out': 'Left out',
  smaller: 'Made smaller',
  moved: 'Moved',
  fewer: 'Fewer',
  spread: 'Spread evenly again',
});
const ANEW = 'Runs, sink and cooktop were laid out anew.';
const otherLayout = (name: string): string => `The room is too small for its layout, which is now: ${name}.`;
const UNDO = 'Undo brings everything back.';

/** Words for what a changed kitchen could not keep. */
export const LOSSES = spoken({
  title: 'Not everything fits as it was.',
  dismiss: 'Understood',
} as const);

/** What was lost in sentences, the gravest first; none where nothing was. */
export function lossSentences(losses: readonly Loss[]): readonly string[] {
  if (losses.length === 0) return [];
  const fates = Object.keys(HEADS) as (keyof typeof HEADS)[];
  const lists = fates.flatMap((fate) => {
    const parts = losses.filter((loss) => loss.fate === fate).map(partWords);
    return parts.length === 0 ? [] : [`${HEADS[fate]}: ${parts.join(', ')}.`];
  });
  const layouts = losses.flatMap((loss) =>
    loss.part === 'layout' ? [...(loss.other ? [otherLayout(KITCHEN.layouts[loss.other])] : []), ANEW] : [],
  );
  return [...layouts, ...lists, UNDO];
}

function partWords(loss: Loss): string {
  switch (loss.part) {
    case 'opening':
      return KITCHEN.windowName(loss.kind, loss.number).toLowerCase();
    case 'tall':
      return TALLS[loss.id];
    case 'lamps':
      return FIXTURES.kinds[loss.kind].toLowerCase();
    case 'door':
      return 'the door';
    case 'single':
      return SINGLES[loss.id];
    case 'layout':
      return '';
  }
}
