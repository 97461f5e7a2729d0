import { expect, it } from 'vitest';
import type { Look } from '../../src/kitchen/look';
import { LookQueue } from '../../src/workers/look-queue';
import type { FromLight, ToPattern } from '../../src/workers/messages';

type PaintedLook = Extract<FromLight, { kind: 'look' }>;

const texture = { width: 1, height: 1, width_m: 1, height_m: 1, data: new Uint8Array(4) };
const painted = (option: string, setting: string, keys: readonly string[]) =>
  ({
    kind: 'look',
    revision: 1,
    look: { option, setting },
    patterns: keys.map((key) => ({ key, spec: {} })),
  }) as unknown as PaintedLook;

function queueWith() {
  const asked: ToPattern[] = [];
  const ready: Look[] = [];
  const queue = new LookQueue(
    (request) => asked.push(request),
    (look) => ready.push(look),
  );
  return {
    asked,
    ready,
    queue,
    bakeAll: () => {
      for (const { key } of asked.splice(0)) queue.baked({ key, texture });
    },
  };
}

it('waits for every pattern of a look and asks for each once', () => {
  const { asked, ready, queue } = queueWith();
  queue.add(painted('a', 'day', ['p', 'q']));
  queue.add(painted('b', 'day', ['q']));
  expect(asked.map(({ key }) => key)).toEqual(['p', 'q']);
  queue.baked({ key: 'q', texture });
  expect(ready.map(({ option }) => option)).toEqual(['b']);
  queue.baked({ key: 'p', texture });
  expect([...ready[1]!.patterns.keys()]).toEqual(['p', 'q']);
});

it('drops a look when a newer one of its option comes in', () => {
  const { ready, queue, bakeAll } = queueWith();
  queue.add(painted('a', 'day', ['p']));
  queue.add(painted('a', 'evening', ['p']));
  bakeAll();
  expect(ready.map(({ setting }) => setting)).toEqual(['evening']);
});

it('shows a look without a pattern that cannot be baked', () => {
  const { ready, queue } = queueWith();
  queue.add(painted('a', 'day', ['p']));
  queue.baked({ key: 'p', texture: null });
  expect(ready[0]!.patterns.size).toBe(0);
});

it('never hands out a look whose patterns it has just thrown away', () => {
  const { ready, queue, bakeAll } = queueWith();
  queue.add(painted('c', 'day', ['c1', 'c2', 'c3', 'c4']));
  bakeAll();
  for (let i = 0; i < 40; i++) {
    queue.add(painted('x', `${i}`, [`x${i}`]));
    bakeAll();
  }
  queue.add(painted('c', 'day', ['c1', 'c2', 'c3', 'c4']));
  bakeAll();
  expect([...ready.at(-1)!.patterns.values()]).toEqual([texture, texture, texture, texture]);
});

it('does not bake twice what was asked for beforehand', () => {
  const { asked, ready, queue } = queueWith();
  const look = painted('a', 'day', ['p']);
  queue.prepare(look.patterns);
  queue.add(look);
  expect(asked).toHaveLength(1);
  queue.baked({ key: 'p', texture });
  expect(ready).toHaveLength(1);
});

it('forgets what waits for the room of before, and nothing of the stand', () => {
  const { ready, queue, bakeAll } = queueWith();
  queue.add(painted('a', 'day', ['p']));
  queue.add({ ...painted('a', 'evening', ['p']), stand: { readings: null } });
  queue.forget('room');
  bakeAll();
  expect(ready.map(({ setting }) => setting)).toEqual(['evening']);
});
