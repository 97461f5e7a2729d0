import { expect, it } from 'vitest';
import { colorRendering } from '../../src/engine/lamp/color-rendering';
import { lightFromWords } from '../../src/engine/lamp/light-words';

// CIE 13.3 takes daylight as its reference up to 25000 K; the temperature found of that very light is 69 K more.
it.each(['daylight:25000', 'planck:25000', 'planck:24000'])(
  'renders colors under %s as a light near its reference',
  (words) => {
    const light = lightFromWords(words);
    if (!light.ok) throw new Error(light.problem.text);
    expect(colorRendering(light.value)!.ra).toBeGreaterThan(90);
  },
);
