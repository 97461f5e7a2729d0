import type { AssessedSurface, Assessment, InstalledRecord, Warning } from '../../engine/judge/assessment';
import { surfaceName } from '../../engine/judge/surface-words';
import type { ToldCaution } from '../../model/caution-words';
import { undertoneText } from './color-text';
import { fixed, labText, percent, temperatureText, wrapped } from './figures';

/** An assessment as a plain text report: balance, warnings with their reasons, surface by surface, then what to heed. */
export function assessmentText(assessment: Assessment & { readonly cautions: readonly ToldCaution[] }): string {
  const { project, option, setting, balance, warnings, surfaces } = assessment;
  const { installed, range } = balance;
  const [warm, leaning, cool, neutral] = installed.shares;
  return [
    `${project}, option ${option}, setting ${setting.id} (${temperatureText(setting.cct_k, setting.duv)})`,
    '',
    `Balance: ${balance.verdict}`,
    wrapped(balance.sentence, '  '),
    `  of what one sees: warm ${percent(balance.warm_share)}, leaning warm ${percent(balance.leaning_share)}, ` +
      `cool ${percent(balance.cool_share)}, neutral ${percent(balance.neutral_share)} (as samples)`,
    `  over the viewpoints: warm ${percent(range.warm[0])} to ${percent(range.warm[1])}, ` +
      `cool ${percent(range.cool[0])} to ${percent(range.cool[1])}`,
    `  as installed: ${installed.verdict}, warm ${percent(warm)}, leaning warm ${percent(leaning)}, ` +
      `cool ${percent(cool)}, neutral ${percent(neutral)}`,
    '',
    warnings.length === 0 ? 'Warnings: none' : 'Warnings:',
    ...warnings.flatMap(warningLines),
    '',
    ...repairLines(assessment),
    'Surfaces:',
    ...surfaces.flatMap(surfaceLines),
    '',
    'Before you order:',
    ...assessment.cautions.map(({ text }) => wrapped(`- ${text}`, '  ')),
    '',
    'Planning aid only. Local codes, appliance manuals and licensed trades decide.',
    'A screen is not a sample: check physical samples in the room before ordering.',
  ].join('\n');
}

function warningLines(warning: Warning): readonly string[] {
  const firm = warning.holds_in === null ? '' : `, true in ${percent(warning.holds_in)} of tries within what is known`;
  return [
    wrapped(`[${warning.code === 'cannot-tell' ? 'open question' : warning.severity}] ${warning.text}`, '  '),
    ...(warning.reason ? [wrapped(warning.reason, '      ')] : []),
    wrapped(warning.why, '      '),
    `      (${warning.code}, ${warning.basis} basis${firm})`,
  ];
}

function repairLines({ repairs, unrepaired }: Assessment): readonly string[] {
  if (repairs.length + unrepaired.length === 0) return [];
  return [
    'What would help (each was run in every setting; what is fixed or ordered stays):',
    ...repairs.map(({ text, changes }) =>
      wrapped(
        `- ${text} (${changes.map(({ finish, moved_de00 }) => `${finish}, moves ${fixed(moved_de00)}`).join('; ')})`,
        '  ',
      ),
    ),
    ...unrepaired.map(({ code, text }) => wrapped(`- ${code}: ${text}`, '  ')),
    '',
  ];
}

function surfaceLines(surface: AssessedSurface): readonly string[] {
  return [
    `  ${surfaceName(surface.surface)} (${surface.state}): ${surface.label}`,
    `      ${surface.average.name}, ${undertoneText(surface.average)}, ${labText(surface.average.lab_d65)}, LRV ${fixed(surface.average.lrv, 0)}`,
    ...surface.components.map(
      (component) =>
        `      ${component.role} ${percent(component.share)}: ${component.name}, ${undertoneText(component)}, ` +
        `${labText(component.lab_d65)}, ${component.provenance}`,
    ),
    ...surface.installed.map(installedLine),
  ];
}

function installedLine(installed: InstalledRecord): string {
  const [from] = installed.tint_from;
  const ofLight = installed.tint_from_light;
  const light = `, ${percent(ofLight)} of the tint from the mix of lights`;
  const surface = from ? `, ${percent(from.share)} of the tint from ${surfaceName(from.surface).toLowerCase()}` : '';
  const source = ofLight > (from?.share ?? 0) ? light : surface;
  return (
    `      in place (${installed.facing}): ${installed.name}, ${undertoneText(installed)}, ${labText(installed.lab_d65)}, ` +
    `shift ${fixed(installed.shift_de00)}, ${fixed(installed.illuminance_lx, 0)} lx${source}`
  );
}
