import { Trash2 } from 'lucide-react';
import { Menu } from '../drawer/Menu';
import { POINTS } from '../words/look';
import { reread } from '../words/spoken';
import type { PicturePoint, PointColor, PointSurface } from './picture-points';

interface PointListProps {
  readonly points: readonly PicturePoint[];
  readonly colors: ReadonlyMap<number, PointColor>;
  readonly active: number | null;
  readonly onChange: (id: number, to: Partial<PicturePoint>) => void;
  readonly onActive: (id: number) => void;
  readonly onRemove: (id: number) => void;
}

const SURFACES = reread(() => Object.entries(POINTS.surfaces) as [PointSurface, string][]);
const PARTS = reread(() => Object.entries(POINTS.parts) as [PicturePoint['part'], string][]);

/** The points with what each stands on, its color, and how even it is around it. */
export function PointList({ points, colors, active, onChange, onActive, onRemove }: PointListProps) {
  if (points.length === 0) return <p className="small quiet">{POINTS.none}</p>;
  return (
    <ol className="point-list">
      {points.map((point, i) => {
        const color = colors.get(point.id)!;
        return (
          <li
            key={point.id}
            className={point.id === active ? 'point is-active' : 'point'}
            onFocus={() => onActive(point.id)}
          >
            <span className="point-number">{i + 1}</span>
            <span className="point-swatch" style={{ background: color.hex }} />
            <Menu
              label={POINTS.surface}
              value={point.surface}
              choices={SURFACES}
              onChoose={(surface) => onChange(point.id, { surface })}
            />
            <Menu
              label={POINTS.part}
              value={point.part}
              choices={PARTS}
              onChoose={(part) => onChange(point.id, { part })}
            />
            <button
              type="button"
              className="button"
              aria-label={POINTS.remove(i + 1)}
              title={POINTS.remove(i + 1)}
              onClick={() => onRemove(point.id)}
            >
              <Trash2 className="icon" aria-hidden="true" />
            </button>
            <p className="point-said small quiet">
              {color.isClipped ? POINTS.clipped : POINTS.spread(color.spreadDe00)}
            </p>
          </li>
        );
      })}
    </ol>
  );
}
