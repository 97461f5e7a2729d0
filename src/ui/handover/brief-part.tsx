import type { Wall } from '../../model/kitchen';
import { lengthWords } from '../../model/length-text';
import { isBuiltIn, shownName } from '../words/built-in';
import { lightCaption, WINDOWS } from '../words/daylight';
import { STATE_WORDS } from '../words/finishes';
import { fixtureName } from '../words/fixtures';
import { BRIEF } from '../words/handover';
import { KITCHEN } from '../words/kitchen';
import { settingWithLamps } from '../words/lamps';
import { capital, listed } from '../words/numbers';
import type { Block, FlowPart, SheetRow } from './blocks';
import { finishName } from './finish-words';
import type { HandoverItem } from './handover-items';
import type { HandoverSet } from './handover-set';

/** Outward bearing of a wall from that of the back wall, degrees clockwise. */
const FROM_BACK: { readonly [W in Wall]: number } = { back: 0, right: 90, front: 180, left: 270 };

/** What was given: the room, who uses it, windows and lamps; what stays and what is open still. */
export function briefPart(set: HandoverSet): FlowPart {
  const { items } = set.signed;
  const stays = items.filter(({ state }) => state === 'fixed' || state === 'ordered');
  const open = items.filter(({ state }) => state === 'open');
  return {
    id: 'brief',
    title: BRIEF.title,
    blocks: [
      {
        kind: 'table',
        key: 'facts',
        label: BRIEF.title,
        look: 'facts',
        columns: [
          { head: BRIEF.what, width: 1 },
          { head: BRIEF.said, width: 4 },
        ],
        rows: factsOf(set),
      },
      ...itemBlocks('stays', BRIEF.stays, stays.length > 0 ? BRIEF.staysIntro : BRIEF.nothingStays, stays),
      ...itemBlocks('open', BRIEF.open, open.length > 0 ? BRIEF.openIntro : BRIEF.nothingOpen, open),
    ],
  };
}

function factsOf({ project, options, signed, unit }: HandoverSet): readonly SheetRow[] {
  const { kitchen, users = [], year_built, lamps, note, job = {} } = project;
  const length = (mm: number) => lengthWords(mm, unit);
  const windows = kitchen.openings.map(({ kind, wall, width, height, sill }) =>
    BRIEF.window(
      WINDOWS.kinds[kind],
      BRIEF.walls[wall],
      length(width),
      length(height),
      length(sill),
      (kitchen.site.bearing_deg + FROM_BACK[wall]) % 360,
    ),
  );
  const lights = [signed.day, signed.evening].map(
    ({ setting }) => `${settingWithLamps(setting, lamps)}. ${lightCaption(setting.daylight).join(' ')}.`,
  );
  const { width, depth, height } = kitchen.room;
  return [
    ...(job.place ? [row(BRIEF.place, [job.place])] : []),
    ...(job.brief ? [row(BRIEF.brief, [job.brief])] : []),
    row(BRIEF.kitchen, [kitchen.name]),
    row(BRIEF.room, [BRIEF.roomSize(length(width), length(depth), length(height))]),
    row(BRIEF.region, [KITCHEN.regions[kitchen.region]]),
    row(BRIEF.users, [users.length > 0 ? listed(users.map((user) => BRIEF.userWords[user])) : BRIEF.usersUsual]),
    row(BRIEF.year, [year_built === undefined ? BRIEF.notKnown : String(year_built)]),
    row(BRIEF.windows, windows.length > 0 ? windows : [BRIEF.noWindow]),
    row(BRIEF.lamps, kitchen.fixtures.length > 0 ? kitchen.fixtures.map(fixtureName) : [BRIEF.noLamps]),
    row(BRIEF.lights, lights),
    ...(note.trim() === '' ? [] : [row(BRIEF.note, [isBuiltIn(note) ? shownName(note) : note])]),
    ...options.flatMap(({ option }) => (option.note ? [row(BRIEF.optionNote(option.name), [option.note])] : [])),
  ];
}

const row = (what: string, said: readonly string[]): SheetRow => ({
  key: what,
  cells: [what, said.map((line) => <p key={line}>{line}</p>)],
});

function itemBlocks(key: string, title: string, intro: string, items: readonly HandoverItem[]): readonly Block[] {
  const heading: Block = {
    kind: 'flow',
    key: `${key}-title`,
    keeps: items.length > 0,
    node: (
      <>
        <h4>{title}</h4>
        <p>{intro}</p>
      </>
    ),
  };
  if (items.length === 0) return [heading];
  return [
    heading,
    {
      kind: 'table',
      key,
      label: title,
      columns: [
        { head: BRIEF.id, width: 1 },
        { head: BRIEF.surface, width: 4 },
        { head: BRIEF.finish, width: 6 },
        { head: BRIEF.state, width: 2 },
      ],
      rows: items.map(({ id, place, finish, state }) => ({
        key: id,
        cells: [id, place, finishName(finish), capital(STATE_WORDS[state])],
      })),
    },
  ];
}
