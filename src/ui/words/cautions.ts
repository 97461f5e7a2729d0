import { spoken } from './spoken';

/** Words round the cautions, which have their own (`model/caution-words.ts`). */
export const CAUTIONS = spoken({
  title: 'Before you order',
  planning: 'Planning aid only. Local codes, appliance manuals and licensed trades decide.',
  screen: 'A screen is not a sample. Check physical samples in the room before you order.',
} as const);
