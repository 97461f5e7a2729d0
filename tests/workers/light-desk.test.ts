import { beforeAll, describe, expect, it } from 'vitest';
import { judge } from '../../src/engine/judge/judge';
import { pairTable } from '../../src/engine/judge/pair-table';
import { heldOption } from '../../src/kitchen/study/assess-option';
import { shiftReport } from '../../src/kitchen/study/shift-report';
import type { Project } from '../../src/model/project';
import { createJudgeDesk } from '../../src/workers/judge-desk';
import { createLightDesk } from '../../src/workers/light-desk';
import type { FromJudge, FromLight, Show } from '../../src/workers/messages';
import { laid, nearly, project } from './desk-project';

const pause = () => new Promise<void>((resolve) => setImmediate(resolve));
let revision = 0;
const show = (given: Project, options = ['our-floor'], setting = 'day'): Show => ({
  kind: 'show',
  revision: ++revision,
  project: given,
  options,
  setting,
  seenBy: 'used-to-it',
  stand: null,
});

const messages: FromLight[] = [];
let rest = pause;
const desk = createLightDesk(
  (message) => messages.push(message),
  pause,
  () => rest(),
);

async function until(found: (message: FromLight) => boolean): Promise<FromLight> {
  for (;;) {
    const message = messages.find(found);
    if (message) return message;
    await pause();
  }
}
const isComplete = (of: number) => (message: FromLight) =>
  message.kind === 'readings' && message.revision === of && message.complete;

/** Whether the picture is told the light of lamps, however fine. */
const tellsLamps = (message: FromLight) => message.kind === 'light' && message.light.direct[1] !== null;

it('tells of lamps that are off once, at their best, and of those that go on meanwhile at once', async () => {
  const told: FromLight[] = [];
  let rests = 0;
  const own = createLightDesk(
    (message) => told.push(message),
    pause,
    () => {
      rests++;
      return pause();
    },
  );
  const isSettled = (of: number) => told.some(isComplete(of));
  own.receive(show(project));
  while (!isSettled(revision)) await pause();
  // Daylight gets finer first, in steps; then lamps are drawn, of which nothing is said while they are off.
  const finest = () => told.findLast((message) => message.kind === 'light');
  while (!(finest() as { light: { isFinal: boolean } }).light.isFinal) await pause();
  for (let i = 0; i < 3; i++) await pause();
  expect(told.some(tellsLamps)).toBe(false);
  own.receive(show(project, ['our-floor'], 'evening'));
  while (!told.some((message) => message.kind === 'look' && message.revision === revision)) await pause();
  expect(told.filter(tellsLamps)).toHaveLength(1);

  own.receive(show(project));
  while (rests === 0) await pause();
  expect(told.filter(tellsLamps)).toHaveLength(2);
});

