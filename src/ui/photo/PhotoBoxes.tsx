import { type CSSProperties, type KeyboardEvent, type PointerEvent, useEffect, useRef } from 'react';
import type { PicturePoint } from '../../engine/photo/types';
import { PHOTO } from '../words/photo';
import { reread } from '../words/spoken';
import { type BoxId, middleOf, movedBox, type PhotoBox } from './boxes';
import type { OpenedPicture } from './open-picture';

interface PhotoBoxesProps {
  readonly picture: OpenedPicture;
  readonly boxes: readonly PhotoBox[];
  readonly zoom: number;
  readonly onBox: (box: PhotoBox) => void;
}

const NAMES: { readonly [B in BoxId]: string } = reread(() => ({
  sample: PHOTO.sample,
  card: PHOTO.card,
  'card-second': PHOTO.cardSecond,
}));

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowRight: [1, 0],
  ArrowLeft: [-1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};
/** A step of the arrow keys, and one with Shift, as a part of the picture's longer side. */
const STEP = 1 / 200;
const LARGE_STEP = 1 / 20;

/** The picture with a box over each card and the sample. Corners and middles are taken hold of by hand or by arrow keys. */
export function PhotoBoxes({ picture, boxes, zoom, onBox }: PhotoBoxesProps) {
  const { width, height, shown } = picture;
  const canvas = useRef<HTMLCanvasElement>(null);
  const field = useRef<HTMLDivElement>(null);
  const held = useRef<PicturePoint | null>(null);
  useEffect(() => {
    canvas.current?.getContext('2d')?.drawImage(shown, 0, 0);
  }, [shown]);

  const pointOf = (event: PointerEvent): PicturePoint => {
    const { left, top, width: w, height: h } = field.current!.getBoundingClientRect();
    return { x: ((event.clientX - left) / w) * width, y: ((event.clientY - top) / h) * height };
  };
  const move = (box: PhotoBox, corner: number | null, to: PicturePoint) =>
    onBox({ ...box, quad: movedBox(box.quad, corner, to, picture) });
  const onKeyDown = (event: KeyboardEvent, box: PhotoBox, corner: number | null) => {
    const arrow = ARROWS[event.key];
    if (!arrow || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    const step = Math.max(1, (Math.max(width, height) * (event.shiftKey ? LARGE_STEP : STEP)) / zoom);
    const { x, y } = corner === null ? middleOf(box.quad) : box.quad[corner]!;
    move(box, corner, { x: x + step * arrow[0], y: y + step * arrow[1] });
  };

  const handle = (box: PhotoBox, corner: number | null) => {
    const at = corner === null ? middleOf(box.quad) : box.quad[corner]!;
    const name = NAMES[box.id];
    const label = corner === null ? PHOTO.whole(name) : PHOTO.corner(name, corner + 1);
    return (
      <button
        key={corner ?? 'all'}
        type="button"
        className={`photo-handle ${corner === null ? 'photo-handle-all' : ''}`}
        style={{ left: `${(100 * at.x) / width}%`, top: `${(100 * at.y) / height}%` }}
        aria-label={`${label}, ${PHOTO.place(at.x / width, at.y / height)}`}
        aria-roledescription={PHOTO.movable}
        data-handle={`${box.id} ${corner ?? 'all'}`}
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          const from = pointOf(event);
          held.current = { x: from.x - at.x, y: from.y - at.y };
        }}
        onPointerMove={(event) => {
          if (!held.current) return;
          const to = pointOf(event);
          move(box, corner, { x: to.x - held.current.x, y: to.y - held.current.y });
        }}
        onPointerUp={() => {
          held.current = null;
        }}
        onPointerCancel={() => {
          held.current = null;
        }}
        onKeyDown={(event) => onKeyDown(event, box, corner)}
      >
        {corner === null && <span className="photo-handle-name">{name}</span>}
      </button>
    );
  };

  return (
    <section className="photo-view" aria-label={PHOTO.picture}>
      <div
        ref={field}
        className="photo-field"
        style={{ '--photo-aspect': width / height, '--photo-zoom': zoom } as CSSProperties}
      >
        <canvas ref={canvas} className="photo-canvas" width={shown.width} height={shown.height} />
        <svg className="photo-lines" viewBox={`0 0 ${width} ${height}`} preserveAspectRatio="none" aria-hidden="true">
          {boxes.map(({ id, quad }) => {
            const points = quad.map(({ x, y }) => `${x},${y}`).join(' ');
            return (
              <g key={id}>
                <polygon className="photo-line-under" points={points} />
                <polygon className={`photo-line photo-line-${id === 'sample' ? 'sample' : 'card'}`} points={points} />
              </g>
            );
          })}
        </svg>
        {boxes.map((box) => (
          <div key={box.id} className="photo-handles">
            {[null, 0, 1, 2, 3].map((corner) => handle(box, corner))}
          </div>
        ))}
      </div>
    </section>
  );
}
