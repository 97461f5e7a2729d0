import { expect, it } from 'vitest';
import { yFromLightness } from '../../src/engine/color/lab';
import { HUE_PLACE_L, HUE_PLACES } from '../../src/engine/finish/hue-places.data';
import { HUE_WORDS } from '../../src/engine/finish/hue-words';
import { labD65FromHueValueChroma } from '../../src/engine/naming/munsell';
import { munsellValueFromY } from '../../src/engine/naming/munsell-value';

// Munsell renotation (Newhall, Nickerson, Judd 1943) through the npm package munsell; value from Y by ASTM D1535.
it.each(Object.entries(HUE_WORDS))('places %s where the renotation does', (word, { hue100, chroma }) => {
  const places = HUE_PLACES[word]!;
  expect(places).toHaveLength(2 * HUE_PLACE_L.length);
  HUE_PLACE_L.forEach((l, i) => {
    const lab = labD65FromHueValueChroma(hue100, munsellValueFromY(yFromLightness(l)), chroma);
    expect(places[2 * i]).toBeCloseTo(lab.a, 2);
    expect(places[2 * i + 1]).toBeCloseTo(lab.b, 2);
  });
});
