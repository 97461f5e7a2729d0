import { relationGroups } from '../../engine/judge/relations/groups';
import type { RelationCheck } from '../../engine/judge/relations/types';
import { surfaceName } from '../../engine/judge/surface-words';
import type { CarriedLook } from '../../kitchen/carry/carry-over';
import { fixed, percent, wrapped } from './figures';

/** The object for --json. */
export function carriedRecord(carried: CarriedLook) {
  const { commands: _, holds, breaks, cannot_tell, ...rest } = carried;
  return {
    ...rest,
    holds: holds.map(recordOf),
    breaks: breaks.map((check) => ({ relation: recordOf(check), by: check.by, kept: check.kept })),
    cannot_tell: cannot_tell.map((check) => ({ relation: recordOf(check), text: check.here })),
  };
}

function recordOf({ relation, here, holds_in }: RelationCheck) {
  const { claim: _, ...record } = relation;
  return { ...record, here: { text: here, holds_in } };
}

/** A carried look in plain text: what broke first, then what would mend it, what holds, and what cannot be told. */
export function carriedText(carried: CarriedLook): string {
  const { look, option, setting, project, as_is, breaks, holds, cannot_tell, left_out, warnings, repairs } = carried;
  const from = look.source === 'picture' ? 'from a picture, so only relations are taken' : 'from a scheme';
  const count = holds.length + breaks.length + cannot_tell.length;
  return [
    `Look "${look.name}" (${from}) ${as_is ? 'against' : 'carried to'} ${project}, option ${option}, setting ${setting}`,
    `${count} relations: ${holds.length} hold, ${breaks.length} break, ${cannot_tell.length} cannot be told.`,
    ...(as_is ? [] : laidLines(carried)),
    '',
    breaks.length === 0 ? 'Breaks: none' : 'Breaks:',
    ...breaks.flatMap(brokenLines),
    '',
    warnings.length === 0 ? 'The findings ask for nothing.' : 'The findings ask:',
    ...warnings.map(({ severity, text }) => wrapped(`[${severity}] ${text}`, '  ')),
    '',
    repairs.length === 0 ? 'Repairs: none found in the library' : 'Repairs, each run as samples and as installed here:',
    ...repairs.flatMap(({ text, mends, costs }) => [
      wrapped(text, '  '),
      wrapped(`mends ${mends.join(', ')}${costs.length > 0 ? `; at the price of ${costs.join(', ')}` : ''}`, '      '),
    ]),
    '',
    holds.length === 0 ? 'Holds: none' : 'Holds:',
    ...relationGroups(holds).flatMap(({ title, checks }) => [
      `  ${title}`,
      ...checks.map(({ relation }) => wrapped(relation.text, '      ')),
    ]),
    ...(cannot_tell.length > 0 ? ['', 'Cannot be told:'] : []),
    ...cannot_tell.map(({ relation, here }) => wrapped(`${relation.text} ${here}`, '  ')),
    ...(left_out.length > 0 ? ['', 'Not taken from the look, whose colors leave it open:'] : []),
    ...left_out.map(({ text }) => wrapped(text, '  ')),
    '',
    'Planning aid only. A screen is not a sample: check physical samples in the room before ordering.',
  ].join('\n');
}

function brokenLines({ relation, here, by, holds_in }: RelationCheck): readonly string[] {
  const firm =
    holds_in === null
      ? ''
      : `; true of the look in ${percent(relation.holds_in)} of tries, here in ${percent(holds_in)}`;
  return [
    wrapped(relation.text, '  '),
    wrapped(here, '      '),
    wrapped(`(${relation.id}: ${by?.text ?? ''}${firm})`, '      '),
  ];
}

function laidLines({ laid, kept }: CarriedLook): readonly string[] {
  const nearest = laid.filter((one) => one.how === 'nearest');
  const none = laid.filter(({ how }) => how === 'none');
  const same = laid.filter(({ how }) => how === 'same');
  const stays = kept.filter(({ why }) => why !== 'not-in-look');
  const unnamed = kept.filter(({ why }) => why === 'not-in-look');
  const names = (list: readonly { readonly surface: string }[]) =>
    list.map(({ surface }) => surfaceName(surface).toLowerCase()).join(', ');
  return [
    ...(stays.length > 0
      ? [
          wrapped(
            `Stays: ${stays.map(({ surface, label, why }) => `${surfaceName(surface).toLowerCase()} (${why}, ${label})`).join('; ')}.`,
          ),
        ]
      : []),
    ...(same.length > 0 ? [wrapped(`Laid as it was: ${names(same)}.`)] : []),
    ...nearest.map(({ surface, label, de00 }) =>
      wrapped(
        `Nearest in the library for the ${surfaceName(surface).toLowerCase()}: ${label}, ${fixed(de00)} CIEDE2000 away.`,
      ),
    ),
    ...(none.length > 0
      ? [wrapped(`Nothing in the library within 10 CIEDE2000, left as it was: ${names(none)}.`)]
      : []),
    ...(unnamed.length > 0 ? [wrapped(`Not in the look, left as it was: ${names(unnamed)}.`)] : []),
  ];
}
