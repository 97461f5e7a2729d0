import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { createActions } from '../../src/app/actions';
import { openLamp } from '../../src/app/lamp-files';
import { initialState, projectOf, shownSetting } from '../../src/app/state';
import { lightById } from '../../src/engine/spectrum/lights';
import { undoLabel } from '../../src/model/history';
import { LAMP_GROUPS, type Lamp, type Setting } from '../../src/model/project';
import { LampControl } from '../../src/ui/lamp/LampControl';
import { LampFigures } from '../../src/ui/lamp/LampFigures';
import { lampsOfSetting } from '../../src/ui/lamp/lamp-facts';
import { lampName, settingWithLamps } from '../../src/ui/words/lamps';
import { terrace } from './terrace';

function open() {
  const store = createStore(() => initialState(terrace(), 'system'));
  const actions = createActions(store);
  const file = (text: string, name = 'kitchen.csv') => openLamp(store, actions, new File([text], name));
  return { store, actions, file, lights: () => lightsOf(shownSetting(store.getState())) };
}
const lightsOf = ({ daylight, lamps }: Setting) => [daylight, ...LAMP_GROUPS.map((group) => lamps[group].light)];

const NM = Array.from({ length: 81 }, (_, i) => 380 + 5 * i);
const semicolons = (head: string) => [head, ...NM.map((nm) => `${nm};1`)].join('\n');
const table = (head: string, ...ids: readonly string[]) =>
  [head, ...NM.map((nm, i) => [nm, ...ids.map((id) => lightById(id)![i])].join(','))].join('\n');

it('takes the lamp of a file in one step and gives it back in one', async () => {
  const { store, actions, file, lights } = open();
  const before = lights();
  await file(table('nm,pendant', 'FL2'));
  expect(store.getState().told).toBeNull();
  expect(projectOf(store.getState()).lamps).toMatchObject([{ id: 'lamp-kitchen', label: 'kitchen' }]);
  expect(lights()).toEqual([before[0], ...LAMP_GROUPS.map(() => 'lamp-kitchen')]);
  expect(undoLabel(store.getState().history)).toBe('lamps: kitchen');
  actions.undo();
  expect(lights()).toEqual(before);
  expect(projectOf(store.getState()).lamps).toBeUndefined();
});

it.each(['nm;Leistung', 'nm;w', 'lambda;E(l)'])(
  'names a lone lamp by its file, whatever stands over it: %s',
  async (head) => {
    const { store, file } = open();
    await file(semicolons(head), 'Strip over the sink.csv');
    expect(projectOf(store.getState()).lamps?.[0]?.label).toBe('Strip over the sink');
  },
);

it('takes all lamps of a file, lights the first and says so; opened again it adds nothing', async () => {
  const { store, file, lights } = open();
  const text = table('nm,pendant,strip', 'FL2', 'LED-B1');
  await file(text);
  expect(store.getState().told).toMatchObject({ kind: 'notice', list: [{ code: 'several-lamps' }] });
  await file(text);
  expect(projectOf(store.getState()).lamps?.map(({ id, label }) => [id, label])).toEqual([
    ['lamp-kitchen-pendant', 'kitchen: pendant'],
    ['lamp-kitchen-strip', 'kitchen: strip'],
  ]);
  expect(lights()[1]).toBe('lamp-kitchen-pendant');
});

it.each([
  ['a broken table', '380,1\n385,x\n', 'kitchen.csv', 2],
  [
    'too short a range',
    NM.slice(20)
      .map((nm) => `${nm},1`)
      .join('\n'),
    'kitchen.csv',
    undefined,
  ],
  ['thirteen lamps', table('nm', ...new Array(13).fill('A')), 'kitchen.csv', undefined],
  ['a large file', 'x'.repeat(5_000_001), 'kitchen.csv', undefined],
])('leaves everything as it is for %s, and says why', async (_, text, name, line) => {
  const { store, file } = open();
  const before = projectOf(store.getState());
  await file(text, name);
  expect(projectOf(store.getState())).toBe(before);
  const told = store.getState().told;
  expect(told?.kind).toBe('refused');
  expect(told?.list[0].at?.file).toBe(name);
  expect(told?.list[0].at?.line).toBe(line);
  expect(told?.kind).toBe('refused');
});

const own: Lamp = { id: 'lamp-pendant', label: 'Pendant', start_nm: 380, step_nm: 5, power: [...lightById('FL2')!] };
const evening = (ceiling: string, under = ceiling): Setting => ({
  id: 'evening',
  name: 'Evening, late',
  daylight: null,
  lamps: {
    ceiling: { level: 1, light: ceiling },
    'under-cabinet': { level: 0.5, light: under },
    pendant: { level: 0, light: ceiling },
    hood: { level: 0, light: ceiling },
  },
});

it.each([
  ['LED-B2', '3000 K, Ra 80', 'Evening, lamps of 3000 K'],
  ['led:3000,90', '3000 K, Ra 90', 'Evening, lamps of 3000 K, Ra 90'],
  ['A', 'Filament (2856 K)', 'Evening, lamps: Filament (2856 K)'],
  ['lamp-pendant', 'Pendant', 'Evening, lamps: Pendant'],
  ['daylight:5600', 'Daylight 5600 K', 'Evening, lamps: Daylight 5600 K'],
])('names the light %s for people', (light, name, setting) => {
  expect(lampName(light, [own])).toBe(name);
  expect(settingWithLamps(evening(light), [own])).toBe(setting);
});

it('shows the figures of each kind of lamp in a setting, and what they mean', () => {
  const kinds = lampsOfSetting({ lamps: [own] }, evening('LED-B1', own.id), ['ceiling', 'under-cabinet']);
  expect(kinds.map(({ light, groups }) => [light, groups])).toEqual([
    ['LED-B1', ['ceiling']],
    [own.id, ['under-cabinet']],
  ]);
  const page = renderToStaticMarkup(createElement(LampFigures, { kinds, lamps: [own] }));
  // CIE 15:2018: LED-B1 has 2733 K. CIE 13.3: R9 of FL2 is -84; with a true minus sign.
  for (const words of ['Under-cabinet', '2733 K', '\u221284', 'Strong reds: dull.']) expect(page).toContain(words);
  expect(lampsOfSetting({}, evening('LED-B1'))).toHaveLength(1);
});

const control = (setting: Setting) =>
  renderToStaticMarkup(
    createElement(LampControl, { setting, groups: ['ceiling', 'under-cabinet'], lamps: [own], onLamp: () => {} }),
  );

it('says at the slider that the lamps are off, and that it is not for other lamps', () => {
  const dark = { ...evening('LED-B2'), lamps: terrace().settings[0]!.lamps };
  expect(control(dark)).toContain('>Lamps off<');
  expect(control(evening('LED-B2'))).toContain('>3000 K, Ra 80<');
  expect(control(evening('LED-B2'))).not.toContain('is-idle');
  expect(control(evening(own.id))).toContain('is-idle');
});
