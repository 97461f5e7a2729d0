import { relationGroups } from '../../engine/judge/relations/groups';
import { beyondRepair } from '../../engine/judge/relations/relation-names';
import type { RelationCheck } from '../../engine/judge/relations/types';
import { surfaceName } from '../../engine/judge/surface-words';
import type { BrokenRelation, CarriedLook } from '../../kitchen/carry/carry-over';
import { laidSentences } from '../../kitchen/carry/laid-words';
import type { RelationRepair } from '../../kitchen/carry/relation-repair';
import { percent, wrapped } from './figures';

/** The object for --json. */
export function carriedRecord(carried: CarriedLook) {
  const { commands: _, holds, breaks, cannot_tell, ...rest } = carried;
  return {
    ...rest,
    holds: holds.map(recordOf),
    breaks: breaks.map((check) => ({
      relation: recordOf(check),
      by: check.by,
      kept: check.kept,
      in_place: check.in_place,
    })),
    cannot_tell: cannot_tell.map((check) => ({ relation: recordOf(check), text: check.here })),
  };
}

function recordOf({ relation, here, holds_in }: RelationCheck) {
  const { claim: _, ...record } = relation;
  return { ...record, here: { text: here, holds_in } };
}

/** A carried look in plain text: what broke and why first, then what would mend it, what holds, and what cannot be told. */
export function carriedText(carried: CarriedLook): string {
  const { look, option, setting, project, as_is, counts, holds, cannot_tell, left_out, warnings, repairs } = carried;
  const from = look.source === 'picture' ? 'from a picture, so only relations are taken' : 'from a scheme';
  return [
    wrapped(
      `Look "${look.name}" (${from}) ${as_is ? 'against' : 'carried to'} ${project}, option ${option}, setting ${setting}`,
    ),
    wrapped(`Relations: ${counts.holds} hold, ${counts.breaks} break, ${counts.cannot_tell} cannot be told.`),
    wrapped(basisSentence(carried)),
    ...(as_is ? [] : laidLines(carried)),
    '',
    ...brokenLines(carried),
    '',
    warnings.length === 0 ? 'The findings ask for nothing.' : 'The findings ask:',
    ...warnings.map(({ severity, text }) => wrapped(`[${severity}] ${text}`, '  ')),
    ...(counts.breaks > 0 ? ['', ...repairLines(repairs, carried)] : []),
    '',
    holds.length === 0 ? 'Holds: none' : 'Holds:',
    ...relationGroups(holds).flatMap(({ title, checks, also }) => [
      `  ${title}`,
      ...checks.map(({ relation }) => wrapped(relation.text, '      ')),
      ...(also > 0 ? [`      (${also} more ${also === 1 ? 'step goes' : 'steps go'} with these)`] : []),
    ]),
    ...(cannot_tell.length > 0 ? ['', 'Cannot be told:'] : []),
    ...cannot_tell.map(({ relation, here }) => wrapped(`${relation.text} ${here}`, '  ')),
    ...(left_out.length > 0 ? ['', 'Not taken from the look, whose colors leave it open:'] : []),
    ...left_out.map(({ text }) => wrapped(text, '  ')),
    '',
    'Planning aid only. A screen is not a sample: check physical samples in the room before ordering.',
  ].join('\n');
}

/** What the relations rest on, and whether what breaks shows in place. */
function basisSentence({ setting, views, breaks }: CarriedLook): string {
  const read = breaks.flatMap(({ in_place }) => in_place ?? []);
  const shown = read.filter(({ stands }) => stands === 'breaks').length;
  return [
    'They are of samples side by side.',
    ...(read.length === 0
      ? []
      : [
          shown === read.length
            ? `In place under ${setting} all that breaks and can be read there breaks, too.`
            : `In place under ${setting} ${shown} of the ${read.length} that break and can be read there break, too.`,
        ]),
    ...(views === 'typical'
      ? ['Of the look nobody knows the room: its shares of the view are those of a typical kitchen.']
      : []),
  ].join(' ');
}

/** One entry for each cause, and under it what goes with it. */
function brokenLines({ causes, breaks, setting }: CarriedLook): readonly string[] {
  if (causes.length === 0) return ['Breaks: none'];
  const lines = causes.flatMap(({ text, count, relations }) => [
    wrapped(`${text} ${count} ${count === 1 ? 'relation goes' : 'relations go'} with it:`, '  '),
    ...breaks.filter(({ relation }) => relations.includes(relation.id)).flatMap((one) => relationLines(one, setting)),
  ]);
  return ['Breaks:', ...lines];
}

function relationLines({ relation, here, by, holds_in, in_place }: BrokenRelation, setting: string): readonly string[] {
  const firm =
    holds_in === null
      ? ''
      : `; true of the look in ${percent(relation.holds_in)} of tries, here in ${percent(holds_in)}`;
  const place = in_place && in_place.stands !== 'breaks' ? ` ${IN_PLACE[in_place.stands](setting)}` : '';
  return [listed(`${relation.text} ${here}${place}`), wrapped(`(${relation.id}: ${by?.text ?? ''}${firm})`, '      ')];
}

const listed = (text: string): string => wrapped(text, '      ').replace(/^ {6}/, '    - ');

const IN_PLACE = {
  holds: (setting: string) => `In place under ${setting} it does not show.`,
  'cannot-tell': (setting: string) => `In place under ${setting} it is too close to call.`,
} as const;

function repairLines(repairs: readonly RelationRepair[], { breaks }: CarriedLook): readonly string[] {
  const beyond = beyondRepair(breaks);
  const settled =
    beyond.length === 0
      ? []
      : [wrapped(`Nothing mends these while their surfaces stay as they are: ${beyond.join(', ')}.`, '  ')];
  if (repairs.length === 0) {
    return ['Repairs: no one or two changes from the library mend more than they break.', ...settled];
  }
  return [
    'Repairs, each run as samples and as installed in this setting, where none brings a new warning.',
    'First what mends the whole (warm and cool, the pattern), then order, edges and undertones, then',
    'the rest; each less what it loses:',
    ...repairs.map(({ text }) => wrapped(text, '  ')),
    ...settled,
  ];
}

function laidLines({ laid, kept }: CarriedLook): readonly string[] {
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
    ...laidSentences(laid).map((text) => wrapped(text)),
    ...(unnamed.length > 0 ? [wrapped(`Not in the look, left as it was: ${names(unnamed)}.`)] : []),
  ];
}
