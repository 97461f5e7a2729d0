import type { Coursing, Line } from '../../kitchen/drawings/types';
import type { SheetLayout } from './sheet-layout';
import { paperBox, paperOf } from './tag-demands';

/** Joints nearer to each other than this would be a gray, mm on paper. */
const LEAST_PITCH = 0.9;

/** What is drawn: shapes from the back to the front with their joints, then lines. */
export function ShapeLines({ layout }: { readonly layout: SheetLayout }) {
  const { drawing, ratio } = layout;
  const toPaper = paperOf(layout);
  const pathOf = (points: Line['points']): string =>
    points.map((point, i) => `${i === 0 ? 'M' : 'L'}${toPaper(point).map(round).join(' ')}`).join('');
  return (
    <>
      {drawing.shapes.map((shape, i) => {
        const box = paperBox(layout, shape);
        const laid = drawing.coursings.find(({ surface, field }) => surface === shape.surface && isSame(field, shape));
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: shapes have no names, and keep their order
          <g key={i}>
            <rect className={`draw-shape draw-${shape.surface === null ? 'bare' : shape.kind}`} {...box} />
            {laid && laid.pitch_mm / ratio >= LEAST_PITCH && laid.joints.length > 0 && (
              <path className="draw-joints" d={laid.joints.map((joint) => pathOf(joint)).join('')} />
            )}
          </g>
        );
      })}
      {drawing.lines.map(({ kind, look, points }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: lines have no names, and keep their order
        <path key={i} className={`draw-line draw-line-${kind} is-${look}`} d={pathOf(points)} />
      ))}
    </>
  );
}

const isSame = (a: Coursing['field'], b: Coursing['field']): boolean =>
  a.x === b.x && a.y === b.y && a.width === b.width && a.height === b.height;

const round = (mm: number): number => Math.round(mm * 1000) / 1000;
