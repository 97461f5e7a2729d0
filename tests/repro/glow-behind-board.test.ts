import { expect, it } from 'vitest';
import { mapFineToCoarse, patchForFine } from '../../src/engine/light/fine-to-coarse';
import { layoutPatches } from '../../src/engine/light/patches';
import { facesOfShades } from '../../src/engine/light/shades';
import type { Rect } from '../../src/engine/light/types';

const [SPLASH, COUNTER, FRONTS] = [0, 1, 2];
/** The wall y = 3 looks back into the room. */
const splash: Rect = { origin: [0, 3, 0.9], u: [2, 0, 0], v: [0, 0, 0.5], surface: SPLASH };
const counter: Rect = { origin: [0, 2.4, 0.9], u: [2, 0, 0], v: [0, 0.6, 0], surface: COUNTER };
/** The rail under the wall units, 280 mm before the wall, a strip of lamps close behind it. */
const railBack: Rect = { origin: [0, 2.72, 1.37], u: [0, 0, 0.03], v: [2, 0, 0], surface: FRONTS };

it('takes nothing of the light on a rail for the back of a board that leans below it', () => {
  const coarse = [splash, counter, railBack];
  const patches = layoutPatches(coarse, 0.3);
  const board = facesOfShades([{ min: [0.8, 2.9, 0.9], max: [1.2, 2.95, 1.25] }]);
  const map = mapFineToCoarse(board, coarse, patches, 0);
  board.forEach((_, face) => {
    const patch = patchForFine(map, face, 1, 2.95, 1.2);
    expect(patches.surface[patch]).not.toBe(FRONTS);
  });
});

it('still lets a rail speak for itself', () => {
  const coarse = [splash, counter, railBack];
  const patches = layoutPatches(coarse, 0.3);
  const map = mapFineToCoarse([railBack], coarse, patches);
  expect(patches.surface[patchForFine(map, 0, 1, 2.72, 1.38)]).toBe(FRONTS);
});
