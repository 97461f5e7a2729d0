import { ArrowLeft } from 'lucide-react';
import { useEffect, useRef, useState } from 'react';
import type { ShortlistRow } from '../../engine/judge/shortlist/types';
import type { WhyPoint } from '../../engine/judge/shortlist/why';
import type { SurfaceId } from '../../engine/surface';
import type { Finish } from '../../model/project';
import { Swatch } from '../swatch/Swatch';
import type { SwatchPaint } from '../swatch/swatch-paint';
import { labelWithoutCode } from '../words/finishes';
import { basisWords, SHORTLIST } from '../words/shortlist';
import { retold } from '../words/spoken';

interface WhyPartProps {
  readonly finish: Finish;
  /** What is said of it in the list; null while that is asked for. */
  readonly row: ShortlistRow | null;
  /** The list it is in: of another one there may be more to say. */
  readonly list: object;
  readonly paint: SwatchPaint;
  readonly readWhy: (finish: string) => Promise<readonly WhyPoint[] | null>;
  readonly onPoint: (surfaces: readonly SurfaceId[]) => void;
  /** It lies there now. */
  readonly isChosen: boolean;
  readonly isTried: boolean;
  /** Null where a finish can only be tried from here. */
  readonly onLay: (() => void) | null;
  readonly onTry: () => void;
  readonly onBack: () => void;
}

/** All there is to say for and against one finish, with its numbers. */
export function WhyPart(props: WhyPartProps) {
  const { finish, row, list, paint, isChosen, isTried, readWhy, onPoint, onLay, onTry, onBack } = props;
  const [points, setPoints] = useState<readonly WhyPoint[] | null>(null);
  const back = useRef<HTMLButtonElement>(null);
  useEffect(() => back.current?.focus({ preventScroll: true }), []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new list means new answers
  useEffect(() => {
    let isWanted = true;
    void readWhy(finish.id).then((found) => isWanted && setPoints(found ?? []));
    return () => {
      isWanted = false;
    };
  }, [finish.id, list]);
  const heading = labelWithoutCode(finish.label, finish.id);
  return (
    <section
      className="why-part"
      aria-label={SHORTLIST.whyOf(heading)}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.preventDefault();
        event.stopPropagation();
        onBack();
      }}
    >
      <div className="why-head">
        <button ref={back} type="button" className="button button-outlined" onClick={onBack}>
          <ArrowLeft className="icon" aria-hidden="true" /> {SHORTLIST.back}
        </button>
        <Swatch paint={paint} width={72} height={40} />
        <h3>
          {heading}, {finish.id}
        </h3>
        {isChosen ? (
          <p className="small">{SHORTLIST.lies}</p>
        ) : (
          <>
            <button type="button" className="button button-outlined" onClick={onTry}>
              {isTried ? SHORTLIST.drop : SHORTLIST.tryIt}
            </button>
            {onLay && (
              <button
                type="button"
                className="button button-outlined"
                onClick={() => {
                  onLay();
                  back.current?.focus();
                }}
              >
                {SHORTLIST.lay}
              </button>
            )}
          </>
        )}
      </div>
      {row && (
        <p className="why-sum">
          {'rank' in row ? `${row.rank}. ${retold(row.reasons.join(' '))}` : retold(row.reason)}{' '}
          <span className="quiet">({basisWords(row)})</span>
        </p>
      )}
      {points === null ? (
        <p className="small quiet">{SHORTLIST.asked}</p>
      ) : (
        <ul className="why-points">
          {points.map(({ kind, beside, setting, text, why }) => (
            <li
              key={`${kind}|${setting}|${text}`}
              onPointerEnter={() => onPoint(beside)}
              onPointerLeave={() => onPoint([])}
            >
              <p>{retold(text)}</p>
              <p className="small quiet">{retold(why)}</p>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
