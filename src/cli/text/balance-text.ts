import { type SettingBalance, settingsSentence } from '../../engine/judge/balance-settings';
import { percent, wrapped } from './figures';

/** What every setting makes of the balance, a line each. */
export const balanceText = (balances: readonly SettingBalance[]): string =>
  [
    'Balance in every setting, as installed:',
    wrapped(settingsSentence(balances), '  '),
    ...balances.map(
      ({ setting, name, shares, verdict, tips }) =>
        `  ${setting} (${name}): ` +
        (shares
          ? `${verdict}${tips ? ', which the light makes' : ''}; warm ${percent(shares.warm)}, leaning warm ` +
            `${percent(shares.leaning)}, cool ${percent(shares.cool)}, neutral ${percent(shares.neutral)}`
          : 'no light is on'),
    ),
  ].join('\n');
