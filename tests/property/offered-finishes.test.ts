import fc from 'fast-check';
import { expect, it } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { createActions } from '../../src/app/actions';
import { sameWhereAlike } from '../../src/app/keeping/same-where-alike';
import { offeredIn } from '../../src/app/offered';
import { documentOf, initialState, projectOf } from '../../src/app/state';
import type { Library } from '../../src/model/library';
import { isOutdated, offeredFinishes } from '../../src/model/offered-finishes';
import type { Finish } from '../../src/model/project';
import { terrace } from '../ui/terrace';

const project = terrace();

const finish = (id: string, l: number, kind: 'paint' | 'glazed' = 'paint'): Finish => ({
  id,
  label: `Invented ${id}`,
  class: kind,
  gloss_gu: 20,
  components: [{ role: 'base', share: 1, color: { kind: 'lab', lab: [l, 0, 5], illuminant: 'D65', observer_deg: 2 } }],
  pattern: { kind: 'plain' },
  variation: 'V0',
  provenance: 'declared',
});
const library = (id: string, name: string, finishes: readonly Finish[]): Library => ({
  type: 'upstand-library',
  version: 2,
  id,
  name,
  note: '',
  finishes,
});

/** Ids that libraries share with each other, with the project and with what is made of a clash. */
const ids = fc.constantFrom('TL-01', 'NONE', 'A', 'B', 'C', 'A (One)', 'A (One 2)', 'OWN-01');
const finishes = fc
  .uniqueArray(fc.record({ id: ids, l: fc.integer({ min: 30, max: 95 }) }), { selector: ({ id }) => id })
  .map((all) => all.map(({ id, l }) => finish(id, l)));
const libraries = fc.uniqueArray(
  fc.record({ id: fc.constantFrom('1', '2', '3'), name: fc.constantFrom('One', 'Two'), finishes }),
  { selector: ({ id }) => id },
);
const shelves = libraries.map((all) => all.map((one) => library(one.id, one.name, one.finishes)));
const places = (of: readonly Finish[]) => new Map(of.map((one) => [JSON.stringify(one.origin ?? one.id), one.id]));

it('offers every finish once, under an id that no order of the libraries and nothing put aside changes', () => {
  fc.assert(
    fc.property(shelves, fc.subarray(['1', '2', '3']), (all, putAside) => {
      const { finishes: offered, byId } = offeredFinishes(project.library, { libraries: all, putAside: [] });
      expect(offered).toHaveLength(project.library.length + all.flatMap((one) => one.finishes).length);
      expect(new Set(offered.map(({ id }) => id)).size).toBe(offered.length);
      expect(byId.has('NONE')).toBe(false);
      expect(byId.size).toBe(offered.length);
      expect(project.library.every((own) => byId.get(own.id) === own)).toBe(true);
      const turned = offeredFinishes(project.library, { libraries: [...all].reverse(), putAside: [] });
      expect(places(turned.finishes)).toEqual(places(offered));
      const fewer = offeredFinishes(project.library, { libraries: all, putAside });
      for (const [origin, id] of places(fewer.finishes)) expect(places(offered).get(origin)).toBe(id);
      expect(fewer.finishes.some(({ origin }) => origin && putAside.includes(origin.library))).toBe(false);
    }),
    { numRuns: 60 },
  );
});

it('takes in what it lays, in one step, and is the same document byte for byte once that is undone', () => {
  const text = JSON.stringify(project);
  fc.assert(
    fc.property(shelves, fc.nat(), fc.boolean(), (all, pick, tries) => {
      const store = createStore(() => ({ ...initialState(project, 'system'), keptLibraries: all }));
      const actions = createActions(store);
      const before = offeredIn(store.getState());
      const chosen = before.finishes[pick % before.finishes.length]!;
      if (tries) {
        actions.tryFinish(['wall'], chosen.id, {});
        expect(JSON.stringify(documentOf(store.getState()))).toBe(text);
        actions.keepTry();
      } else actions.lay(['wall'], chosen.id);
      const state = store.getState();
      if (chosen.class === 'grout') {
        // It cannot lie there by itself.
        expect(state.told).not.toBeNull();
        return;
      }
      const option = documentOf(state).options.find(({ id }) => id === state.option)!;
      expect(option.scheme.wall.finish).toBe(chosen.id);
      expect(projectOf(state).library.find(({ id }) => id === chosen.id)).toBe(chosen);
      // Nothing else is called otherwise, or stands elsewhere, now that the project has it.
      expect(offeredIn(state).finishes).toEqual(before.finishes);
      expect(state.history.past.length).toBeLessThanOrEqual(1);
      actions.undo();
      expect(JSON.stringify(documentOf(store.getState()))).toBe(text);
    }),
    { numRuns: 60 },
  );
});

it('takes in a grout with the laying that names it', () => {
  const grout: Finish = { ...finish('GR-99', 60), class: 'grout' };
  const store = createStore(() => ({
    ...initialState(project, 'system'),
    keptLibraries: [library('1', 'One', [grout])],
  }));
  const actions = createActions(store);
  const laying = projectOf(store.getState()).options.at(-1)!.scheme.backsplash.laying;
  actions.setLaying(['backsplash'], { ...laying, grout: 'GR-99' });
  const { library: own, options } = documentOf(store.getState());
  expect(options.at(-1)!.scheme.backsplash.laying.grout).toBe('GR-99');
  expect(own.at(-1)).toEqual({ ...grout, origin: { library: '1', name: 'One', finish: 'GR-99' } });
  actions.undo();
  expect(documentOf(store.getState())).toBe(project);
});

it('keeps what the project has of a library as it is there, and tells when the library has another by now', () => {
  const shelf = { libraries: [library('1', 'One', [finish('A', 50), finish('B', 50)])], putAside: [] };
  const taken = offeredFinishes(project.library, shelf).byId.get('A')!;
  const own = [...project.library, taken];
  expect(isOutdated(taken, shelf)).toBe(false);
  const changed = { libraries: [library('1', 'One', [finish('A', 51), finish('B', 50)])], putAside: [] };
  expect(isOutdated(taken, changed)).toBe(true);
  expect(offeredFinishes(own, changed).byId.get('A')).toBe(taken);
  expect(isOutdated(taken, { libraries: [], putAside: [] })).toBe(false);
  expect(isOutdated(project.library[0]!, changed)).toBe(false);
});

it('keeps the very objects of a library where nothing changed', () => {
  fc.assert(
    fc.property(shelves, shelves, (before, now) => {
      for (const old of before) {
        expect(sameWhereAlike(old, structuredClone(old) as Library)).toBe(old);
        const other = now.find(({ id }) => id === old.id);
        if (!other) continue;
        const merged = sameWhereAlike(old, structuredClone(other) as Library);
        expect(merged).toEqual(other);
        for (const its of merged.finishes) {
          const same = old.finishes.find((one) => JSON.stringify(one) === JSON.stringify(its));
          if (same) expect(its).toBe(same);
        }
      }
    }),
    { numRuns: 40 },
  );
});
