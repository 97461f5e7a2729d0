import { useEffect, useRef, useState } from 'react';
import { encodeSrgb } from '../../engine/color/display';
import { paintSwatch } from '../../engine/pattern/swatch';
import { SAMPLE_MM_PER_PX, type SwatchPaint } from './swatch-paint';
import './swatch.css';

export interface SwatchProps {
  readonly paint: SwatchPaint;
  /** CSS pixels. */
  readonly width: number;
  readonly height: number;
  readonly mmPerPx?: number;
  /** Pixels painted per CSS pixel where those of the screen are too few, as for paper. */
  readonly density?: number;
  readonly className?: string;
}

/** Most of the light a full gloss adds at the middle of the highlight: enough to tell gloss from flat, not to wash out. */
const HIGHLIGHT = 0.2;

/** A sample of a finish: its pattern at real scale in its colors, and its sheen as one neutral band of light. */
export function Swatch(props: SwatchProps) {
  const { paint, width, height, className } = props;
  if (paint.texture) return <PatternSwatch {...props} />;
  // One color needs no canvas, which is most of what a line of a long list costs.
  return (
    <span
      className={`swatch ${className ?? ''}`}
      style={{ width, height, background: plainBackground(paint, width) }}
    />
  );
}

function PatternSwatch({
  paint,
  width,
  height,
  mmPerPx = SAMPLE_MM_PER_PX,
  density: least = 0,
  className,
}: SwatchProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const density = Math.max(least, usePixelDensity());
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
function sheenOf(glossGu: number): { readonly strength: number; readonly spread: number } | null {
  if (glossGu < 3) return null;
  const gloss = Math.min(1, glossGu / 90);
  return { strength: HIGHLIGHT * gloss ** 0.7, spread: 0.32 - 0.2 * gloss };
}

/** Where the band is in the middle, as a part of the way up from the lower left corner. */
const BAND_AT = 0.6;

function drawSheen(context: CanvasRenderingContext2D, width: number, height: number, glossGu: number) {
  const sheen = sheenOf(glossGu);
  if (!sheen) return;
  const { strength, spread } = sheen;
  const band = context.createLinearGradient(0, height, width, height - width);
  band.addColorStop(0, 'rgb(255 255 255 / 0)');
  band.addColorStop(BAND_AT - spread, 'rgb(255 255 255 / 0)');
  band.addColorStop(BAND_AT, `rgb(255 255 255 / ${strength})`);
  band.addColorStop(Math.min(1, BAND_AT + spread), 'rgb(255 255 255 / 0)');
  context.fillStyle = band;
  context.fillRect(0, 0, width, height);
}

/** The same color and band as styles: both run at 45 degrees from the lower left corner, over the diagonal of a square of the width. */
function plainBackground({ colors, glossGu }: SwatchPaint, width: number): string {
  const color = `rgb(${colors[0]!.map((channel) => Math.round(255 * encodeSrgb(Math.min(1, Math.max(0, channel))))).join(' ')})`;
  const sheen = sheenOf(glossGu);
  if (!sheen) return color;
  const { strength, spread } = sheen;
  const at = (part: number) => `${part * width * Math.SQRT2}px`;
  const stops = [
    `rgb(255 255 255 / 0) ${at(BAND_AT - spread)}`,
    `rgb(255 255 255 / ${strength}) ${at(BAND_AT)}`,
    `rgb(255 255 255 / 0) ${at(Math.min(1, BAND_AT + spread))}`,
  ];
  return `linear-gradient(45deg, ${stops.join(', ')}), ${color}`;
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
