import type { Region } from '../../model/kitchen';
import { kitchenBounds } from '../../model/kitchen-bounds';
import { type LengthUnit, unitOfRegion } from '../../model/length-text';
import { usualRoom } from '../../model/new-kitchen';
import type { LayoutId } from '../../model/new-kitchen/layout-drafts';
import type { Answers } from '../../model/new-project';
import { Menu } from '../drawer/Menu';
import { Choices } from '../parts/Choices';
import { ROOM_LENGTHS } from '../room/kitchen-lengths';
import { LayoutChoice } from '../room/LayoutChoice';
import { LengthField } from '../room/LengthField';
import { YearField } from '../room/YearField';
import { KITCHEN } from '../words/kitchen';
import { QUESTIONS } from '../words/questions';
import { reread } from '../words/spoken';
import type { QuestionProps } from './question-props';

interface RoomQuestionProps extends QuestionProps {
  /** Region of the present project: what is usual until another one is chosen. */
  readonly region: Region;
  /** Null: nobody chose one, and it is as is usual in the region. */
  readonly unit: LengthUnit | null;
  readonly onUnit: (unit: LengthUnit) => void;
}

type RoomAnswer = NonNullable<Answers['room']>;

const REGIONS = reread(() =>
  (Object.keys(KITCHEN.regions) as Region[]).map((id) => [id, KITCHEN.regions[id]] as const),
);
const UNITS = reread(() => (['mm', 'in'] as const).map((id) => ({ id, name: KITCHEN.units[id] })));
const LENGTHS = (['width', 'depth', 'height'] as const).map((key, i) => [key, ROOM_LENGTHS[i]!] as const);

/** Layout, region and the room from wall to wall. */
export function RoomQuestion(props: RoomQuestionProps) {
  const { answers, onAnswers, region, onUnit } = props;
  const room = answers.room ?? usualAnswer('l-island', region);
  const unit = props.unit ?? unitOfRegion(room.region);
  const put = (next: RoomAnswer) => onAnswers({ ...answers, room: next });
  /** Lengths that nobody gave follow layout and region. */
  const choose = (layout: LayoutId, next: Region) => {
    const before = usualAnswer(room.layout, room.region);
    const isUsual = LENGTHS.every(([key]) => room[key] === before[key]);
    put(isUsual ? usualAnswer(layout, next) : { ...room, layout, region: next });
  };
  return (
    <>
      <p className="small quiet">{QUESTIONS.roomHint}</p>
      <LayoutChoice chosen={room.layout} onChoose={(layout) => choose(layout, room.region)} />
      <div className="room-row">
        <Menu
          label={KITCHEN.region}
          value={room.region}
          choices={REGIONS}
          onChoose={(next) => choose(room.layout, next)}
        />
        <div className="field">
          <span className="label">{KITCHEN.unit}</span>
          <Choices label={KITCHEN.unit} choices={UNITS} chosen={unit} onChoose={onUnit} />
        </div>
      </div>
      <div className="room-fields">
        {LENGTHS.map(([key, { path, label }]) => {
          const [least, most] = kitchenBounds(path)!;
          return (
            <LengthField
              key={path}
              label={label}
              path={path}
              unit={unit}
              value={room[key]}
              allowed={[least, most]}
              onValue={(mm) => {
                put({ ...room, [key]: mm });
                return [];
              }}
            />
          );
        })}
      </div>
      <YearField
        year={answers.year_built ?? null}
        onYear={(year) => {
          const { year_built: _, ...rest } = answers;
          onAnswers(year === null ? rest : { ...rest, year_built: year });
          return [];
        }}
      />
    </>
  );
}

const usualAnswer = (layout: LayoutId, region: Region): RoomAnswer => ({
  layout,
  region,
  ...usualRoom(layout, region),
});
