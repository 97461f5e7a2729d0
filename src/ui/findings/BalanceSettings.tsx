import { type SettingBalance, settingsSentence } from '../../engine/judge/balance-settings';
import { BALANCE_WORDS, FINDINGS } from '../words/findings';
import { capital, seenShare } from '../words/numbers';
import { retold } from '../words/spoken';

interface BalanceSettingsProps {
  /** The project's settings, by id and short name; the one on screen is marked. */
  readonly settings: readonly { readonly id: string; readonly name: string }[];
  readonly current: string;
  /** What was worked out so far, by setting; null while nobody asked. */
  readonly balances: ReadonlyMap<string, SettingBalance>;
  /** Unfolded: now it is to be worked out. */
  readonly onOpen: (open: boolean) => void;
}

/** How the balance moves with the light: a line for every setting, worked out when unfolded. */
export function BalanceSettings({ settings, current, balances, onOpen }: BalanceSettingsProps) {
  const known = settings.flatMap(({ id }) => balances.get(id) ?? []);
  return (
    <details className="fold" onToggle={(event) => onOpen(event.currentTarget.open)}>
      <summary>{FINDINGS.inEverySetting}</summary>
      <div className="balance-settings small">
        <p role="status">{known.length === settings.length ? retold(settingsSentence(known)) : FINDINGS.weighing}</p>
        <table className="balance-table">
          <thead>
            <tr>
              <th scope="col">{FINDINGS.asInstalled}</th>
              <th scope="col">{FINDINGS.warm}</th>
              <th scope="col">{FINDINGS.leaning}</th>
              <th scope="col">{FINDINGS.neutral}</th>
              <th scope="col">{FINDINGS.cool}</th>
            </tr>
          </thead>
          <tbody>
            {settings.map(({ id, name }) => {
              const balance = balances.get(id);
              return (
                <tr key={id} className={id === current ? 'is-current' : ''}>
                  <th scope="row">
                    {name}
                    {id === current ? FINDINGS.onScreen : ''}
                    <span className="balance-verdict">{balance ? verdictOf(balance) : '…'}</span>
                  </th>
                  {(['warm', 'leaning', 'neutral', 'cool'] as const).map((kind) => (
                    <td key={kind}>{balance?.shares ? seenShare(balance.shares[kind]) : ''}</td>
                  ))}
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
    </details>
  );
}

function verdictOf({ shares, verdict, tips }: SettingBalance): string {
  if (!shares) return FINDINGS.noLight;
  return tips ? FINDINGS.tipsTo(BALANCE_WORDS[verdict]) : capital(BALANCE_WORDS[verdict]);
}
