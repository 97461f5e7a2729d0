import { surfacesPhrase } from '../../engine/judge/surface-words';
import type { Caution } from '../../model/cautions';
import type { Region, Wall } from '../../model/kitchen';
import { integer, listed } from './numbers';

/** Cautions in plain words; local codes, appliance manuals and licensed trades decide. */
export const CAUTION_WORDS = {
  title: 'Before you order',
  dust: (surfaces: string) =>
    `Never cut or sand ${surfaces} on site yourself: the dust harms the lungs for good. Have it cut wet by an equipped shop.`,
  engineered:
    'Engineered stone tops may not be supplied or installed in Australia since July 2024, and other places may follow: ask what holds where you build.',
  heat: 'Check the manuals of cooktop and hood for the clearance to what hangs above and stands beside; they overrule this drawing.',
  heatFigures: {
    us: 'US codes commonly ask for 30 in (762 mm) from the cooktop to unprotected cabinets above, 24 in (610 mm) to protected ones.',
    ukGas: 'Without other instructions UK gas practice is about 760 mm above and 460 mm to units beside it.',
  },
  gas: 'Gas is connected by a licensed trade.',
  glass: 'Glass behind a cooktop has to bear the heat: ask for heat-rated glass.',
  acid: 'If this stone is marble, limestone or alike, lemon and vinegar mark it. Ask what it is, and whether it is sealed.',
  'lead-us':
    'Built before 1978? Have old paint tested for lead before sanding walls, trim or cabinets; certified renovators do the work.',
  lead: 'Old paint may hold lead, the more so the older the house. Have it tested before sanding walls, trim or cabinets.',
  slip: 'Ask for the wet slip value of this floor. The scales cannot be converted into one another.',
  slipPolished: 'It is polished, and slippery when wet: ask first.',
  glare: (walls: string) =>
    `The polished counter mirrors the window ${walls}. Look at a large sample there, lying flat, at noon.`,
  glareDark: 'A dark polish shows reflections, dust and fingerprints most.',
  load: (thickness: string, weight: string) =>
    `A stone top of ${thickness} weighs about ${weight}: have cabinets and overhangs checked for it.`,
  lowVision: (a: string, b: string, difference: string, contrast: string) =>
    `Edges may be hard to see for some eyes: ${a} and ${b} differ by only ${difference} LRV (contrast ${contrast}%, Bowman-Sapolinski).`,
  lowVisionUser: (a: string, b: string, difference: string, contrast: string) =>
    `Someone with low vision uses this kitchen, and ${a} and ${b} differ by only ${difference} LRV (contrast ${contrast}%, Bowman-Sapolinski): look at both samples together with them.`,
  planning: 'Planning aid only. Local codes, appliance manuals and licensed trades decide.',
  screen: 'A screen is not a sample. Check physical samples in the room before you order.',
} as const;

const WALLS: { readonly [W in Wall]: string } = {
  left: 'on the left wall',
  back: 'on the back wall',
  right: 'on the right wall',
  front: 'on the door’s wall',
};

/** A caution in a sentence or two. */
export function cautionText(caution: Caution): string {
  switch (caution.code) {
    case 'dust':
      return sentences(
        CAUTION_WORDS.dust(surfacesPhrase(caution.surfaces).text),
        caution.engineered && CAUTION_WORDS.engineered,
      );
    case 'heat':
      return sentences(CAUTION_WORDS.heat, heatFigure(caution), caution.fuel === 'gas' && CAUTION_WORDS.gas);
    case 'slip':
      return sentences(CAUTION_WORDS.slip, caution.polished && CAUTION_WORDS.slipPolished);
    case 'glare': {
      const walls = listed(caution.walls.map((wall) => WALLS[wall]));
      return sentences(CAUTION_WORDS.glare(walls), caution.dark && CAUTION_WORDS.glareDark);
    }
    case 'load':
      return CAUTION_WORDS.load(
        `${integer(caution.thickness_mm)} mm`,
        weightText(caution.weight_kg_m2, caution.region),
      );
    case 'low-vision': {
      const [a, b] = caution.surfaces.map((surfaces) => surfacesPhrase(surfaces).text);
      const say = caution.isForUser ? CAUTION_WORDS.lowVisionUser : CAUTION_WORDS.lowVision;
      return say(a!, b!, integer(caution.stepLrv), integer(caution.contrast));
    }
    default:
      return CAUTION_WORDS[caution.code];
  }
}

const sentences = (...parts: readonly (string | false)[]): string => parts.filter((part) => part !== false).join(' ');

/** Where a figure is common, it is named; the manual decides. */
function heatFigure({ fuel, region, hasUnitsAbove }: Extract<Caution, { code: 'heat' }>): string | false {
  if (!hasUnitsAbove) return false;
  if (region === 'us') return CAUTION_WORDS.heatFigures.us;
  return region === 'uk' && fuel === 'gas' ? CAUTION_WORDS.heatFigures.ukGas : false;
}

/** Pounds per square foot of a kilogram per square meter. */
const LB_FT2 = 0.204816;

const weightText = (kg_m2: number, region: Region): string =>
  region === 'us' ? `${integer(LB_FT2 * kg_m2)} lb/ft²` : `${integer(kg_m2)} kg/m²`;
