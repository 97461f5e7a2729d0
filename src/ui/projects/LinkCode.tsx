import { LINK } from '../words/link';
import './link.css';

/** Quiet zone of a QR code, modules (ISO/IEC 18004). */
const QUIET = 4;

/** A QR code, row by row (true: dark). */
export function LinkCode({ rows }: { readonly rows: readonly (readonly boolean[])[] }) {
  const size = rows.length + 2 * QUIET;
  const d = rows
    .flatMap((row, y) => row.map((isDark, x) => (isDark ? `M${x + QUIET} ${y + QUIET}h1v1h-1z` : '')))
    .join('');
  return (
    <svg className="link-code" role="img" aria-label={LINK.code} viewBox={`0 0 ${size} ${size}`}>
      <path className="link-code-light" d={`M0 0h${size}v${size}h-${size}z`} />
      <path className="link-code-dark" d={d} />
    </svg>
  );
}
