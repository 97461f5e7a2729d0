import { lightCaption } from '../words/daylight';
import { VIEWS } from '../words/handover';
import { settingShortName } from '../words/picture';
import { retold } from '../words/spoken';
import type { PagePart } from './blocks';
import type { HandoverOption, HandoverSet, HandoverView } from './handover-set';
import { PictureBox } from './PictureBox';

/** An option by day and in the evening, one above the other. */
export const viewsPart = (set: HandoverSet, of: HandoverOption): PagePart => ({
  id: `views-${of.option.id}`,
  title: VIEWS.title(of.option.name),
  page: (
    <div className="views">
      <View set={set} of={of} view={of.day} />
      <View set={set} of={of} view={of.evening} />
      <p className="sheet-small">{VIEWS.note}</p>
    </div>
  ),
});

interface ViewProps {
  readonly set: HandoverSet;
  readonly of: HandoverOption;
  readonly view: HandoverView;
}

function View({ set, of, view }: ViewProps) {
  const { setting, picture, assessment } = view;
  const name = settingShortName(setting.name);
  const cct_k = assessment?.setting.cct_k ?? null;
  const { viewpoint } = set;
  const caption = [
    of.option.name,
    ...(setting.daylight ? [lightCaption(setting.daylight).join(' ')] : []),
    ...(cct_k === null ? [] : [VIEWS.cct(cct_k)]),
    ...(viewpoint ? [VIEWS.from(retold(viewpoint.name), viewpoint.isMoved)] : []),
  ];
  return (
    <figure className="view">
      <PictureBox picture={picture} alt={VIEWS.picture(of.option.name, name)} missing={VIEWS.missing} />
      <figcaption>
        <strong>{name}</strong> {caption.join(' · ')}
      </figcaption>
    </figure>
  );
}
