import { surfaceName } from '../engine/judge/surface-words';
import { failure, type Problem, type Result, success } from '../engine/result';
import type { SurfaceId } from '../engine/surface';
import { applyCommand } from './apply-command';
import { checkProject } from './check-project';
import type { Command } from './commands';
import type { FixtureKind } from './fixture';
import type { Kitchen, Region, Wall } from './kitchen';
import { kitchenFor, usualRoom } from './new-kitchen';
import type { LayoutId } from './new-kitchen/layout-drafts';
import { fitFixtures, usualFixture } from './new-kitchen/usual-fixtures';
import { LAMP_GROUPS, type Option, type Project, type Setting, USERS, type UserNeed } from './project';

/** The white of lamps, as people know it. */
export type LampWhite = 'warm' | 'neutral' | 'cool' | 'unknown';

/** What one was asked before a new project; whatever was skipped takes what is usual. */
export interface Answers {
  /** Surfaces that stay, with the finish of the library that is like them, if one is. */
  readonly stays?: readonly { readonly surface: SurfaceId; readonly finish: string | null }[];
  /** Layout, region and the room from wall to wall, mm. */
  readonly room?: { readonly layout: LayoutId; readonly region: Region } & Kitchen['room'];
  /** Where the largest window faces, degrees clockwise from north. */
  readonly bearing_deg?: number;
  readonly lamps?: { readonly white: LampWhite; readonly kinds: readonly FixtureKind[] };
  readonly users?: readonly UserNeed[];
  /** What it is to be called. */
  readonly name?: string;
  /** Year the house was built. */
  readonly year_built?: number;
}

/**
 * Illuminants of CIE 015:2018 for white LEDs near 2700, 4100 and 5100 K; near 3000 K, the commonest in homes, where nothing
 * is known.
 */
const LIGHTS: { readonly [W in LampWhite]: string } = {
  warm: 'LED-B1',
  neutral: 'LED-B3',
  cool: 'LED-B4',
  unknown: 'LED-B2',
};

/**
 * A new project of the answers under an id of its own, with the library, the settings, the copied looks (one enters a look to carry it
 * to a kitchen of one's own) and the first option of another: all of it open but what stays. Notices tell lamps there is no place for, and what stays with a stand-in for a finish nobody named. Refused
 * where the layout does not go into the room or a finish is unknown.
 */
export function newProject(answers: Answers, from: Project, id: string): Result<Project> {
  const { layout, region, ...size } = answers.room ?? usualStart(from.kitchen.region);
  const usual = kitchenFor(layout, region, size);
  if (!usual) {
    return failure({
      code: 'does-not-fit',
      text: `This layout does not go into a room of ${Math.round(size.width)} by ${Math.round(size.depth)} mm.`,
      at: { path: 'room' },
      remedy: 'Choose another layout, or check the lengths of the room.',
    });
  }
  const { beams: _, users: _users, year_built: _year, log: _log, revisions: _revisions, ...rest } = from;
  const project: Project = {
    ...rest,
    id,
    name: answers.name?.trim() || 'New kitchen',
    note: '',
    ...usersOf(answers.users),
    ...(answers.year_built !== undefined && { year_built: answers.year_built }),
    kitchen: withLamps(facing({ ...usual, site: from.kitchen.site }, answers.bearing_deg), answers.lamps?.kinds),
    settings: from.settings.map((setting) => lightOf(setting, answers.lamps?.white)),
    options: [openOption(from.options[0]!)],
  };
  const [problem, ...more] = checkProject(project);
  if (problem) return failure(problem, more);
  const kept = keep(project, answers.stays ?? []);
  if (!kept.ok) return kept;
  return success(kept.value, [...standIns(answers.stays ?? []), ...lampsWithoutPlace(project, answers.lamps?.kinds)]);
}

function usualStart(region: Region): NonNullable<Answers['room']> {
  return { layout: 'l-island', region, ...usualRoom('l-island', region) };
}

