import { afterEach, expect, it, vi } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { createActions } from '../../src/app/actions';
import { initialState, projectOf } from '../../src/app/state';
import { warnOfUnsaved } from '../../src/app/unsaved';
import { terrace } from '../ui/terrace';

// Closing the page threw changes away without a question.

afterEach(() => vi.unstubAllGlobals());

it('lets the browser ask before leaving while something is unsaved, and only then', () => {
  const page = new EventTarget();
  vi.stubGlobal('window', page);
  const isAsked = () => !page.dispatchEvent(new Event('beforeunload', { cancelable: true }));
  const store = createStore(() => initialState(terrace(), 'system'));
  const actions = createActions(store);
  const stop = warnOfUnsaved(store);
  expect(isAsked()).toBe(false);
  store.setState({ option: 'copied-look' });
  expect(isAsked()).toBe(false);
  actions.lay(['floor'], 'WD-01');
  expect(isAsked()).toBe(true);
  actions.undo();
  expect(isAsked()).toBe(false);
  actions.redo();
  store.setState({ saved: projectOf(store.getState()) });
  expect(isAsked()).toBe(false);
  actions.undo();
  expect(isAsked()).toBe(true);
  stop();
  expect(isAsked()).toBe(false);
});
