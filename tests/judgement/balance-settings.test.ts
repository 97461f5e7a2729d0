import { describe, expect, it } from 'vitest';
import type { BalanceVerdict } from '../../src/engine/judge/assessment';
import { type SettingBalance, settingsSentence } from '../../src/engine/judge/balance-settings';

const shares = { warm: 0.1, leaning: 0.2, cool: 0.3, neutral: 0.4 };
const of = (name: string, verdict: BalanceVerdict, tips: boolean, lit = true): SettingBalance => ({
  setting: name,
  name,
  shares: lit ? shares : null,
  verdict,
  tips,
});

describe('how the balance moves with the settings', () => {
  it('says that it does not where no light makes another verdict', () => {
    expect(settingsSentence([of('Day', 'muted', false), of('Evening', 'muted', false)])).toBe(
      'In all of these lights the answer is that of the samples.',
    );
  });

  it('names the lights that tip it, and which way', () => {
    const all = [
      of('Day, overcast', 'balanced', false),
      of('Evening', 'lacks-cool', true),
      of('Dinner', 'lacks-cool', true),
    ];
    expect(settingsSentence(all)).toBe(
      'The kitchen tips to warm in evening and dinner light; in the others the answer is that of the samples.',
    );
    expect(settingsSentence([of('Day', 'lacks-warm', true), of('Evening', 'balanced', true)])).toBe(
      'The kitchen tips to cool in day light and reads balanced in evening light.',
    );
  });

  it('does not scold a quiet kitchen', () => {
    expect(settingsSentence([of('Day', 'balanced', false), of('Evening', 'muted', true)])).toBe(
      'The kitchen reads quiet in evening light; in the others the answer is that of the samples.',
    );
  });

  it('leaves the dark out', () => {
    expect(settingsSentence([of('Night', 'balanced', false, false)])).toContain('only the samples');
    expect(settingsSentence([of('Night', 'balanced', false, false), of('Day', 'balanced', false)])).toBe(
      'In this light the answer is that of the samples.',
    );
  });
});
