import { expect, it } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { offerLibraries } from '../../src/app/offer-libraries';
import { isInRange, withinRange } from '../../src/app/showroom/in-range';
import type { Showroom } from '../../src/app/showroom/showroom-state';
import { showroomState } from '../../src/app/showroom/start-over';
import { startProject } from '../../src/app/showroom/start-project';
import type { Assessment } from '../../src/engine/judge/assessment';
import { candidatesFor, canGoOn, mayGoOn } from '../../src/model/finish-candidates';
import type { Library } from '../../src/model/library';
import { whyNotOn } from '../../src/model/not-made-for';
import { offeredFinishes } from '../../src/model/offered-finishes';
import type { Finish } from '../../src/model/project';
import { START_VIEW, shownLibrary } from '../../src/ui/drawer/shortlist-view';
import { terrace } from './terrace';

const whole = terrace();
const finish = (id: string, more: Partial<Finish> = {}): Finish => ({
  id,
  label: `Lino ${id}`,
  class: 'vinyl',
  gloss_gu: 10,
  components: [{ role: 'base', share: 1, color: { kind: 'lab', lab: [50, 0, 0], illuminant: 'D65', observer_deg: 2 } }],
  pattern: { kind: 'plain' },
  variation: 'V0',
  provenance: 'declared',
  ...more,
});
const RANGE = {
  type: 'upstand-library',
  version: 1,
  id: 'range',
  name: 'Range',
  note: '',
  finishes: [finish('AR-1'), finish('AR-2', { piece_mm: [600, 600] }), finish('AR-3', { class: 'paint' })],
} as unknown as Library;
const bare = {
  name: 'Showroom',
  range: { project: false, libraries: ['range'] },
  option: 'our-floor',
  minutes: 3,
  fillsScreen: false,
  typesIn: true,
  start: whole,
};
const showroom: Showroom = { ...bare, start: startProject(bare) };
const { finishes: offered } = offeredFinishes(showroom.start.library, { libraries: [RANGE], putAside: [] });
const ids = (finishes: readonly Finish[]) => finishes.map(({ id }) => id);

it('has customers choose from its range and from what they typed in, and from nothing that only lies there', () => {
  expect(ids(offered.filter((one) => isInRange(one, showroom)))).toEqual(['AR-1', 'AR-2', 'AR-3']);
  expect(isInRange(finish('OWN-01'), showroom)).toBe(true);
  expect(offered.some(({ id }) => id === 'ST-01')).toBe(true);
  const both = { ...showroom, range: { project: true, libraries: [] } };
  expect(offered.filter((one) => !isInRange(one, both))).toEqual([]);
});

it('proposes nothing of what only lies there', () => {
  const repair = (...laid: string[]) => ({ changes: laid.map((one) => ({ surfaces: ['wall'], finish: one })) });
  const assessment = { repairs: [repair('ST-01'), repair('OWN-01'), repair('OWN-01', 'ST-01')] };
  const project = { library: [...showroom.start.library, finish('OWN-01')] };
  const shown = withinRange(assessment as unknown as Assessment, project, showroom);
  expect(shown.repairs).toEqual([assessment.repairs[1]]);
});

it('begins in the option that staff chose, and in the first where that is gone', () => {
  expect(showroomState(showroom).option).toBe('our-floor');
  expect(showroomState({ ...showroom, option: 'gone' }).option).toBe(whole.options[0]!.id);
});

it('says that its range is coming until it is there, and fetches it before the first picture', async () => {
  const store = createStore(() => showroomState(showroom));
  expect(store.getState().isRangeComing).toBe(true);
  const shelf = { list: async () => [RANGE], onChange: () => () => undefined };
  const told: unknown[] = [];
  const never = () => new Promise<void>(() => undefined);
  offerLibraries(store, shelf, { keepShelf: (one) => told.push(one) }, never);
  await new Promise((resolve) => setTimeout(resolve));
  expect(store.getState()).toMatchObject({ isRangeComing: false, keptLibraries: [RANGE] });
  expect(told).toHaveLength(1);
  expect(showroomState({ ...showroom, range: { project: true, libraries: [] } }).isRangeComing).toBe(false);
});

it('has floors of a kept library within reach whose size is not said, apart from those made for it', () => {
  const lino = offered.find(({ id }) => id === 'AR-1')!;
  expect(canGoOn(lino, 'floor')).toBe(false);
  expect(mayGoOn(lino, 'floor')).toBe(true);
  expect(whyNotOn(lino, 'floor')).toBeNull();
  // Of the project itself one knows, and a color is no floor.
  expect(mayGoOn(finish('AR-1'), 'floor')).toBe(false);
  expect(mayGoOn(offered.find(({ id }) => id === 'AR-3')!, 'floor')).toBe(false);

  const usual = candidatesFor(offered, 'floor');
  const shown = shownLibrary(null, offered, [...usual, lino], START_VIEW, ['ST-01'], new Set(), new Set(['AR-1']));
  expect(shown.sections.map(({ id, title, finishes }) => [id, title === null, ids(finishes)])).toEqual([
    ['library', true, ids(usual)],
    ['unsure', false, ['AR-1']],
  ]);
  expect(ids(usual)).toContain('AR-2');
  // The rest can be had, too, when it is asked for.
  expect(shown.notMade).toBeGreaterThan(0);
  const all = shownLibrary(null, offered, [...usual, lino], { ...START_VIEW, showsNotMade: true }, [], new Set());
  expect(all.shown).toHaveLength(offered.filter((one) => one.class !== 'grout').length);
  expect(ids(all.sections.at(-1)!.finishes)).toContain('AR-3');
});
