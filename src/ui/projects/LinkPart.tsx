import { CopyButton } from '../parts/CopyButton';
import { LINK } from '../words/link';
import { LinkCode } from './LinkCode';
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
          {made.code && <LinkCode rows={made.code} />}
        </>
      )}
    </section>
  );
}
