import { useId, useMemo } from 'react';
import { surfaceName } from '../../engine/judge/surface-words';
import { paintSwatch } from '../../engine/pattern/swatch';
import type { SurfaceId } from '../../engine/surface';
import type { Kitchen } from '../../model/kitchen';
import type { SwatchPaint } from '../swatch/swatch-paint';
import { PICTURE } from '../words/picture';
import { elevationOf } from './elevation-shapes';
import './elevation.css';

export interface FlatElevationProps {
  readonly kitchen: Kitchen;
  readonly paintOf: (surface: SurfaceId) => SwatchPaint;
  readonly outlined: readonly SurfaceId[];
  readonly onPick: (surface: SurfaceId) => void;
}

/** Edge of one painted tile of the drawing: pixels, and mm for each. */
const TILE_PX = 160;
const TILE_MM_PER_PX = 10;

/** A flat drawing of the kitchen in its finishes, for browsers that cannot draw the room. */
export function FlatElevation({ kitchen, paintOf, outlined, onPick }: FlatElevationProps) {
  const id = useId();
  const elevation = useMemo(() => elevationOf(kitchen), [kitchen]);
  const surfaces = [...new Set(elevation.shapes.map((shape) => shape.surface))];
  const edge = TILE_PX * TILE_MM_PER_PX;
  return (
    <svg
      className="elevation"
      viewBox={`0 0 ${elevation.width} ${elevation.height}`}
      role="img"
      aria-label={PICTURE.flatLabel}
    >
      <defs>
        {surfaces.map((surface) => (
          <Fill key={surface} id={`${id}-${surface}`} paint={paintOf(surface)} edge={edge} />
        ))}
      </defs>
      {elevation.shapes.map((shape) => (
        // biome-ignore lint/a11y/noStaticElementInteractions: the list of readings offers the same by keyboard
        <rect
          key={`${shape.surface}-${shape.x}-${shape.y}`}
          x={shape.x}
          y={shape.y}
          width={shape.width}
          height={shape.height}
          fill={`url(#${id}-${shape.surface})`}
          className={outlined.includes(shape.surface) ? 'is-outlined' : ''}
          onClick={() => onPick(shape.surface)}
        >
          <title>{surfaceName(shape.surface)}</title>
        </rect>
      ))}
    </svg>
  );
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