describe('the light desk', () => {
  beforeAll(async () => {
    desk.receive(show(project));
    await until(isComplete(revision));
  });

  it('shows a room, its light and a picture before numbers are final', () => {
    const kinds = messages.map((message) =>
      message.kind === 'readings' ? (message.complete ? 'final' : 'readings') : message.kind,
    );
    expect(kinds.slice(0, 4)).toEqual(['patterns', 'room', 'light', 'look']);
    expect(kinds.filter((kind) => kind === 'room')).toHaveLength(1);
    expect(kinds.indexOf('readings')).toBeLessThan(kinds.indexOf('final'));
  });

  it('gives the judge what the command line judges: the same assessment', async () => {
    const final = await until(isComplete(revision));
    if (final.kind !== 'readings') throw new Error('not readings');
    const answers: FromJudge[] = [];
    const judging = createJudgeDesk((message) => answers.push(message), pause);
    judging.receive({ kind: 'readings', revision: 1, input: final.input, complete: true });
    while (!answers.some((one) => one.kind === 'assessment' && one.assessment.status === 'held')) await pause();
    const done = answers.findLast((one) => one.kind === 'assessment');
    const expected = heldOption(project, 'our-floor', 'day');
    expect(done).toEqual({ kind: 'assessment', revision: 1, assessment: expected.ok && expected.value.held });

    judging.receive({ kind: 'pairs', ticket: 3, option: 'our-floor' });
    const table = expected.ok && pairTable(final.input, expected.value.held);
    expect(answers.at(-1)).toEqual({ kind: 'pairs', ticket: 3, table });
    judging.receive({ kind: 'pairs', ticket: 4, option: 'another' });
    expect(answers.at(-1)).toEqual({ kind: 'pairs', ticket: 4, table: null });
  });

  it('weighs the balance in any setting, whichever is on screen', async () => {
    const weighed = async (setting: string, ticket: number) => {
      desk.receive({ kind: 'read-balance', ticket, option: 'our-floor', setting });
      const answer = await until((message) => message.kind === 'answer' && message.ticket === ticket);
      if (answer.kind !== 'answer' || answer.to !== 'read-balance' || !answer.answer) throw new Error('no answer');
      return answer.answer;
    };
    const final = await until(isComplete(revision));
    if (final.kind !== 'readings') throw new Error('not readings');
    const { installed } = judge(final.input).balance;
    const day = await weighed('day', 21);
    const { warm, leaning, cool, neutral } = day.shares!;
    expect([warm, leaning, cool, neutral]).toEqual(nearly(installed.shares));
    expect(day).toMatchObject({ setting: 'day', verdict: installed.verdict });
    const evening = await weighed('evening', 22);
    expect(evening.setting).toBe('evening');
    expect(Object.values(evening.shares!).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 6);
    messages.length = 0;
    desk.receive({ kind: 'read-balance', ticket: 23, option: 'our-floor', setting: 'none' });
    await until((message) => message.kind === 'answer');
    expect(messages).toEqual([{ kind: 'answer', to: 'read-balance', ticket: 23, answer: null }]);
  });

  it('tells nothing of the document before where a newer one is on its way', async () => {
    messages.length = 0;
    desk.receive(show(laid('floor', 'TL-07')));
    desk.receive({ kind: 'read-balance', ticket: 24, option: 'our-floor', setting: 'day' });
    desk.receive({ kind: 'read-narrowings', ticket: 25, option: 'our-floor' });
    desk.receive(show(project));
    await until((message) => message.kind === 'answer' && message.ticket === 24);
    await until((message) => message.kind === 'answer' && message.ticket === 25);
    const answers = messages.flatMap((message) => (message.kind === 'answer' ? [message.answer] : []));
    expect(answers).toEqual([null, null]);
    await until(isComplete(revision));
  });

  it('says what each light makes of a finish as it is laid, grout included, as the command line does of the finish', () => {
    messages.length = 0;
    desk.receive({ kind: 'read-lights', ticket: 7, option: 'our-floor', surface: 'base-fronts', beside: 'backsplash' });
    const [answer] = messages;
    if (answer?.kind !== 'answer' || answer.to !== 'read-lights' || !answer.answer)
      throw new Error('no answer at once');
    expect(answer.ticket).toBe(7);
    const expected = shiftReport(project, 'PT-01', 'TL-01');
    const { project: _, beside: alone, ...same } = expected.ok ? expected.value : (null as never);
    const { beside, ...found } = answer.answer;
    expect(found).toEqual(nearly(same));
    expect(beside!.sentence).toBe(alone!.sentence);
    // The tile alone has no joints; on the backsplash its mean is darker.
    expect(beside!.average.lab_d65[0]).toBeLessThan(alone!.average.lab_d65[0]);
    desk.receive({ kind: 'read-lights', ticket: 8, option: 'no-such', surface: 'floor', beside: null });
    expect(messages[1]).toEqual({ kind: 'answer', to: 'read-lights', ticket: 8, answer: null });
  });

  it('does not build the room again for a changed finish, and answers the newest request last', async () => {
    messages.length = 0;
    desk.receive(show(laid('floor', 'WD-01')));
    desk.receive(show(laid('floor', 'TL-07')));
    await until(isComplete(revision));
    expect(messages.some((message) => message.kind === 'room')).toBe(false);
    const last = messages.findLast((message) => message.kind === 'look');
    expect(last).toMatchObject({ revision });
    expect(last?.kind === 'look' && last.look.surfaces.map((surface) => surface.finish)).toContain('TL-07');
  });

  it('does not let a change wait while it rests before the search for what would help', async () => {
    messages.length = 0;
    let rests = 0;
    rest = () => {
      rests++;
      return new Promise(() => {});
    };
    desk.receive(show(laid('floor', 'WD-01')));
    while (rests === 0) await pause();
    expect(messages.some((message) => message.kind === 'repairs')).toBe(false);
    desk.receive(show(laid('floor', 'TL-07')));
    await until(isComplete(revision));
    while (rests === 1) await pause();
    rest = pause;
  });

  it('says so and judges nothing when a finish cannot be laid', async () => {
    messages.length = 0;
    const impossible = project.library.map((finish) =>
      finish.id === 'PT-05'
        ? {
            ...finish,
            components: [
              {
                role: 'base' as const,
                share: 1,
                color: {
                  kind: 'lab' as const,
                  lab: [50, 200, 200] as const,
                  illuminant: 'D65' as const,
                  observer_deg: 2 as const,
                },
              },
            ],
          }
        : finish,
    );
    desk.receive(show(laid('wall', 'PT-05', impossible)));
    const problem = await until((message) => message.kind === 'problem');
    expect(problem).toMatchObject({ problem: { code: 'outside-object-color-solid' } });
    desk.receive(show(project));
    await until(isComplete(revision));
    expect(
      messages.filter((message) => message.kind === 'readings').every((message) => message.revision === revision),
    ).toBe(true);
  });

  it('paints for another eye at once, with nothing judged anew, and reads points in that picture', async () => {
    desk.receive(show(project, ['our-floor'], 'evening'));
    await until(isComplete(revision));
    const painted = () => {
      const last = messages.findLast((message) => message.kind === 'look');
      if (last?.kind !== 'look') throw new Error('no look');
      return last.look;
    };
    const read = (rect: number) => {
      desk.receive({
        kind: 'read-point',
        ticket: rect,
        option: 'our-floor',
        rect,
        u: 0.5,
        v: 0.5,
        eye: null,
        place: null,
        onStand: false,
      });
      const answer = messages.findLast((message) => message.kind === 'answer');
      return answer?.kind === 'answer' && answer.to === 'read-point' ? answer.answer : null;
    };
    const neutral = painted();
    const rect = Array.from({ length: 200 }, (_, i) => i).find((i) => read(i) !== null)!;
    const before = read(rect)!;
    messages.length = 0;
    desk.receive({ kind: 'see-by', seenBy: 'daylight-camera' });
    // In the same turn: no light is worked out for it.
    expect(messages.map(({ kind }) => kind)).toEqual(['look']);
    const orange = painted();
    expect(orange).toMatchObject({ option: 'our-floor', setting: 'evening', seenBy: 'daylight-camera' });
    expect(orange.nodeColors).not.toEqual(neutral.nodeColors);
    expect(orange.surfaces.map(({ flat }) => flat)).toEqual(neutral.surfaces.map(({ flat }) => flat));
    const after = read(rect)!;
    expect(after.srgb8).not.toEqual(before.srgb8);
    // What the nodes hold in single precision, and its parts.
    expect(before.parts.reduce((sum, { lux }) => sum + lux, 0) / before.lux).toBeCloseTo(1, 5);
    const direct = before.parts.filter(({ from }) => from.kind === 'direct').reduce((sum, { lux }) => sum + lux, 0);
    expect(direct).toBeCloseTo(before.lux_direct, 6);
    const { srgb8, white_srgb8, darkened, seen_by } = before;
    expect({ ...after, srgb8, white_srgb8, darkened, seen_by }).toEqual(before);
    for (let i = 0; i < 50; i++) await pause();
    expect(messages.some(({ kind }) => kind === 'readings' || kind === 'room')).toBe(false);

    messages.length = 0;
    desk.receive({ ...show(laid('floor', 'TL-07'), ['our-floor'], 'evening'), seenBy: 'daylight-camera' });
    await until(isComplete(revision));
    expect(painted().seenBy).toBe('daylight-camera');
    desk.receive({ kind: 'see-by', seenBy: 'used-to-it' });
    expect(painted().seenBy).toBe('used-to-it');
  });

  it('reads a sample flat and upright on the counter, and nothing of a finish there is none of', () => {
    messages.length = 0;
    desk.receive({ kind: 'read-stand', ticket: 5, option: 'our-floor', finish: 'WD-01' });
    desk.receive({ kind: 'read-stand', ticket: 6, option: 'our-floor', finish: 'XX-99' });
    desk.receive({ kind: 'read-stand', ticket: 7, option: 'nowhere', finish: 'WD-01' });
    const [found, none, nowhere] = messages.map((message) =>
      message.kind === 'answer' && message.to === 'read-stand' ? message.answer : null,
    );
    expect([none, nowhere]).toEqual([null, null]);
    const { flat, upright, finish, between_de00 } = found!;
    expect(finish).toBe('WD-01');
    // Light comes from above; what stands on the counter sees the counter, too, and what lies on it does not.
    expect(flat.lux).toBeGreaterThan(upright.lux);
    expect(between_de00).toBeGreaterThan(0);
    const offCounter = [flat, upright].map(
      ({ parts }) => parts.find(({ from }) => from.kind === 'bounce' && from.surface === 'counter')?.share ?? 0,
    );
    expect(offCounter[0]!).toBe(0);
    expect(offCounter[1]!).toBeGreaterThan(0.1);
    for (const { lux, parts, components } of [flat, upright]) {
      expect(parts.reduce((sum, part) => sum + part.lux, 0) / lux).toBeCloseTo(1, 9);
      expect(components.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
    }
  });

  it('says so when a setting is not known', async () => {
    messages.length = 0;
    desk.receive(show(project, ['our-floor'], 'noon'));
    const problem = await until((message) => message.kind === 'problem');
    expect(problem).toMatchObject({ problem: { code: 'unknown-setting', at: { path: 'settings' } } });
  });

  it('goes on after a failure inside a calculation', async () => {
    messages.length = 0;
    const broken = { ...project, kitchen: { ...project.kitchen, base: undefined } } as unknown as Project;
    desk.receive(show(broken));
    expect(await until((message) => message.kind === 'problem')).toMatchObject({
      problem: { code: 'calculation-failed' },
    });
    desk.receive(show(project));
    await until(isComplete(revision));
  });
});