const usersOf = (users: readonly UserNeed[] = []): Pick<Project, 'users'> =>
  users.length > 0 ? { users: USERS.filter((user) => users.includes(user)) } : {};

/** From where a wall faces to where the back wall does, degrees. */
const TO_BACK: { readonly [W in Wall]: number } = { back: 0, left: 90, right: -90, front: 180 };

/** Turned so that its largest opening faces a bearing. */
function facing(kitchen: Kitchen, bearing_deg: number | undefined): Kitchen {
  if (bearing_deg === undefined) return kitchen;
  const [largest] = [...kitchen.openings].sort((a, b) => b.width * b.height - a.width * a.height);
  const turned = bearing_deg + TO_BACK[largest?.wall ?? 'back'];
  return { ...kitchen, site: { ...kitchen.site, bearing_deg: ((turned % 360) + 360) % 360 } };
}

/** With lamps of the kinds there are, as far as they fit; the usual ones where none are known. */
function withLamps(kitchen: Kitchen, kinds: readonly FixtureKind[] = []): Kitchen {
  if (kinds.length === 0) return kitchen;
  const fixtures = kinds.map(
    (kind) => kitchen.fixtures.find((one) => one.kind === kind) ?? usualFixture(kitchen, kind),
  );
  return fitFixtures(kitchen, fixtures);
}

/** A notice for each surface that stays and of which nobody said what it is like. */
function standIns(stays: NonNullable<Answers['stays']>): readonly Problem[] {
  return stays
    .filter(({ finish }) => finish === null)
    .map(({ surface }) => ({
      code: 'stand-in',
      text: `${surfaceName(surface)}: what is shown stands in for yours.`,
      remedy: 'Choose the nearest finish, or type its color in, before you trust what is said of it.',
    }));
}

/** A notice for each kind of lamp that was said to be there and is not, as nothing in the kitchen carries it. */
function lampsWithoutPlace({ kitchen }: Project, kinds: readonly FixtureKind[] = []): readonly Problem[] {
  const missing = kinds.filter((kind) => !kitchen.fixtures.some((one) => one.kind === kind));
  return missing.map((kind) => ({
    code: 'no-place',
    text: `This kitchen has no place for ${KINDS[kind]}: left out.`,
    remedy: 'Add them to the lamps once it has one.',
  }));
}

const KINDS: { readonly [K in FixtureKind]: string } = {
  downlight: 'downlights',
  panel: 'ceiling panels',
  strip: 'a light strip',
  pendant: 'pendants',
  'under-cabinet': 'an under-cabinet strip',
  hood: 'hood lamps',
};

/** With all its lamps of one white; as they are where nothing was said. */
function lightOf(setting: Setting, white: LampWhite | undefined): Setting {
  if (white === undefined) return setting;
  const lamps = { ...setting.lamps };
  for (const group of LAMP_GROUPS) lamps[group] = { ...lamps[group], light: LIGHTS[white] };
  return { ...setting, lamps };
}

function openOption({ scheme }: Option): Option {
  const open = Object.entries(scheme).map(([surface, placement]) => [surface, { ...placement, state: 'open' }]);
  return { id: 'first', name: 'First idea', scheme: Object.fromEntries(open) as Option['scheme'] };
}

/** What stays is laid and fixed; nothing follows it that was not said to stay. */
function keep(project: Project, stays: NonNullable<Answers['stays']>): Result<Project> {
  const fixed = stays.map(({ surface }): Command => ({ kind: 'set-state', option: 'first', surface, state: 'fixed' }));
  const laid = stays.flatMap(({ surface, finish }): Command[] =>
    finish === null ? [] : [{ kind: 'lay-finish', option: 'first', surface, finish }],
  );
  const commands = [...fixed, ...laid];
  if (commands.length === 0) return success(project);
  return applyCommand(project, { kind: 'together', label: '', commands });
}
