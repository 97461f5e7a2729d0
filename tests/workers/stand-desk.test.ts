import { expect, it } from 'vitest';
import { SURFACES } from '../../src/engine/surface';
import { createLightDesk } from '../../src/workers/light-desk';
import type { FromLight, Show } from '../../src/workers/messages';
import { smallProject } from './small-project';

const messages: FromLight[] = [];
const pause = () => new Promise<void>((resolve) => setImmediate(resolve));
const desk = createLightDesk((message) => messages.push(message), pause);
let revision = 0;
const show = (setting: string, stand: Show['stand']): Show => ({
  kind: 'show',
  revision: ++revision,
  project: smallProject,
  options: ['our-floor'],
  setting,
  seenBy: 'used-to-it',
  stand,
});
const until = async (isThere: () => boolean) => {
  while (!isThere()) await pause();
};
const standLooks = () => messages.filter((one) => one.kind === 'look' && one.stand && one.revision === revision);
const count = (kind: FromLight['kind']) => messages.filter((one) => one.kind === kind).length;

it('shows the stand in the light of the room, builds it once, and reads points and held cards on it', async () => {
  desk.receive(show('evening', { backing: 'gray', arrangement: 'as-in-room' }));
  await until(() => standLooks().length > 0);
  expect(count('stand-room')).toBe(1);
  // Its light comes before its look, for the page needs both.
  const kinds = messages.map((one) => (one.kind === 'look' && one.stand ? 'stand-look' : one.kind));
  expect(kinds.indexOf('stand-light')).toBeLessThan(kinds.indexOf('stand-look'));
  const [first] = standLooks();
  if (first?.kind !== 'look') throw new Error('no look');
  expect(first.stand!.readings!.samples.map(({ surface }) => surface)).toContain('base-fronts');

  const room = messages.find((one) => one.kind === 'stand-room');
  if (room?.kind !== 'stand-room') throw new Error('no stand');
  const wall = room.room.light.fine.findIndex(({ surface }) => surface === SURFACES.indexOf('wall'));
  const place = { option: 'our-floor', rect: wall, u: 0.5, v: 0.5, place: null, onStand: true } as const;
  desk.receive({ kind: 'read-point', ticket: 1, eye: null, ...place });
  desk.receive({ kind: 'read-held', ticket: 2, held: { kind: 'white', id: 'cream' }, ...place });
  await until(() => count('answer') > 1);
  const point = messages.find((one) => one.kind === 'answer' && one.to === 'read-point');
  const held = messages.find((one) => one.kind === 'answer' && one.to === 'read-held');
  if (point?.kind !== 'answer' || point.to !== 'read-point' || held?.kind !== 'answer' || held.to !== 'read-held')
    throw new Error('no answer');
  expect(point.answer?.surface).toBe('wall');
  expect(held.answer?.surface).toBe('wall');
  // The same place read twice by two ways of asking.
  for (let k = 0; k < 3; k++) expect(held.answer!.surface_lab_d65[k]!).toBeCloseTo(point.answer!.lab_d65[k]!, 6);

  desk.receive(show('day', { backing: 'gray', arrangement: 'as-in-room' }));
  await until(() => standLooks().length > 0);
  expect(count('stand-room')).toBe(1);
  desk.receive(show('day', { backing: 'white', arrangement: 'all-flat' }));
  await until(() => standLooks().length > 0);
  expect(count('stand-room')).toBe(2);

  // Another sight asked for while the stand is on its way: every picture from then on is of that.
  desk.receive(show('evening', { backing: 'gray', arrangement: 'all-flat' }));
  await until(() => count('stand-room') > 2);
  const before = messages.length;
  desk.receive({ kind: 'see-by', seenBy: 'daylight-camera' });
  await until(() => standLooks().length > 0);
  const later = messages.slice(before).flatMap((one) => (one.kind === 'look' && one.stand ? one.look.seenBy : []));
  expect(new Set(later)).toEqual(new Set(['daylight-camera']));
}, 120_000);
