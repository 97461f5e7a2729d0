import type { ChainLabel } from './chain-labels';
import type { LaidChain, SheetLayout } from './sheet-layout';
import { LED_OFF, TICK, WORDS_OFF } from './sheet-layout';
import { CAPITAL } from './sizes';
import { Words } from './Words';

/** Dimension lines round a drawing, with ticks and lengths; upright ones are read from the right. */
export function ChainLines({ layout }: { readonly layout: SheetLayout }) {
  return (
    <g>
      {layout.chains.map((laid) => (
        <path key={keyOf(laid)} className="draw-fine" d={placesOf(laid, layout).path} />
      ))}
      {layout.chains.map((laid) => (
        <ChainWords key={keyOf(laid)} laid={laid} layout={layout} />
      ))}
    </g>
  );
}

const keyOf = ({ chain }: LaidChain): string => `${chain.what} ${chain.side}`;

/** The lines of a chain, and from a place along it to where its words stand. */
function placesOf({ chain, labels, line }: LaidChain, layout: SheetLayout) {
  const isUpright = chain.side === 'left' || chain.side === 'right';
  const isFar = chain.side === 'below' || chain.side === 'right';
  const edge = isFar ? (isUpright ? layout.width : layout.height) : 0;
  const out = isFar ? 1 : -1;
  const at = edge + out * line;
  /** From along the chain and away from the drawing to paper. */
  const place = (along: number, away: number): readonly [number, number] => (isUpright ? [away, along] : [along, away]);
  // Words stand above their line, and led ones beyond all that.
  const own = at - WORDS_OFF - CAPITAL / 2;
  const led = isFar ? at + LED_OFF + CAPITAL / 2 : own - LED_OFF - CAPITAL;
  const foot = led - (out * CAPITAL) / 2 - out * 0.25;
  const marks = [...labels.map(({ from }) => from), labels.at(-1)!.to];
  const path = [
    lineOf(place(marks[0]!, at), place(marks.at(-1)!, at)),
    ...marks.map((mark) => tickAt(place(mark, at))),
    ...marks.map((mark) => lineOf(place(mark, edge + out * Math.min(0.8, line / 2)), place(mark, at + out * TICK))),
    ...labels
      .filter(({ isLed }) => isLed)
      .map((label) => lineOf(place((label.from + label.to) / 2, at), place(label.at, foot))),
  ].join('');
  return { isUpright, path, placeOf: (label: ChainLabel) => place(label.at, label.isLed ? led : own) };
}

function ChainWords({ laid, layout }: { readonly laid: LaidChain; readonly layout: SheetLayout }) {
  const { isUpright, placeOf } = placesOf(laid, layout);
  return laid.labels.map((label) => {
    const [x, y] = placeOf(label);
    return <Words key={label.from} text={label.text} x={x} y={y} isUpright={isUpright} />;
  });
}

const lineOf = ([x1, y1]: readonly [number, number], [x2, y2]: readonly [number, number]): string =>
  `M${round(x1)} ${round(y1)}L${round(x2)} ${round(y2)}`;

/** An oblique tick, as drawings in this trade have it. */
const tickAt = ([x, y]: readonly [number, number]): string =>
  lineOf([x - TICK * 0.8, y + TICK * 0.8], [x + TICK * 0.8, y - TICK * 0.8]);

const round = (mm: number): number => Math.round(mm * 1000) / 1000;
