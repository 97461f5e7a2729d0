import { useEffect, useRef } from 'react';
import { POINTS } from '../words/look';
import { type PicturePixels, type PicturePoint, RADIUS_PX } from './picture-points';

/** Pixels of the picture across the loupe, and how large each is shown. */
const ACROSS = 25;
const ZOOM = 5;

/** What lies around a point, each pixel large, with the disc that is averaged. */
export function Loupe({ picture, point }: { readonly picture: PicturePixels; readonly point: PicturePoint | null }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const context = canvas.current?.getContext('2d');
    if (!context) return;
    context.clearRect(0, 0, ACROSS * ZOOM, ACROSS * ZOOM);
    if (!point) return;
    const half = (ACROSS - 1) / 2;
    for (let v = 0; v < ACROSS; v++) {
      for (let u = 0; u < ACROSS; u++) {
        const [x, y] = [point.x + u - half, point.y + v - half];
        if (x < 0 || y < 0 || x >= picture.width || y >= picture.height) continue;
        const at = 4 * (y * picture.width + x);
        context.fillStyle = `rgb(${picture.rgba[at]} ${picture.rgba[at + 1]} ${picture.rgba[at + 2]})`;
        context.fillRect(u * ZOOM, v * ZOOM, ZOOM, ZOOM);
      }
    }
    const center = (ACROSS * ZOOM) / 2;
    for (const [color, width] of [
      ['#fff', 3],
      ['#000', 1],
    ] as const) {
      context.strokeStyle = color;
      context.lineWidth = width;
      context.beginPath();
      context.arc(center, center, (RADIUS_PX + 0.5) * ZOOM, 0, 2 * Math.PI);
      context.stroke();
    }
  }, [picture, point]);
  return (
    <canvas
      ref={canvas}
      className="picture-loupe"
      width={ACROSS * ZOOM}
      height={ACROSS * ZOOM}
      role="img"
      aria-label={POINTS.loupe}
    />
  );
}
