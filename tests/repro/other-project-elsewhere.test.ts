import { expect, it } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { openProject } from '../../src/app/files';
import { setEyes } from '../../src/app/look-from';
import { startNewProject } from '../../src/app/start-new-project';
import { initialState } from '../../src/app/state';
import { projectText } from '../../src/io/project-file';
import { terrace } from '../ui/terrace';
import { unkept } from '../ui/unkept';

// Opened after one had walked about, another kitchen was seen and captioned from a place of the one before.
const wandered = () => {
  const store = createStore(() => initialState(terrace(), 'system'));
  store.setState({
    movedEye: [1, 2, 1.2],
    viewpoint: 'doorway',
    heldLight: 'day',
    lastLight: 'evening',
    held: { kind: 'white' } as never,
    aim: { x: 0.2, y: 0.3 },
    reading: 'floor',
  });
  setEyes(store, { of: 'place', standing_mm: 1710, seated_mm: 1180, places_mm: { doorway: 1000 } });
  return store;
};
const CLEAN = { movedEye: null, heldLight: null, lastLight: null, held: null, aim: null, reading: null, picked: null };

it.each(['opened from a file', 'made anew'])('another project, %s, is looked at afresh', async (way) => {
  const store = wandered();
  const { viewpointVersion } = store.getState();
  if (way === 'made anew') expect(startNewProject({ store, projects: unkept(store), demo: terrace() }, {})).toEqual([]);
  else await openProject(store, unkept(store), new File([projectText(terrace())], 'mine.project.json'));
  expect(store.getState()).toMatchObject({ ...CLEAN, viewpointVersion: viewpointVersion + 1 });
  // One's own heights are one's own; those of a place were of a place in the other kitchen.
  expect(store.getState().eyes).toEqual({ of: 'place', standing_mm: 1710, seated_mm: 1180, places_mm: {} });
});
