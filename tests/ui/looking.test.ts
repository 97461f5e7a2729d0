import fc from 'fast-check';
import { expect, it } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { captionLines, pictureFileName } from '../../src/app/caption-lines';
import {
  atEyeHeight,
  atItsOwnHeight,
  eyeHeight_mm,
  LEAST_EYE_MM,
  MOST_EYE_MM,
  USUAL_EYES,
  withEyeHeight,
} from '../../src/app/eye-height';
import { chooseLight, holdLight, releaseLight } from '../../src/app/light-hold';
import { shortcutOf } from '../../src/app/shortcuts';
import { initialState } from '../../src/app/state';
import type { Viewpoint } from '../../src/engine/light/types';
import { terrace } from './terrace';

const open = () => createStore(() => initialState(terrace(), 'system'));
const doorway: Viewpoint = {
  id: 'doorway',
  name: 'From the doorway',
  eye: [1, 0.2, 1.6],
  target: [2, 3, 0.75],
  fov_deg: 60,
  overview: true,
};
const corner: Viewpoint = { ...doorway, id: 'corner', eye: [0.6, 3, 1.35] };

it('eyes are as high as the place says, until the place or the person gets another height', () => {
  expect([doorway, corner].map((one) => eyeHeight_mm(USUAL_EYES, one))).toEqual([1600, 1350]);
  expect(atEyeHeight(USUAL_EYES, doorway)).toBe(doorway);
  const lower = withEyeHeight(USUAL_EYES, doorway, 1450);
  expect([doorway, corner].map((one) => eyeHeight_mm(lower, one))).toEqual([1450, 1350]);
  expect(eyeHeight_mm(atItsOwnHeight(lower, doorway.id), doorway)).toBe(eyeHeight_mm(USUAL_EYES, doorway));
  const seated = withEyeHeight({ ...lower, of: 'seated' }, doorway, 1150);
  expect([doorway, corner].map((one) => eyeHeight_mm(seated, one))).toEqual([1150, 1150]);
  expect(atEyeHeight(seated, corner)).toMatchObject({ eye: [0.6, 3, 1.15], target: corner.target });
  expect(eyeHeight_mm({ ...seated, of: 'place' }, doorway)).toBe(1450);
  fc.assert(
    fc.property(
      fc.double({ noNaN: true, min: -1e6, max: 1e6 }),
      fc.constantFrom('place', 'standing', 'seated'),
      (mm, of) => {
        const height = eyeHeight_mm(withEyeHeight({ ...USUAL_EYES, of }, doorway, mm), doorway);
        expect(height).toBeGreaterThanOrEqual(LEAST_EYE_MM);
        expect(height).toBeLessThanOrEqual(MOST_EYE_MM);
      },
    ),
  );
});

it('a held light goes back to the one before; held on itself it shows the last one', () => {
  const store = open();
  const [first, second, third] = terrace().settings.map(({ id }) => id);
  holdLight(store, third!);
  expect(store.getState()).toMatchObject({ setting: third, heldLight: first });
  // A second hold while one goes on changes nothing.
  holdLight(store, second!);
  expect(store.getState().setting).toBe(third);
  releaseLight(store);
  expect(store.getState()).toMatchObject({ setting: first, heldLight: null });
  holdLight(store, null);
  expect(store.getState().setting).toBe(second);
  releaseLight(store);
  chooseLight(store, third!);
  holdLight(store, third!);
  expect(store.getState().setting).toBe(first);
  releaseLight(store);
  expect(store.getState().setting).toBe(third);
});

it('L holds a light while letters are on', () => {
  const press = { key: 'l', ctrlKey: false, metaKey: false, shiftKey: false, altKey: false };
  expect(shortcutOf(press, true)).toBe('hold-light');
  expect(shortcutOf(press, false)).toBeNull();
});

it('the words under a kept picture say what it is of, when it was kept, and what it is not', () => {
  const store = open();
  store.setState({ sideBySide: true, shownAs: 'gray', seenBy: 'daylight-camera' });
  const lines = captionLines(store.getState(), new Date(2026, 2, 5));
  expect(lines[0]).toBe('Terrace kitchen: left Copied look, right Our floor');
  expect(lines[1]).toMatch(/^Light: Day\. Overcast, Oct 21, noon\.$/);
  const all = lines.join('\n');
  for (const words of [
    'Shown in gray',
    'Seen by a camera set to daylight',
    'March 5, 2026',
    'A screen is not a sample',
  ]) {
    expect(all).toContain(words);
  }
  expect(lines.at(-1)).toContain('Planning aid only.');
});

it('a file name is one that every system takes, whatever the project is called', () => {
  const store = open();
  expect(pictureFileName(store.getState())).toBe('kitchen-terrace-kitchen-our-floor-day-overcast.png');
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', minLength: 0, maxLength: 200 }), (name) => {
      const state = initialState({ ...terrace(), name }, 'system');
      expect(pictureFileName(state)).toMatch(/^kitchen(-[a-z0-9]+)*-?\.png$/);
      expect(pictureFileName(state).length).toBeLessThan(100);
    }),
  );
});
