import './aim.css';

interface AimCrossProps {
  /** Shares of the picture's width and height. */
  readonly x: number;
  readonly y: number;
}

/** The reading mark over the picture: a cross in black and white, to be seen on any finish. */
export function AimCross({ x, y }: AimCrossProps) {
  return (
    <svg
      className="aim"
      style={{ left: `${100 * x}%`, top: `${100 * y}%` }}
      viewBox="-20 -20 40 40"
      width="40"
      height="40"
      aria-hidden="true"
    >
      <path className="aim-ground" d="M-18 0H-4M4 0H18M0 -18V-4M0 4V18" />
      <path className="aim-line" d="M-18 0H-4M4 0H18M0 -18V-4M0 4V18" />
    </svg>
  );
}
