import { type ReactNode, useEffect, useRef } from 'react';
import { sentenceCase } from '../../engine/judge/surface-words';
import { isEmpty } from '../../model/empty-surface';
import type { LedgeSample } from '../ledge/ledge-samples';
import { labelWithoutCode } from '../words/finishes';
import { priceOrBand } from '../words/price';
import { SHOWROOM } from '../words/showroom';
import '../room/room-panel.css';
import './showroom.css';

export interface ShowroomListProps {
  readonly option: string;
  readonly samples: readonly LedgeSample[];
  /** By which one takes the option along. */
  readonly link: ReactNode;
  readonly onPrint: () => void;
  readonly onClose: () => void;
}

/** What lies where so far, with what one needs to ask for it; to print or to take along. */
export function ShowroomList({ option, samples, link, onPrint, onClose }: ShowroomListProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog ref={dialog} className="showroom-box showroom-list" aria-labelledby="showroom-list" onClose={onClose}>
      <div className="showroom-inside">
        <h2 id="showroom-list" className="showroom-title">
          {SHOWROOM.listOf(option)}
        </h2>
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
              </tr>
            </thead>
            <tbody>
              {samples.map(({ id, name, finish }) => (
                <tr key={id}>
                  <th scope="row">{name}</th>
                  <td>{sentenceCase(labelWithoutCode(finish.label, finish.id))}</td>
                  <td>{isEmpty({ finish: finish.id }) ? '' : (finish.supply?.code ?? finish.id)}</td>
                  <td>{priceOrBand(finish.supply) ?? SHOWROOM.none}</td>
                  <td>{finish.supply?.availability ?? SHOWROOM.none}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
        <p className="small">{SHOWROOM.caution}</p>
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
