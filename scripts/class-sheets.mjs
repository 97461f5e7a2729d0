// Contact sheets of finishes, class by class: each in the room, from near in the room, and straight on at a known scale.
import { PNG } from 'pngjs';
import { bakePattern } from '../src/engine/pattern/bake';
import { paintSwatch } from '../src/engine/pattern/swatch';
import { canGoOn } from '../src/model/finish-candidates';
import { layingFor } from '../src/model/laying';
import { laidSample } from '../src/ui/swatch/laid-sample';
import { swatchColor } from '../src/ui/swatch/swatch-color';
import { atRest, choose, openProject, picture, press, stageAlone, writeSheet } from './sheet-page.mjs';

const CLASSES = [
  'paint',
  'laminate',
  'wood',
  'vinyl',
  'porcelain',
  'glazed',
  'glass',
  'stone',
  'engineered',
  'solid surface',
  'metal',
];
const SIZE = { width: 600, height: 400 };
/** Millimeters of a finish that a pixel of its straight-on picture shows: 480 x 320 mm in all. */
const MM_PER_PX = 0.8;

const FRONTS = ['base-fronts', 'wall-fronts', 'tall-fronts', 'island-fronts', 'plinth'];
const FROM_DOORWAY = { view: 'From the doorway', keys: [] };
const TO_THE_FLOOR = [
  ['ArrowLeft', 13],
  ['PageDown', 14],
  ['+', 5],
  ['ArrowUp', 4],
];
/** Where finishes are laid to be looked at, and from where: the whole, and near to it by the keys of the picture. */
const PLACES = {
  walls: { surfaces: ['wall'], views: [FROM_DOORWAY, { view: 'Close on the corner', keys: [] }] },
  fronts: { surfaces: FRONTS, views: [FROM_DOORWAY, { view: 'Seated at the island', keys: [['+', 3]] }] },
  // From the other side of the island, then lower and nearer, and down on the floor before the counter.
  floor: {
    surfaces: ['floor'],
    views: [FROM_DOORWAY, { view: 'From the doorway', keys: TO_THE_FLOOR }],
  },
  splash: { surfaces: ['backsplash'], views: [FROM_DOORWAY, { view: 'Close on the corner', keys: [] }] },
  counter: {
    surfaces: ['counter', 'island-counter', 'upstand'],
    // The island: beside the window a white counter burns out.
    views: [FROM_DOORWAY, { view: 'From the doorway', keys: [['+', 4]] }],
  },
  fittings: {
    surfaces: ['appliance', 'hardware', 'sink', 'tap'],
    views: [FROM_DOORWAY, { view: 'Seated at the island', keys: [['+', 1]] }],
  },
};

/** Which of the places a finish is shown at. */
function placeOf(finish) {
  switch (finish.class) {
    case 'paint':
      return finish.gloss_gu < 15 ? 'walls' : 'fronts';
    case 'laminate':
      return 'fronts';
    case 'glazed':
    case 'glass':
      return 'splash';
    case 'metal':
      return 'fittings';
    case 'wood':
      return canGoOn(finish, 'floor') ? 'floor' : 'fronts';
    default:
      return canGoOn(finish, 'floor') ? 'floor' : 'counter';
  }
}

/** Writes the sheets of the wanted classes. Every finish is an option of one project, so that all share one room and light. */
export async function sheetsOfClasses(page, demo, isWanted, pathOf) {
  const shown = CLASSES.filter(isWanted);
  const finishes = demo.library.filter((finish) => shown.includes(finish.class));
  const images = new Map(finishes.map(({ id }) => [id, []]));
  await stageAlone(page, SIZE);
  if (!(await openProject(page, 'classes', { ...demo, options: finishes.map((one) => optionWith(demo, one)) }))) return;
  for (const place of new Set(finishes.map(placeOf))) {
    const here = finishes.filter((finish) => placeOf(finish) === place);
    for (const { view, keys } of PLACES[place].views) {
      await choose(page, 'Viewpoint', view);
      await press(page, keys);
      for (const { id } of here) {
        await chooseOption(page, id);
        images.get(id).push(await picture(page));
      }
    }
  }
  for (const one of shown) {
    const cells = finishes
      .filter((finish) => finish.class === one)
      .map((finish) => ({
        label: `${finish.label}. On ${PLACES[placeOf(finish)].surfaces.slice(0, 2).join(' and ')}; right: 480 × 320 mm.`,
        images: [...images.get(finish.id), straightOn(demo, finish)],
      }));
    await writeSheet(page, pathOf(one), `Finishes: ${one}`, cells, 2, SIZE.width / 1.25);
  }
}

/** The demo's first option with a finish laid as it usually is. */
function optionWith(demo, finish) {
  const { surfaces } = PLACES[placeOf(finish)];
  const [option] = demo.options;
  const laid = surfaces.map((surface) => {
    const before = option.scheme[surface];
    return [surface, { ...before, finish: finish.id, laying: layingFor(finish, surface, demo.library, before.laying) }];
  });
  return {
    ...option,
    id: finish.id.toLowerCase(),
    name: finish.id,
    scheme: { ...option.scheme, ...Object.fromEntries(laid) },
  };
}

/** There may be more options than the row has room for: the button itself is pressed, wherever it is. */
async function chooseOption(page, name) {
  await page.evaluate((wanted) => {
    const radios = [...document.querySelectorAll('[role=radiogroup][aria-label="Option"] input')];
    radios.find((radio) => (radio.ariaLabel ?? radio.closest('label').textContent.trim()) === wanted).click();
  }, name);
  await atRest(page);
}

/** The finish as laid, straight on, painted by the engine as its sample in the library is; what stands as fronts is upright. */
function straightOn(demo, finish) {
  const { width, height } = SIZE;
  const place = placeOf(finish);
  const [surface] = PLACES[place].surfaces;
  const library = new Map(demo.library.map((one) => [one.id, one]));
  const { labs, pattern } = laidSample(library, finish, layingFor(finish, surface, demo.library));
  const texture = pattern && bakePattern(pattern.spec);
  const paint = (across, up) => paintSwatch(texture, labs.map(swatchColor), across, up, MM_PER_PX, [300, 200]);
  const png = new PNG({ width, height });
  png.data.set(place === 'fronts' ? turned(paint(height, width), height, width) : paint(width, height));
  return `data:image/png;base64,${PNG.sync.write(png).toString('base64')}`;
}

/** A picture turned by a quarter. */
function turned(pixels, width, height) {
  const out = new Uint8ClampedArray(pixels.length);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const from = 4 * (y * width + x);
      out.set(pixels.subarray(from, from + 4), 4 * ((width - 1 - x) * height + y));
    }
  }
  return out;
}
