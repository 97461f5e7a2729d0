import { useEffect, useRef, useState } from 'react';
import { paintSwatch } from '../../engine/pattern/swatch';
import { SAMPLE_MM_PER_PX, type SwatchPaint } from './swatch-paint';
import './swatch.css';

export interface SwatchProps {
  readonly paint: SwatchPaint;
  /** CSS pixels. */
  readonly width: number;
  readonly height: number;
  readonly mmPerPx?: number;
  readonly className?: string;
}

/** Most of the light a full gloss adds at the middle of the highlight: enough to tell gloss from flat, not to wash out. */
const HIGHLIGHT = 0.2;

/** A sample of a finish: its pattern at real scale in its colors, and its sheen as one neutral band of light. */
export function Swatch({ paint, width, height, mmPerPx = SAMPLE_MM_PER_PX, className }: SwatchProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const density = usePixelDensity();
  useEffect(() => {
    const context = canvas.current?.getContext('2d');
    if (!context) return;
    const [w, h] = [Math.round(width * density), Math.round(height * density)];
    const bytes = paintSwatch(paint.texture, paint.colors, w, h, mmPerPx / density);
    context.putImageData(new ImageData(bytes, w, h), 0, 0);
    drawSheen(context, w, h, paint.glossGu);
  }, [paint, width, height, mmPerPx, density]);
  return (
    <canvas
      ref={canvas}
      className={`swatch ${className ?? ''}`}
      width={Math.round(width * density)}
      height={Math.round(height * density)}
      style={{ width, height }}
    />
  );
}

/** The glossier, the narrower and brighter the band; under 3 GU there is none. */
function drawSheen(context: CanvasRenderingContext2D, width: number, height: number, glossGu: number) {
  if (glossGu < 3) return;
  const gloss = Math.min(1, glossGu / 90);
  const spread = 0.32 - 0.2 * gloss;
  const band = context.createLinearGradient(0, height, width, height - width);
  const strength = HIGHLIGHT * gloss ** 0.7;
  band.addColorStop(0, 'rgb(255 255 255 / 0)');
  band.addColorStop(0.6 - spread, 'rgb(255 255 255 / 0)');
  band.addColorStop(0.6, `rgb(255 255 255 / ${strength})`);
  band.addColorStop(Math.min(1, 0.6 + spread), 'rgb(255 255 255 / 0)');
  context.fillStyle = band;
  context.fillRect(0, 0, width, height);
}

/** Device pixels per CSS pixel, at most 3; follows the window from screen to screen. */
function usePixelDensity(): number {
  const [density, setDensity] = useState(() => Math.min(3, window.devicePixelRatio || 1));
  useEffect(() => {
    const query = window.matchMedia(`(resolution: ${window.devicePixelRatio}dppx)`);
    const follow = () => setDensity(Math.min(3, window.devicePixelRatio || 1));
    query.addEventListener('change', follow);
    return () => query.removeEventListener('change', follow);
  }, []);
  return density;
}
