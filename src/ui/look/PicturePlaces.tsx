import { type KeyboardEvent, type PointerEvent, useEffect, useRef } from 'react';
import { POINTS } from '../words/look';
import type { PicturePixels, PicturePoint } from './picture-points';

interface PicturePlacesProps {
  readonly picture: PicturePixels;
  readonly points: readonly PicturePoint[];
  readonly active: number | null;
  readonly onAdd: (x: number, y: number) => void;
  readonly onMove: (id: number, x: number, y: number) => void;
  readonly onActive: (id: number) => void;
  readonly onRemove: (id: number) => void;
}

/** Steps of the arrow keys, pixels of the picture; with Shift. */
const STEP_PX = 1;
const LARGE_STEP_PX = 20;

const MOVES: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The picture with its points, placed and moved by mouse, finger, pen and keys. */
export function PicturePlaces(props: PicturePlacesProps) {
  const { picture, points, active } = props;
  const canvas = useRef<HTMLCanvasElement>(null);
  const stage = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const { width, height, rgba } = picture;
    const pixels = new ImageData(new Uint8ClampedArray(rgba), width, height);
    canvas.current?.getContext('2d', { colorSpace: 'srgb' })?.putImageData(pixels, 0, 0);
  }, [picture]);
  // A new point takes the focus, so that keys move it at once.
  useEffect(() => {
    if (active !== null)
      stage.current?.querySelector<HTMLElement>(`[data-point="${active}"]`)?.focus({ preventScroll: true });
  }, [active]);
  const inside = (x: number, y: number): readonly [number, number] => [
    Math.min(picture.width - 1, Math.max(0, Math.round(x))),
    Math.min(picture.height - 1, Math.max(0, Math.round(y))),
  ];
  const placeOf = (event: PointerEvent) => {
    const box = stage.current!.getBoundingClientRect();
    return inside(
      ((event.clientX - box.left) / box.width) * picture.width,
      ((event.clientY - box.top) / box.height) * picture.height,
    );
  };
  const onKey = (event: KeyboardEvent, point: PicturePoint) => {
    if (event.key === 'Delete' || event.key === 'Backspace') {
      event.preventDefault();
      return props.onRemove(point.id);
    }
    const move = MOVES[event.key];
    if (!move) return;
    event.preventDefault();
    const step = event.shiftKey ? LARGE_STEP_PX : STEP_PX;
    props.onMove(point.id, ...inside(point.x + step * move[0], point.y + step * move[1]));
  };
  return (
    <div className="picture-stage">
      <div
        ref={stage}
        className="picture-sheet"
        style={{ aspectRatio: `${picture.width} / ${picture.height}` }}
        onPointerDown={(event) => {
          if (event.button !== 0 || event.target !== canvas.current) return;
          event.preventDefault();
          props.onAdd(...placeOf(event));
        }}
      >
        <canvas ref={canvas} width={picture.width} height={picture.height} role="img" aria-label={POINTS.picture} />
        {points.map((point, i) => (
          <button
            key={point.id}
            type="button"
            data-point={point.id}
            className="picture-point"
            aria-label={POINTS.point(i + 1, POINTS.surfaces[point.surface])}
            aria-pressed={point.id === active}
            style={{ left: `${(100 * point.x) / picture.width}%`, top: `${(100 * point.y) / picture.height}%` }}
            onFocus={() => props.onActive(point.id)}
            onKeyDown={(event) => onKey(event, point)}
            onPointerDown={(event) => {
              event.currentTarget.setPointerCapture(event.pointerId);
              props.onActive(point.id);
            }}
            onPointerMove={(event) => {
              if (event.currentTarget.hasPointerCapture(event.pointerId)) props.onMove(point.id, ...placeOf(event));
            }}
          >
            {i + 1}
          </button>
        ))}
      </div>
    </div>
  );
}
