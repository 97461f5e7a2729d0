import type { Layout } from '../../engine/pattern/types';

/** Level and upright pieces of length l and width w, as many as cover the drawing. */
function herringbone(l: number, w: number): string {
  const path: string[] = [];
  for (let m = -3; m <= 3; m++) {
    for (let k = -6; k <= 10; k++) {
      const [x, y] = [k * w + m * l, k * w - m * l];
      path.push(`M${x} ${y}h${l}v${w}h${-l}z`, `M${x + l} ${y + w - l}h${w}v${l}h${-w}z`);
    }
  }
  return path.join('');
}

/** Joints of each layout on 28 x 20, as a small drawing. */
const JOINTS: { readonly [L in Layout]: string } = {
  plain: '',
  planks: 'M0 5h28M0 10h28M0 15h28M18 0v5M8 5v5M22 10v5M12 15v5',
  stack: 'M0 7h28M0 13.5h28M9.5 0v20M19 0v20',
  'stack-upright': 'M0 10h28M5.5 0v20M11 0v20M16.5 0v20M22 0v20',
  'running-bond': 'M0 7h28M0 13.5h28M14 0v7M7 7v6.5M21 7v6.5M14 13.5v6.5',
  'third-offset': 'M0 7h28M0 13.5h28M6 0v7M20 0v7M10.7 7v6.5M24.7 7v6.5M1.4 13.5v6.5M15.4 13.5v6.5',
  herringbone: herringbone(10, 5),
  hexagon:
    'M7 1l6 3.5v7L7 15l-6-3.5v-7zM19 1l6 3.5v7L19 15l-6-3.5v-7zM13 11.5l6 3.5v5M13 11.5L7 15v5M7 15l-6-3.5M19 15l6-3.5',
};

/** A pictogram of a layout; its name stands beside it. */
export function LayoutPicture({ layout }: { readonly layout: Layout }) {
  return (
    <svg className="layout-picture" width="28" height="20" viewBox="0 0 28 20" aria-hidden="true">
      <rect x="0.5" y="0.5" width="27" height="19" fill="none" stroke="currentColor" />
      <path d={JOINTS[layout]} fill="none" stroke="currentColor" strokeWidth="1" />
    </svg>
  );
}
