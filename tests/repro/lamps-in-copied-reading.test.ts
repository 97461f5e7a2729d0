import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { createActions } from '../../src/app/actions';
import { initialState, shownSetting } from '../../src/app/state';
import type { AssessedSurface } from '../../src/engine/judge/assessment';
import { LAMP_GROUPS } from '../../src/model/project';
import { readingText } from '../../src/ui/reading/copy-text';
import { PointPart } from '../../src/ui/reading/PointPart';
import type { PointView } from '../../src/ui/reading/point-view';
import { settingWithLamps } from '../../src/ui/words/lamps';
import { terrace } from '../ui/terrace';

// A copied reading named the lamps the setting once had, and a part by its name in the code.

it('names a setting with the lamps that are on now', () => {
  const store = createStore(() => initialState(terrace(), 'system'));
  const actions = createActions(store);
  const named = () => settingWithLamps(shownSetting(store.getState()));
  expect(named()).toBe('Day');
  store.setState({ setting: 'evening' });
  expect(named()).toBe('Evening, lamps of 3000 K and 2700 K, Ra 90');
  actions.setLamp('LED-B3', false);
  expect(named()).toBe('Evening, lamps of 4000 K');
  for (const group of LAMP_GROUPS) actions.setLevel(group, 0, false);
  expect(named()).toBe('Evening');
});

it('names the part at a point in words, on the card and in the copied text', () => {
  const point: PointView = {
    component: 'pool',
    lux: 310,
    lux_direct: 200,
    parts: [],
    shift_de00: 0,
    mirrored: null,
    white_srgb8: [255, 255, 250],
    darkened: 1,
    lab_d65: [80, 0, 5],
    place_white_lab_d65: [100, 0, 4],
    srgb8: [200, 198, 190],
    seen_by: 'used-to-it',
  };
  const average = {
    role: 'average',
    share: 1,
    lab_d65: [80, 0, 5],
    lrv: 57,
    munsell: '5Y 8/1',
    name: 'yellowish gray',
    provenance: 'declared',
    uncertainty_de00: 1,
  };
  const surface = { surface: 'backsplash', label: 'Tile', average, components: [], installed: [] };
  const context = { project: 'P', option: 'O', setting: 'Day', cct_k: 6504 };
  const text = readingText(surface as unknown as AssessedSurface, context, point);
  expect(text).toContain('At the point chosen (glaze pool): Lab 80.0, 0.0, 5.0; 310 lx');
  expect(text).toContain('average (100%): Lab 80.0, 0.0, 5.0; LRV 57.0; Munsell 5Y 8/1; yellowish gray; declared');
  expect(renderToStaticMarkup(createElement(PointPart, { picked: null, hasParts: true, point }))).toContain(
    'Glaze pool',
  );
});
