import { expect, it } from 'vitest';
import type { InstalledRecord } from '../../src/engine/judge/assessment';
import { tintSentence } from '../../src/ui/reading/tint-source';

const place = (light: number, from: InstalledRecord['tint_from']) =>
  tintSentence({ place_white_lab_d65: [100, 8.1, 27], tint_from_light: light, tint_from: from });

it('lays a tint to the mix of lights where that brings it, and to surfaces where they do', () => {
  expect(place(0.98, [{ surface: 'floor', share: 0.02 }])).toBe(
    'A white held there would look strongly yellowish-orange. Of the tint, nearly all from the mix of lights here.',
  );
  expect(place(0.25, [{ surface: 'floor', share: 0.75 }])).toBe(
    'A white held there would look strongly yellowish-orange. ' +
      'Of the tint, about three quarters from the floor and about a quarter from the mix of lights here.',
  );
  expect(place(0, [{ surface: 'floor', share: 1 }])).not.toContain('lights');
});
