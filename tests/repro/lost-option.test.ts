import { expect, it } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { createActions } from '../../src/app/actions';
import { openProject } from '../../src/app/files';
import { initialState, projectOf } from '../../src/app/state';
import { followState } from '../../src/app/studio-link';
import { projectText } from '../../src/io/project-file';
import type { Studio } from '../../src/workers/studio';
import { terrace } from '../ui/terrace';
import { unkept } from '../ui/unkept';

// After undo, redo or opening, the chosen option or setting could name something the document no longer has; the workers
// were then asked for it and answered nothing, and the banner of the document before stayed.

const project = terrace();

function open() {
  const store = createStore(() => initialState(project, 'system'));
  const shown: Parameters<Studio['show']>[] = [];
  followState(store, { show: (...args) => shown.push(args) } as Partial<Studio> as Studio);
  const expectConsistent = () => {
    const { options, settings } = projectOf(store.getState());
    const { option, setting } = store.getState();
    expect(options.map(({ id }) => id)).toContain(option);
    expect(settings.map(({ id }) => id)).toContain(setting);
    const [of, wanted] = shown.at(-1)!;
    expect(of).toBe(projectOf(store.getState()));
    for (const id of wanted.options) expect(options.map((one) => one.id)).toContain(id);
    expect(settings.map((one) => one.id)).toContain(wanted.setting);
  };
  return { store, actions: createActions(store), expectConsistent };
}

it('looks at an option that is there after a copied one was undone or removed', () => {
  const { store, actions, expectConsistent } = open();
  actions.run({ kind: 'copy-option', option: 'our-floor', id: 'third', name: 'Third' });
  store.setState({ option: 'third' });
  expectConsistent();
  actions.undo();
  expectConsistent();
  actions.redo();
  expectConsistent();
  store.setState({ option: 'third' });
  actions.run({ kind: 'remove-option', option: 'third' });
  expectConsistent();
});

it('looks at an option and a setting that are there after a file was opened, undone and redone', async () => {
  const { store, actions, expectConsistent } = open();
  const other = {
    ...project,
    options: project.options.map((option) => ({ ...option, id: `${option.id}-2` })),
    settings: project.settings.map((setting) => ({ ...setting, id: `${setting.id}-2` })),
  };
  actions.lay(['floor'], 'WD-01');
  store.setState({ setting: 'evening' });
  await openProject(store, unkept(store), new File([projectText(other)], 'other.json'));
  expect(store.getState()).toMatchObject({ option: 'our-floor-2', setting: 'day-2' });
  expectConsistent();
  actions.undo();
  expectConsistent();
  actions.redo();
  expectConsistent();
});

it('takes a problem off the screen when the document changes, and not before', () => {
  const { store, actions } = open();
  actions.lay(['floor'], 'NO-SUCH');
  expect(store.getState().told?.kind).toBe('refused');
  store.setState({ setting: 'evening' });
  expect(store.getState().told?.kind).toBe('refused');
  actions.lay(['floor'], 'WD-01');
  expect(store.getState().told).toBeNull();
});
