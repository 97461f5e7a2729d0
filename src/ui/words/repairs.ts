import type { FindingRef, RepairChange } from '../../engine/judge/assessment';
import { faultsPhrase, fromViewpoint, surfacesPhrase } from './engine-words';
import { decimal, listed } from './numbers';
import { spoken } from './spoken';

/** Words of what would help with a warning. */
export const REPAIRS = spoken({
  title: 'What would help',
  looking: 'Looking through the library.',
  rule: 'Each was run in this room in every setting. What is fixed or ordered stays.',
  on: ({ label, surfaces }: RepairChange) => `${label}, on ${surfacesPhrase(surfaces).text}`,
  moves: ({ moved_de00 }: RepairChange) => `Moves the color by ${decimal(moved_de00)} CIEDE2000.`,
  clears: (refs: readonly FindingRef[]) => `Clears ${faultsPhrase(refs)}.`,
  softens: (refs: readonly FindingRef[]) => `Leaves a note of ${faultsPhrase(refs)}.`,
  addsElsewhere: (text: string, settings: readonly string[]) =>
    `In ${listed(settings.map((one) => one.toLowerCase()))} light: ${text}`,
  brings: 'It brings',
  mayNot: (viewpoints: readonly string[]) =>
    `It may not be enough: ${listed(viewpoints.map(fromViewpoint))} the balance is another.`,
  decided: 'This changes what is decided.',
  try: 'Try',
  tryIt: (change: string) => `Try ${change}`,
  first: 'Keep or drop what is on trial first.',
} as const);
