import type { Warning } from '../../engine/judge/assessment';
import { surfaceName } from '../../engine/judge/surface-words';
import type { OptionComparison } from '../../kitchen/carry/compare-options';
import type { Project } from '../../model/project';
import { fixed, wrapped } from './figures';

/** Two options of a project side by side, in plain text. */
export function comparisonText(found: OptionComparison, { library }: Project): string {
  const { project, a, b, setting, changed, moved, gained, lost } = found;
  const label = (id: string) => library.find((finish) => finish.id === id)?.label ?? id;
  return [
    `${project}, from option ${a} to option ${b}, setting ${setting}`,
    '',
    changed.length === 0 ? 'Changed: no finish' : 'Changed:',
    ...changed.map(({ surface, from, to, shift_de00 }) =>
      wrapped(
        from === to
          ? `${surfaceName(surface)}: ${label(to)}, laid otherwise`
          : `${surfaceName(surface)}: ${label(from)} to ${label(to)}, ${fixed(shift_de00)} CIEDE2000`,
        '  ',
      ),
    ),
    ...(moved.length > 0 ? ['', 'Same finish, but another color in its place:'] : []),
    ...moved.map(({ surface, from_name, to_name, shift_de00 }) =>
      wrapped(
        `${surfaceName(surface)}: ${from_name === to_name ? `still ${to_name}` : `${from_name}, now ${to_name}`}, ${fixed(shift_de00)} CIEDE2000`,
        '  ',
      ),
    ),
    '',
    ...warningLines('Findings gained', gained),
    '',
    ...warningLines('Findings lost', lost),
    '',
    'Planning aid only. A screen is not a sample: check physical samples in the room before ordering.',
  ].join('\n');
}

const warningLines = (title: string, warnings: readonly Warning[]): readonly string[] =>
  warnings.length === 0
    ? [`${title}: none`]
    : [`${title}:`, ...warnings.map(({ severity, text }) => wrapped(`[${severity}] ${text}`, '  '))];
