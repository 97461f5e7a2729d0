import type { Arrangement, Backing } from '../../kitchen/stand/types';
import { spoken } from './spoken';

/** Words of the sample stand. */
export const SAMPLE_STAND = spoken({
  scenes: 'What the picture shows',
  scene: { room: 'Room', stand: 'Sample stand' },
  arrangement: 'How the samples are placed',
  arrangements: {
    'as-in-room': 'As in the room',
    'all-flat': 'All flat',
    'all-upright': 'All upright',
  } satisfies Record<Arrangement, string>,
  backing: 'Backing',
  backings: { gray: 'Gray', white: 'White' } satisfies Record<Backing, string>,
  picture: (option: string, setting: string, arrangement: string) =>
    `The samples of ${option} on a stand, ${arrangement.toLowerCase()}, ${setting.toLowerCase()} light`,
  pictureBeside: (left: string, right: string, setting: string, arrangement: string) =>
    `Samples on a stand, ${arrangement.toLowerCase()}, ${setting.toLowerCase()} light: left ${left}, right ${right}`,
  flatLighter: (sample: string, l: string) => `Flat, ${sample} reads L* ${l} lighter than the same piece upright.`,
  flatDarker: (sample: string, l: string) => `Flat, ${sample} reads L* ${l} darker than the same piece upright.`,
  same: (sample: string, de00: string) => `Flat or upright, ${sample} reads the same to most eyes here: ${de00} dE00.`,
  misleadsFlat: (sample: string, l: string, way: string) =>
    `All flat misleads: ${sample} reads L* ${l} ${way} here than it will standing.`,
  misleadsUpright: (sample: string, l: string, way: string) =>
    `All upright misleads: ${sample} reads L* ${l} ${way} here than it will lying.`,
  misleadsColor: (sample: string, de00: string) =>
    `In this plane ${sample} reads another color than in its own: ${de00} dE00.`,
  sample: (surface: string) => `the ${surface.toLowerCase()} sample`,
  lighter: 'lighter',
  darker: 'darker',
  title: 'On the sample stand',
  explained:
    'The stand repeats the light of your counter: each light as bright on what lies, and as nearly as its lamps can on what stands. Floor, walls and fronts are not here, so they lend no color: that is told under As installed here.',
  flat: 'Lying',
  upright: 'Standing',
  numbers: (lx: string, lab: string, l: string) => `${lx}; Lab ${lab}; as bright as L* ${l}`,
  between: 'Between both',
  share: (here: string, counter: string) =>
    here === counter
      ? `What stands gets ${here} of the light of what lies, here as on your counter.`
      : `What stands gets ${here} of the light of what lies here; on your counter ${counter}.`,
} as const);
