import type { Assessment } from '../engine/judge/assessment';
import { joined, sentenceCase, surfacesPhrase } from '../engine/judge/surface-words';
import { type Caution, LEAD_UNTIL } from './cautions';
import type { Region, Wall } from './kitchen';

/** Cautions in plain words; local codes, appliance manuals and licensed trades decide. */
const WORDS = {
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
  leadUnknown: {
    us: `Built before ${LEAD_UNTIL.us}? Have old paint tested for lead before sanding walls, trim or cabinets; certified renovators do the work.`,
    other:
      'Old paint may hold lead, the more so the older the house. Have it tested before sanding walls, trim or cabinets.',
  },
  leadBuilt: {
    us: (year: number) =>
      `Built in ${year}, before ${LEAD_UNTIL.us}: have old paint tested for lead before sanding walls, trim or cabinets; certified renovators do the work.`,
    other: (year: number) =>
      `Built in ${year}: old paint may hold lead. Have it tested before sanding walls, trim or cabinets.`,
  },
  slip: 'Ask for the wet slip value of this floor. The scales cannot be converted into one another.',
  slipPolished: 'It is polished, and slippery when wet: ask first.',
  glare: (counters: string, one: boolean, walls: string) =>
    `${counters} ${one ? 'is' : 'are'} dark and polished, and ${one ? 'mirrors' : 'mirror'} the window ${walls} to those who stand before ${one ? 'it' : 'them'}. ` +
    'Look at a large sample there, lying flat, at noon and in the sun. A dark polish shows reflections, dust and fingerprints most.',
  load: (thickness: string, weight: string) =>
    `A stone top of ${thickness} weighs about ${weight}: have cabinets and overhangs checked for it.`,
  lowVision: (a: string, b: string, difference: string, contrast: string) =>
    `Edges may be hard to see for some eyes: ${a} and ${b} differ by only ${difference} LRV (contrast ${contrast}%, Bowman-Sapolinski).`,
  lowVisionUser: (a: string, b: string, difference: string, contrast: string) =>
    `Someone with low vision uses this kitchen, and ${a} and ${b} differ by only ${difference} LRV (contrast ${contrast}%, Bowman-Sapolinski): look at both samples together with them.`,
} as const;

const WALLS: { readonly [W in Wall]: string } = {
  left: 'on the left wall',
  back: 'on the back wall',
  right: 'on the right wall',
  front: 'on the door’s wall',
};

/** A caution as plain data with its words. */
export type ToldCaution = Caution & { readonly text: string };

/** The assessment with what to heed before ordering, as it is copied and printed. */
export const withCautions = (
  assessment: Assessment,
  cautions: readonly Caution[],
): Assessment & { readonly cautions: readonly ToldCaution[] } => ({
  ...assessment,
  cautions: cautions.map((caution) => ({ ...caution, text: cautionText(caution) })),
});

/** A caution in a sentence or two. */
export function cautionText(caution: Caution): string {
  switch (caution.code) {
    case 'dust':
      return sentences(WORDS.dust(surfacesPhrase(caution.surfaces).text), caution.engineered && WORDS.engineered);
    case 'heat':
      return sentences(WORDS.heat, heatFigure(caution), caution.fuel === 'gas' && WORDS.gas);
    case 'slip':
      return sentences(WORDS.slip, caution.polished && WORDS.slipPolished);
    case 'glare': {
      const who = surfacesPhrase(caution.surfaces);
      return sentenceCase(WORDS.glare(who.text, !who.plural, joined(caution.walls.map((wall) => WALLS[wall]))));
    }
    case 'lead': {
      const region = caution.region === 'us' ? 'us' : 'other';
      return caution.built === null ? WORDS.leadUnknown[region] : WORDS.leadBuilt[region](caution.built);
    }
    case 'load':
      return WORDS.load(`${integer(caution.thickness_mm)} mm`, weightText(caution.weight_kg_m2, caution.region));
    case 'low-vision': {
      const [a, b] = caution.surfaces.map((surfaces) => surfacesPhrase(surfaces).text);
      const say = caution.isForUser ? WORDS.lowVisionUser : WORDS.lowVision;
      return say(a!, b!, integer(caution.stepLrv), integer(caution.contrast));
    }
    default:
      return WORDS[caution.code];
  }
}

const sentences = (...parts: readonly (string | false)[]): string => parts.filter((part) => part !== false).join(' ');

/** Where a figure is common, it is named; the manual decides. */
function heatFigure({ fuel, region, hasUnitsAbove }: Extract<Caution, { code: 'heat' }>): string | false {
  if (!hasUnitsAbove) return false;
  if (region === 'us') return WORDS.heatFigures.us;
  return region === 'uk' && fuel === 'gas' ? WORDS.heatFigures.ukGas : false;
}

/** A whole number as it is written. */
const integer = (value: number): string => Math.round(value).toString();

/** Pounds per square foot of a kilogram per square meter. */
const LB_FT2 = 0.204816;

const weightText = (kg_m2: number, region: Region): string =>
  region === 'us' ? `${integer(LB_FT2 * kg_m2)} lb/ft²` : `${integer(kg_m2)} kg/m²`;
