import { CAUTIONS } from '../words/cautions';
import { COVER, HANDOVER, VIEWS } from '../words/handover';
import { settingShortName } from '../words/picture';
import type { HandoverSet } from './handover-set';
import { LedgeStrip } from './LedgeStrip';
import { PictureBox } from './PictureBox';
import { revisionText } from './revision-text';

interface CoverPageProps {
  readonly set: HandoverSet;
  /** Titles of the parts that follow. */
  readonly contents: readonly string[];
}

/** The first page: what it is, which option in which revision, what it looks like, for whom and by whom. */
export function CoverPage({ set, contents }: CoverPageProps) {
  const { project, signed, date, options, preparedFor, preparedBy } = set;
  const setting = settingShortName(signed.day.setting.name);
  const others = options.filter((one) => one !== signed).map(({ option }) => option.name);
  const facts = [
    [COVER.toSign, signed.option.name],
    ...(others.length > 0 ? [[COVER.others, others.join(', ')]] : []),
    [COVER.revision, revisionText(set)],
    [COVER.date, HANDOVER.date(date)],
    [HANDOVER.preparedFor, preparedFor.trim() || COVER.blank],
    [HANDOVER.preparedBy, preparedBy.trim() || COVER.blank],
  ];
  return (
    <div className="cover">
      <header className="cover-head">
        <p className="sheet-small">{COVER.what}</p>
        <h3 className="cover-title">{project.name}</h3>
      </header>
      <div className="cover-picture">
        <PictureBox
          picture={signed.day.picture}
          alt={VIEWS.picture(signed.option.name, setting)}
          missing={VIEWS.missing}
        />
      </div>
      <LedgeStrip set={set} of={signed} />
      <div className="cover-foot">
        <dl className="cover-facts">
          {facts.map(([what, said]) => (
            <div key={what}>
              <dt>{what}</dt>
              <dd>{said}</dd>
            </div>
          ))}
        </dl>
        <div>
          <h4 className="sheet-small">{COVER.contents}</h4>
          <ol className="cover-contents">
            {contents.map((title) => (
              <li key={title}>{title}</li>
            ))}
          </ol>
        </div>
      </div>
      <p className="cover-standing">{`${CAUTIONS.planning} ${CAUTIONS.screen}`}</p>
    </div>
  );
}
