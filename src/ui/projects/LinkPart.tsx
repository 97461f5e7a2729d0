import { CopyButton } from '../parts/CopyButton';
import { LINK } from '../words/link';
import './link.css';

/** A link that was made, and its QR code row by row (true: dark), where it is not too long for one. */
export interface MadeLink {
  readonly href: string;
  readonly code: readonly (readonly boolean[])[] | null;
}

interface LinkPartProps {
  readonly option: string;
  /** Null: none was made yet. */
  readonly made: MadeLink | null;
  /** The option is no longer as it is in the link. */
  readonly isOld: boolean;
  readonly onMake: () => void;
}

/** Makes a link to an option: to copy, with its length, and as a QR code. */
export function LinkPart({ option, made, isOld, onMake }: LinkPartProps) {
  return (
    <section className="project-part room-part" aria-label={LINK.title}>
      <h3>{LINK.title}</h3>
      <p className="small quiet">{LINK.what(option)}</p>
      <p className="small">{LINK.where}</p>
      {(!made || isOld) && (
        <div className="project-row">
          <button type="button" className="button button-outlined" onClick={onMake}>
            {made ? LINK.makeAnew : LINK.make}
          </button>
          {made && <span className="small">{LINK.changed}</span>}
        </div>
      )}
      {made && !isOld && (
        <>
          <CopyButton label={LINK.copy} copied={LINK.copied} text={() => made.href} />
          <p className="small quiet" role="status">
            {LINK.length(made.href.length)} {made.code ? '' : LINK.noCode}
          </p>
          {made.code && <Code rows={made.code} />}
        </>
      )}
    </section>
  );
}

/** Quiet zone of a QR code, modules (ISO/IEC 18004). */
const QUIET = 4;

function Code({ rows }: { readonly rows: readonly (readonly boolean[])[] }) {
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
