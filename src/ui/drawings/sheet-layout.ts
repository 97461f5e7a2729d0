import type { Chain, Drawing, Level } from '../../kitchen/drawings/types';
import { type LengthUnit, lengthText } from '../../model/length-text';
import { type ChainLabel, chainLabels, writtenHeights } from './chain-labels';
import { CAPITAL, digitsWide, LETTER, WALL } from './sizes';

/** A chain with its words and the place of its line, mm on paper from the edge of what is drawn, outward. */
export interface LaidChain {
  readonly chain: Chain;
  readonly labels: readonly ChainLabel[];
  readonly line: number;
}

/** A height over the floor: where it is and where its words stand, mm on paper from the top of what is drawn. */
export interface LaidLevel {
  readonly level: Level;
  readonly text: string;
  readonly y: number;
  readonly at: number;
}

/** A drawing on paper, mm: what is drawn with its dimensions round it. */
export interface SheetLayout {
  readonly drawing: Drawing;
  readonly ratio: number;
  /** Of what is drawn. */
  readonly width: number;
  readonly height: number;
  readonly chains: readonly LaidChain[];
  readonly levels: readonly LaidLevel[];
  readonly margins: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
}

/** From words to their line, and from a line or words to what is next. */
export const WORDS_OFF = 0.6;
const APART = 0.9;
/** From a line, with its ticks, or from words to words that are led. */
export const LED_OFF = 1.1;
/** From what is drawn to a line whose words stand outside it. */
const FIRST = 2.4;
/** Half a tick at the end of a length. */
export const TICK = 0.8;
/** Levels: from what is drawn to their mark and their words. */
export const LEVEL_MARK = 0.9;
export const LEVEL_WORDS = 3.2;

/** Round all of it: the boxes of letters are higher than what is seen of them. */
const AROUND = 0.7;

/** Room for north in a corner of the plan. */
const NORTH_ROOM = 10;

/** Room for the scale bar below everything. */
export const BAR_ROOM = 6.5;

/** Lays a drawing out at a scale. */
export function layOut(drawing: Drawing, ratio: number, unit: LengthUnit): SheetLayout {
  const wall = drawing.room ? WALL : 0;
  const chains: LaidChain[] = [];
  const reach = { below: wall, above: wall, left: wall, right: wall };
  const ordered = [...drawing.chains].sort((a, b) => a.row - b.row);
  for (const chain of ordered) {
    const labels = chainLabels(chain, ratio, unit);
    const hasLed = labels.some(({ isLed }) => isLed);
    const isOutside = chain.side === 'above' || chain.side === 'left';
    const before = reach[chain.side];
    const words = WORDS_OFF + CAPITAL;
    const line = before + (isOutside ? (before === wall ? FIRST : APART) : APART + words);
    const ledWords = hasLed ? LED_OFF + CAPITAL : 0;
    const beyond = isOutside ? words + ledWords : Math.max(ledWords, TICK);
    chains.push({ chain, labels, line });
    reach[chain.side] = line + beyond;
  }
  const levels = levelsOf(drawing, ratio, unit);
  const least = drawing.room ? NORTH_ROOM : 0;
  const right = levels.length > 0 ? LEVEL_WORDS + Math.max(...levels.map(({ text }) => digitsWide(text))) : 0;
  return {
    drawing,
    ratio,
    width: drawing.width / ratio,
    height: drawing.height / ratio,
    chains,
    levels,
    margins: {
      left: Math.max(reach.left + AROUND, least),
      right: Math.max(reach.right, right) + AROUND,
      top: Math.max(reach.above + AROUND, least, levels.length > 0 ? CAPITAL / 2 + AROUND : 0),
      bottom: reach.below + BAR_ROOM,
    },
  };
}

/** Levels beside a drawing from above to below, their words moved apart. */
function levelsOf({ levels, height }: Drawing, ratio: number, unit: LengthUnit): readonly LaidLevel[] {
  const sorted = [...levels].sort((a, b) => b.y - a.y);
  let last = -Infinity;
  return sorted.map((level) => {
    const y = (height - level.y) / ratio;
    const at = Math.max(y, last + LETTER);
    last = at;
    const [written] = writtenHeights([0, level.y], unit);
    return { level, text: lengthText(written!, unit), y, at };
  });
}

/** The whole of a drawing on paper, mm. */
export const sizeOf = ({ width, height, margins }: SheetLayout): readonly [width: number, height: number] => [
  margins.left + width + margins.right,
  margins.top + height + margins.bottom,
];
