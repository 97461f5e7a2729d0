import { LinkCode } from '../projects/LinkCode';
import type { MadeLink } from '../projects/LinkPart';
import { LINK } from '../words/link';
import { SHOWROOM } from '../words/showroom';

/** The option as a code that a telephone reads: with it, the kitchen opens at home as it is here. */
export function TakeHome({ made }: { readonly made: MadeLink }) {
  return (
    <section className="take-home" aria-labelledby="take-home">
      <div>
        <h3 id="take-home">{SHOWROOM.takeHome}</h3>
        <p className="small">{made.code ? SHOWROOM.scan : LINK.noCode}</p>
        <p className="small quiet">{SHOWROOM.scanWhat}</p>
      </div>
      {made.code && <LinkCode rows={made.code} />}
    </section>
  );
}
