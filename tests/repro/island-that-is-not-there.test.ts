import { expect, it } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { createActions } from '../../src/app/actions';
import { chosenOption, initialState } from '../../src/app/state';
import { buildRoom } from '../../src/kitchen/build-room';
import { presentSurfaces } from '../../src/kitchen/present-surfaces';
import { buildStand } from '../../src/kitchen/stand/build-stand';
import { nextOpen } from '../../src/model/decision-order';
import { isLaidAlike } from '../../src/model/families';
import type { Option, Project } from '../../src/model/project';
import { ledgeSamples } from '../../src/ui/ledge/ledge-samples';
import { smallProject } from '../workers/small-project';

// A kitchen without an island was judged by the finishes of its island (see no-upstand.test.ts for judging), had samples of it
// on ledge and stand, and was to decide on them next.
const ours = smallProject.options.find(({ id }) => id === 'our-floor')!;
const option: Option = {
  ...ours,
  scheme: {
    ...ours.scheme,
    'island-counter': { ...ours.scheme['island-counter'], finish: 'ST-01', state: 'open' },
    'island-fronts': { ...ours.scheme['island-fronts'], finish: 'WD-07', state: 'open' },
  },
};
const project: Project = { ...smallProject, kitchen: { ...smallProject.kitchen, island: null }, options: [option] };
const room = buildRoom(project.kitchen);
const ABSENT = ['island-counter', 'island-fronts'];

it('an island that is not there has no surfaces, and everything else has', () => {
  expect(room.surfaces.filter((surface) => !presentSurfaces(room).includes(surface))).toEqual(ABSENT);
  expect(presentSurfaces(buildRoom(smallProject.kitchen))).toEqual(room.surfaces);
});

it('it is neither shown as a sample nor next to decide', () => {
  const { upright, flat } = ledgeSamples(option, project.library, presentSurfaces(room));
  const onLedge = [...upright, ...flat].flatMap((sample) => sample.surfaces);
  const { samples } = buildStand(project, [option], 'as-in-room', presentSurfaces(room));
  for (const list of [onLedge, samples.map(({ surface }) => surface)]) {
    expect(list).toContain('counter');
    for (const surface of ABSENT) expect(list).not.toContain(surface);
  }
  const onlyIsland = Object.fromEntries(
    Object.entries(option.scheme).map(([surface, placement]) => [
      surface,
      { ...placement, state: ABSENT.includes(surface) ? 'open' : 'decided' },
    ]),
  );
  const rest: Option = { ...option, scheme: onlyIsland as Option['scheme'] };
  expect(nextOpen(rest)).toBe('island-counter');
  expect(nextOpen(rest, presentSurfaces(room))).toBeNull();
});

it('an island to come matches the counter it matched before', () => {
  const store = createStore(() => ({ ...initialState({ ...project, options: [ours] }, 'system'), room }));
  const { counter, 'island-counter': island } = ours.scheme;
  expect(isLaidAlike(counter, island)).toBe(true);
  createActions(store).lay(['counter'], 'ST-02');
  const { scheme } = chosenOption(store.getState());
  expect(scheme.counter.finish).toBe('ST-02');
  expect(scheme['island-counter'].finish).toBe('ST-02');
});

it('counters whose slabs start elsewhere are not one sample', () => {
  const { counter } = ours.scheme;
  const shifted = { ...counter, laying: { ...counter.laying, slab: { match: 'bookmatch' as const, shift_mm: 300 } } };
  const explicit = { ...counter, laying: { ...counter.laying, slab: { match: 'bookmatch' as const, shift_mm: 0 } } };
  expect(isLaidAlike(counter, shifted)).toBe(false);
  expect(isLaidAlike(counter, explicit)).toBe(true);
});
