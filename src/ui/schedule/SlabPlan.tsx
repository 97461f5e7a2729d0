import type { ItemQuantity } from '../../kitchen/schedule/types';
import { lengthText } from '../../model/length-text';
import { surfaceName } from '../words/engine-words';
import { ITEM } from '../words/schedule-item';
import { unitNow } from '../words/spoken';

type Slabs = NonNullable<ItemQuantity['slabs']>;
type Part = Slabs['slabs'][number]['parts'][number];

/** Height of letters, mm of slab. */
const LETTER_MM = 100;

/** Each slab with what is cut from it, to scale. */
export function SlabPlan({ slabs }: { readonly slabs: Slabs }) {
  const [length, width] = slabs.slab_mm;
  return (
    <ul className="slab-plans">
      {slabs.slabs.map(({ parts, mirrored }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: slabs have no names but their order
        <li key={i}>
          <svg className="slab-plan" viewBox={`-8 -8 ${length + 16} ${width + 16}`} aria-hidden="true">
            <rect className="slab-edge" x={0} y={0} width={length} height={width} />
            {parts.map((part) => {
              const [w, h] = part.turned ? [part.width_mm, part.length_mm] : [part.length_mm, part.width_mm];
              const y = width - part.y_mm - h;
              return (
                <g key={`${part.piece} ${part.from_mm}`}>
                  <rect className="slab-part" x={part.x_mm} y={y} width={w} height={h} />
                  {seamEnds(slabs, part).map((end) => {
                    const [x1, y1, x2, y2] = part.turned
                      ? [part.x_mm, y + h * (1 - end), part.x_mm + w, y + h * (1 - end)]
                      : [part.x_mm + w * end, y, part.x_mm + w * end, y + h];
                    return <line key={end} className="slab-seam" x1={x1} y1={y1} x2={x2} y2={y2} />;
                  })}
                  {h > LETTER_MM * 1.2 && (
                    <text className="slab-words" fontSize={LETTER_MM} x={part.x_mm + 30} y={y + LETTER_MM + 10}>
                      {whole(part.to_mm - part.from_mm)} × {whole(part.width_mm)}
                    </text>
                  )}
                </g>
              );
            })}
          </svg>
          <p className="small">
            {(slabs.noun === 'panel' ? ITEM.panelPlan : ITEM.slabPlan)(i + 1, slabs.slabs.length)}
            {mirrored && `, ${ITEM.slabMirrored}`}: {parts.map((part) => partWords(slabs, part.piece, part)).join('; ')}
            .
          </p>
        </li>
      ))}
    </ul>
  );
}

/** At which ends of a part another goes on: 0 and 1, as shares of its length. */
const seamEnds = ({ seams }: Slabs, { piece, from_mm, to_mm }: Part): readonly (0 | 1)[] => {
  const at = seams.filter((seam) => seam.piece === piece).map(({ at_mm }) => at_mm);
  return [...(at.includes(from_mm) ? [0 as const] : []), ...(at.includes(to_mm) ? [1 as const] : [])];
};

/** A sketch has no tenths of a millimeter. */
const whole = (mm: number): string => lengthText(Math.round(mm), unitNow());

/** "counter 2400 × 620 mm, to a seam". */
function partWords(slabs: Slabs, piece: string, part: Part): string {
  const [surface = ''] = piece.split(' ');
  const isSeamed = slabs.seams.some((seam) => seam.piece === piece);
  const size = `${whole(part.to_mm - part.from_mm)} × ${whole(part.width_mm)} ${unitNow()}`;
  return `${surfaceName(surface).toLowerCase()} ${size}${isSeamed ? ` (${ITEM.seam})` : ''}`;
}
