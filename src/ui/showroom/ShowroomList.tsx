import { type ReactNode, useEffect, useRef } from 'react';
import { sentenceCase } from '../../engine/judge/surface-words';
import { isEmpty } from '../../model/empty-surface';
import type { LedgeSample } from '../ledge/ledge-samples';
import { Swatch } from '../swatch/Swatch';
import type { SwatchPaint } from '../swatch/swatch-paint';
import { labelWithoutCode } from '../words/finishes';
import { leadTime } from '../words/lead-time';
import { priceOrBand } from '../words/price';
import { SHOWROOM } from '../words/showroom';
import { retold } from '../words/spoken';
import './showroom.css';
import './showroom-list.css';

export interface ShowroomListProps {
  readonly showroom: string;
  readonly option: string;
  /** The day it is made. */
  readonly today: Date;
  /** Address of a picture of the room as it is on screen; null where there is none. */
  readonly picture: string | null;
  readonly samples: readonly LedgeSample[];
  readonly paintOf: (sample: LedgeSample) => SwatchPaint;
  /** What does not agree as it is now, in sentences. */
  readonly warnings: readonly string[];
  /** What to heed before one orders, in sentences. */
  readonly cautions: readonly string[];
  /** By which one takes the option along. */
  readonly link: ReactNode;
  readonly onPrint: () => void;
  readonly onClose: () => void;
}

/** What a customer chose, with what one needs to ask for it and what to heed; to print or to take along. */
export function ShowroomList(props: ShowroomListProps) {
  const { showroom, option, today, picture, samples, paintOf, warnings, cautions, link, onPrint, onClose } = props;
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    dialog.current?.showModal();
    // Else the table would get the focus, and be brought into view without what stands above it.
    title.current?.focus();
  }, []);
  return (
    <dialog ref={dialog} className="showroom-box showroom-list" aria-labelledby="showroom-list" onClose={onClose}>
      <div className="showroom-inside">
        <div className="list-head">
          <h2 id="showroom-list" className="showroom-title" ref={title} tabIndex={-1}>
            {SHOWROOM.listOf(option)}
          </h2>
          <p className="small quiet">{SHOWROOM.listWhere(showroom, today)}</p>
        </div>
        {picture !== null && <img className="list-picture" src={picture} alt={SHOWROOM.listPicture(option)} />}
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls has to be reached by keys */}
        <section className="showroom-table" aria-labelledby="showroom-list" tabIndex={0}>
          <table>
            <thead>
              <tr className="small">
                <th scope="col">{SHOWROOM.surface}</th>
                <th scope="col">{SHOWROOM.finish}</th>
                <th scope="col">{SHOWROOM.code}</th>
                <th scope="col">{SHOWROOM.price}</th>
                <th scope="col">{SHOWROOM.availability}</th>
                <th scope="col">{SHOWROOM.lead}</th>
              </tr>
            </thead>
            <tbody>
              {samples.map((sample) => (
                <Row key={sample.id} sample={sample} paint={paintOf(sample)} />
              ))}
            </tbody>
          </table>
        </section>
        <Sentences title={SHOWROOM.listWarnings} texts={warnings} />
        <Sentences title={SHOWROOM.listCautions} texts={[SHOWROOM.caution, ...cautions]} />
        {link}
        <div className="showroom-acts">
          <button type="button" className="button button-strong" onClick={onPrint}>
            {SHOWROOM.print}
          </button>
          <button type="button" className="button button-outlined" onClick={() => dialog.current?.close()}>
            {SHOWROOM.close}
          </button>
        </div>
      </div>
    </dialog>
  );
}

function Row({ sample, paint }: { readonly sample: LedgeSample; readonly paint: SwatchPaint }) {
  const { name, finish } = sample;
  const { supply } = finish;
  const isNothing = isEmpty({ finish: finish.id });
  const said = (text: string | null | undefined) => text ?? <span className="quiet">{SHOWROOM.none}</span>;
  return (
    <tr>
      <th scope="row">{name}</th>
      <td>
        <span className="list-finish">
          {!isNothing && <Swatch paint={paint} width={40} height={24} className="list-swatch" />}
          {sentenceCase(labelWithoutCode(finish.label, finish.id))}
        </span>
      </td>
      <td>{isNothing ? '' : (supply?.code ?? finish.id)}</td>
      <td>{said(priceOrBand(supply))}</td>
      <td>{said(supply?.availability)}</td>
      <td>{said(supply?.lead_time_weeks === undefined ? null : leadTime(supply.lead_time_weeks))}</td>
    </tr>
  );
}

function Sentences({ title, texts }: { readonly title: string; readonly texts: readonly string[] }) {
  if (texts.length === 0) return null;
  return (
    <section className="list-sentences">
      <h3>{title}</h3>
      <ul className="small">
        {texts.map((text) => (
          <li key={text}>{retold(text)}</li>
        ))}
      </ul>
    </section>
  );
}
