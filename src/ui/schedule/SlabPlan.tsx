import type { ItemQuantity } from '../../kitchen/schedule/types';
import { lengthText } from '../../model/length-text';
import { surfaceName } from '../words/engine-words';
import { ITEM } from '../words/schedule';
import { unitNow } from '../words/spoken';

type Slabs = NonNullable<ItemQuantity['slabs']>;

/** Height of letters, mm of slab. */
const LETTER_MM = 90;

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
                  {h > LETTER_MM * 1.2 && (
                    <text className="slab-words" fontSize={LETTER_MM} x={part.x_mm + 30} y={y + LETTER_MM + 10}>
                      {lengthText(part.to_mm - part.from_mm, unitNow())} × {lengthText(part.width_mm, unitNow())}
                    </text>
                  )}
                </g>
              );
            })}
          </svg>
          <p className="small">
            {ITEM.slabPlan(i + 1, slabs.slabs.length)}
            {mirrored && `, ${ITEM.slabMirrored}`}: {parts.map((part) => partWords(slabs, part.piece, part)).join('; ')}
            .
          </p>
        </li>
      ))}
    </ul>
  );
}

/** "counter 2400 × 620 mm, to a seam". */
function partWords(slabs: Slabs, piece: string, part: Slabs['slabs'][number]['parts'][number]): string {
  const [surface = ''] = piece.split(' ');
  const isSeamed = slabs.seams.some((seam) => seam.piece === piece);
  const size = `${lengthText(part.to_mm - part.from_mm, unitNow())} × ${lengthText(part.width_mm, unitNow())} ${unitNow()}`;
  return `${surfaceName(surface).toLowerCase()} ${size}${isSeamed ? ` (${ITEM.seam})` : ''}`;
}
