import { expect, it } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { createActions } from '../../src/app/actions';
import { initialState } from '../../src/app/state';
import { followState } from '../../src/app/studio-link';
import type { Project } from '../../src/model/project';
import type { Studio } from '../../src/workers/studio';
import { terrace } from './terrace';

it('asks for light and findings anew when they may change, and not for notes, log and revisions', () => {
  const store = createStore(() => initialState(terrace(), 'system'));
  const actions = createActions(store);
  const shown: Project[] = [];
  followState(store, { show: (project: Project) => shown.push(project) } as unknown as Studio);
  expect(shown).toHaveLength(1);
  actions.note('Samples came');
  actions.freeze('As shown', '');
  actions.run({ kind: 'set-note', what: 'project', note: 'Ask again' });
  expect(shown).toHaveLength(1);
  expect(store.getState().stale).toEqual([]);

  actions.lay(['backsplash'], 'TL-04');
  expect(shown).toHaveLength(2);
  // What is frozen is not handed to the workers.
  expect(shown[1]!.revisions).toBeUndefined();
  expect(shown[1]!.options[1]!.scheme.backsplash.finish).toBe('TL-04');
  actions.note('Another came');
  expect(shown).toHaveLength(2);
  actions.goBack('R1');
  expect(shown).toHaveLength(3);
  expect(shown[2]!.options).toBe(shown[0]!.options);
});
