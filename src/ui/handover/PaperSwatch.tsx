import { Swatch } from '../swatch/Swatch';
import type { SwatchPaint } from '../swatch/swatch-paint';

/** By the definition of the CSS inch, 96 px. */
const PX_PER_MM = 96 / 25.4;
/** A printer shows finer detail than a screen: 240 pixels an inch. */
const PAPER_DENSITY = 2.5;

interface PaperSwatchProps {
  readonly paint: SwatchPaint;
  /** On paper. */
  readonly width_mm: number;
  readonly height_mm: number;
  readonly className?: string;
}

/** A sample as it prints, in its own colors also where backgrounds are left out. */
export function PaperSwatch({ paint, width_mm, height_mm, className = '' }: PaperSwatchProps) {
  return (
    <Swatch
      paint={paint}
      width={width_mm * PX_PER_MM}
      height={height_mm * PX_PER_MM}
      density={PAPER_DENSITY}
      className={`paper-swatch ${className}`}
    />
  );
}
