import { useId, useMemo, useState } from 'react';
import { paintSwatch } from '../../engine/pattern/swatch';
import type { SurfaceId } from '../../engine/surface';
import type { Kitchen, Wall } from '../../model/kitchen';
import { Choices } from '../parts/Choices';
import type { SwatchPaint } from '../swatch/swatch-paint';
import { DAYLIGHT } from '../words/daylight';
import { surfaceName } from '../words/engine-words';
import { KITCHEN } from '../words/kitchen';
import { PICTURE } from '../words/picture';
import { reread } from '../words/spoken';
import { flatDrawing } from './flat-shapes';
import './elevation.css';

export interface FlatElevationProps {
  readonly kitchen: Kitchen;
  /** All surfaces of this kitchen that carry a finish. */
  readonly surfaces: readonly SurfaceId[];
  readonly paintOf: (surface: SurfaceId) => SwatchPaint;
  readonly outlined: readonly SurfaceId[];
  readonly onPick: (surface: SurfaceId) => void;
}

/** Edge of one painted tile of the drawing: pixels, and mm for each. */
const TILE_PX = 160;
const TILE_MM_PER_PX = 10;

const WALLS = reread(() =>
  (['left', 'back', 'right', 'front'] as const).map((id) => ({ id, name: KITCHEN.drawings[id] })),
);

/** A wall of the kitchen drawn flat in its finishes, for browsers that cannot draw the room. */
export function FlatElevation({ kitchen, surfaces, paintOf, outlined, onPick }: FlatElevationProps) {
  const id = useId();
  const [wall, setWall] = useState<Wall>('back');
  const drawing = useMemo(() => flatDrawing(kitchen, wall), [kitchen, wall]);
  const shown = [...new Set(drawing.shapes.flatMap(({ surface }) => surface ?? []))];
  const others = surfaces.filter((surface) => !shown.includes(surface));
  const edge = TILE_PX * TILE_MM_PER_PX;
  return (
    <div className="flat">
      <Choices label={PICTURE.flatWall} choices={WALLS} chosen={wall} onChoose={setWall} />
      <svg
        className="elevation"
        viewBox={`0 0 ${drawing.width} ${drawing.height}`}
        role="img"
        aria-label={PICTURE.flatLabel(DAYLIGHT.walls[wall].toLowerCase())}
      >
        <defs>
          {shown.map((surface) => (
            <Fill key={surface} id={`${id}-${surface}`} paint={paintOf(surface)} edge={edge} />
          ))}
        </defs>
        {drawing.shapes.map(({ surface, ...box }, i) =>
          surface === null ? (
            // biome-ignore lint/suspicious/noArrayIndexKey: shapes have no names, and keep their order
            <rect key={i} className="elevation-glass" {...box} />
          ) : (
            // biome-ignore lint/a11y/noStaticElementInteractions: the list of readings offers the same by keyboard
            <rect
              // biome-ignore lint/suspicious/noArrayIndexKey: shapes have no names, and keep their order
              key={i}
              {...box}
              fill={`url(#${id}-${surface})`}
              className={outlined.includes(surface) ? 'is-outlined' : ''}
              onClick={() => onPick(surface)}
            >
              <title>{surfaceName(surface)}</title>
            </rect>
          ),
        )}
      </svg>
      {others.length > 0 && (
        <ul className="flat-others" aria-label={PICTURE.flatOthers}>
          {others.map((surface) => (
            <li key={surface}>
              <button
                type="button"
                className={`flat-other ${outlined.includes(surface) ? 'is-outlined' : ''}`}
                onClick={() => onPick(surface)}
              >
                <FlatTile paint={paintOf(surface)} />
                {surfaceName(surface)}
              </button>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

function FlatTile({ paint }: { readonly paint: SwatchPaint }) {
  const image = useMemo(() => tileImage(paint), [paint]);
  return <span className="flat-tile" style={{ backgroundImage: `url(${image})` }} aria-hidden="true" />;
}

function Fill({ id, paint, edge }: { readonly id: string; readonly paint: SwatchPaint; readonly edge: number }) {
  const image = useMemo(() => tileImage(paint), [paint]);
  return (
    <pattern id={id} width={edge} height={edge} patternUnits="userSpaceOnUse">
      <image href={image} width={edge} height={edge} preserveAspectRatio="none" />
    </pattern>
  );
}

function tileImage(paint: SwatchPaint): string {
  const canvas = document.createElement('canvas');
  canvas.width = TILE_PX;
  canvas.height = TILE_PX;
  const bytes = paintSwatch(paint.texture, paint.colors, TILE_PX, TILE_PX, TILE_MM_PER_PX);
  canvas.getContext('2d')?.putImageData(new ImageData(bytes, TILE_PX, TILE_PX), 0, 0);
  return canvas.toDataURL();
}
