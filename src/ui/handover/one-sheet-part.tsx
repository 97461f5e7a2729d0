import { useLayoutEffect, useRef, useState } from 'react';
import { cautionText } from '../../model/caution-words';
import { CAUTIONS } from '../words/cautions';
import { BRIEF, COVER, HANDOVER, ONE_SHEET, VIEWS } from '../words/handover';
import { leadTime } from '../words/lead-time';
import { settingShortName } from '../words/picture';
import { priceOrBand, priceWords } from '../words/price';
import { SCHEDULE } from '../words/schedule';
import { retold } from '../words/spoken';
import type { PagePart } from './blocks';
import { finishName } from './finish-words';
import { gravestFirst } from './gravest-first';
import type { HandoverSet, HandoverView } from './handover-set';
import { PaperSwatch } from './PaperSwatch';
import { PictureBox } from './PictureBox';
import { PrintedFinding } from './PrintedFinding';
import { revisionText } from './revision-text';
import type { Paper } from './Sheets';

/** How many findings and cautions stand beside each other: the more there is in the list, the fewer. */
const MOST = [
  { findings: 4, cautions: 5 },
  { findings: 3, cautions: 3 },
  { findings: 1, cautions: 1 },
] as const;

/** The option to sign on one page: pictures, what to ask for, what was found, what to heed. */
export const oneSheetPart = (set: HandoverSet, paper: Paper): PagePart => ({
  id: 'one',
  title: ONE_SHEET.title(set.signed.option.name),
  isUntitled: true,
  // What fits is tried anew with whatever else may fit.
  page: <OneSheet key={`${paper} ${set.signed.option.id} ${set.signed.day.assessment?.warnings.length}`} set={set} />,
});

function OneSheet({ set }: { readonly set: HandoverSet }) {
  const sheet = useRef<HTMLDivElement>(null);
  const [tight, setTight] = useState(0);
  useLayoutEffect(() => {
    const { scrollHeight, clientHeight } = sheet.current!;
    if (scrollHeight > clientHeight + 1) setTight((before) => Math.min(before + 1, MOST.length - 1));
  });
  const most = MOST[tight]!;
  const { project, signed, date, preparedFor, preparedBy } = set;
  const { option, items, day, evening, cautions } = signed;
  const assessment = day.assessment ?? evening.assessment;
  const warnings = gravestFirst(assessment?.warnings ?? []).filter(({ text }) => text !== assessment?.balance.sentence);
  const names = [
    [HANDOVER.preparedFor, preparedFor],
    [HANDOVER.preparedBy, preparedBy],
  ].flatMap(([what, name]) => (name!.trim() === '' ? [] : [`${what} ${name!.trim()}`]));
  return (
    <div ref={sheet} className="one-sheet" data-tight={tight}>
      <header>
        <h3 className="sheet-title">
          {project.name}: {option.name}
        </h3>
        <p className="sheet-small">
          {[`${COVER.revision}: ${revisionText(set)}`, HANDOVER.date(date), ...names].join(' · ')}
        </p>
      </header>
      <div className="one-pictures">
        <Small of={option.name} view={day} />
        <Small of={option.name} view={evening} />
      </div>
      <table className="sheet-table one-list" aria-label={ONE_SHEET.label}>
        <thead>
          <tr>
            <th scope="col">{BRIEF.id}</th>
            <th scope="col">{BRIEF.surface}</th>
            <th scope="col">{BRIEF.finish}</th>
            <th scope="col">{ONE_SHEET.code}</th>
            <th scope="col">{ONE_SHEET.price}</th>
            <th scope="col">{ONE_SHEET.lead}</th>
          </tr>
        </thead>
        <tbody>
          {items.map(({ id, place, finish, laying, state }) => (
            <tr key={id}>
              <th scope="row">{id}</th>
              <td>{place}</td>
              <td>
                <span className="one-finish">
                  <PaperSwatch paint={set.paintOf(finish, laying)} width_mm={7} height_mm={4} />
                  <span>{finishName(finish)}</span>
                </span>
              </td>
              {state === 'fixed' ? (
                <td colSpan={3}>{SCHEDULE.stays}</td>
              ) : (
                <>
                  <td>{finish.supply?.code ?? finish.id}</td>
                  <td>{priceOrBand(finish.supply)}</td>
                  <td>{weeksText(finish.supply?.lead_time_weeks)}</td>
                </>
              )}
            </tr>
          ))}
          {option.extras?.map(({ id, what, where, code, price, lead_time_weeks }) => (
            <tr key={id}>
              <th scope="row">{id}</th>
              <td>{where}</td>
              <td>{what}</td>
              <td>{code}</td>
              <td>{price && priceWords(price)}</td>
              <td>{weeksText(lead_time_weeks)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <div className="one-halves">
        {assessment && (
          <section>
            <h4>{ONE_SHEET.findings}</h4>
            <p>{retold(assessment.balance.sentence)}</p>
            {warnings.slice(0, most.findings).map((warning) => (
              <PrintedFinding key={warning.text} warning={warning} isShort={true} />
            ))}
            {warnings.length > most.findings && (
              <p className="sheet-small">{ONE_SHEET.more(warnings.length - most.findings)}</p>
            )}
          </section>
        )}
        <section>
          <h4>{ONE_SHEET.cautions}</h4>
          <ul className="one-cautions sheet-small">
            {[
              CAUTIONS.planning,
              CAUTIONS.screen,
              ...cautions.slice(0, most.cautions).map((one) => retold(cautionText(one))),
            ].map((text) => (
              <li key={text}>{text}</li>
            ))}
            {cautions.length > most.cautions && <li>{ONE_SHEET.more(cautions.length - most.cautions)}</li>}
          </ul>
        </section>
      </div>
    </div>
  );
}

const weeksText = (weeks: number | undefined): string | null => (weeks === undefined ? null : leadTime(weeks));

function Small({ of, view }: { readonly of: string; readonly view: HandoverView }) {
  const name = settingShortName(view.setting.name);
  return (
    <figure className="view">
      <PictureBox picture={view.picture} alt={VIEWS.picture(of, name)} missing={VIEWS.missing} />
      <figcaption className="sheet-small">{name}</figcaption>
    </figure>
  );
}
