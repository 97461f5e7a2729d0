import { judgeBalance } from '../../engine/judge/balance';
import type { SettingBalance } from '../../engine/judge/balance-settings';
import { placedColors } from '../../engine/judge/pairs';
import { type Result, success } from '../../engine/result';
import type { Project } from '../../model/project';
import { judgeTried } from './judge-tried';
import type { StudiedSetting } from './shortlist-in-place';

/** What a setting makes of the balance of an option. Fails where a finish cannot be laid. */
export function balanceIn(
  project: Project,
  option: string,
  { name, study, light }: StudiedSetting,
): Result<SettingBalance> {
  const input = judgeTried(project, option, study, light);
  if (!input.ok) return input;
  const { balance } = judgeBalance(input.value, placedColors(input.value));
  const isDark = input.value.surfaces.every(({ installed }) => installed.length === 0);
  const [warm, leaning, cool, neutral] = balance.installed.shares;
  return success({
    setting: light.id,
    name,
    shares: isDark ? null : { warm, leaning, cool, neutral },
    verdict: isDark ? balance.verdict : balance.installed.verdict,
    tips: !isDark && balance.installed.verdict !== balance.verdict,
  });
}
