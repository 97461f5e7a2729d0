import type { BalanceVerdict } from './assessment';
import { joined } from './surface-words';

/** What one setting makes of the balance: shares as installed, the cast of the light taken off. Plain data. */
export interface SettingBalance {
  readonly setting: string;
  readonly name: string;
  /** Area shares, sum 1; null where no light is on. */
  readonly shares: {
    readonly warm: number;
    readonly leaning: number;
    readonly cool: number;
    readonly neutral: number;
  } | null;
  /** As installed; that of the samples where no light is on. */
  readonly verdict: BalanceVerdict;
  /** The light makes it another verdict than that of the samples. */
  readonly tips: boolean;
}

const VERDICT_PHRASES: Readonly<Record<BalanceVerdict, string>> = {
  balanced: 'reads balanced',
  'lacks-warm': 'tips to cool',
  'lacks-cool': 'tips to warm',
  muted: 'reads quiet',
  'nothing-chosen': 'is not chosen yet',
};

/** "Evening, lamps on" as an adjective of light. */
const lightName = (name: string): string => (name.split(',')[0] ?? name).toLowerCase();

/** One sentence on how the balance moves with the settings of a project. */
export function settingsSentence(all: readonly SettingBalance[]): string {
  if (all.every(({ verdict }) => verdict === 'nothing-chosen')) return 'Nothing is chosen yet that could be weighed.';
  const lit = all.filter(({ shares }) => shares !== null);
  const tipping = lit.filter(({ tips }) => tips);
  if (lit.length === 0) return 'No light is on in any of these settings: only the samples are weighed.';
  if (tipping.length === 0) {
    return lit.length === 1
      ? 'In this light the answer is that of the samples.'
      : 'In all of these lights the answer is that of the samples.';
  }
  const verdicts = [...new Set(tipping.map(({ verdict }) => verdict))];
  const told = verdicts.map((verdict) => {
    const names = tipping.filter((one) => one.verdict === verdict).map(({ name }) => name);
    return `${VERDICT_PHRASES[verdict]} in ${joined(names.map(lightName))} light`;
  });
  const rest = tipping.length < lit.length ? '; in the others the answer is that of the samples' : '';
  return `The kitchen ${joined(told)}${rest}.`;
}
