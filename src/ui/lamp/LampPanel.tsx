import { type ReactNode, useId } from 'react';
import type { LampGroup } from '../../model/fixture';
import { type LedLamp, OTHER_LAMPS, RENDERING_CLASSES, type RenderingClass } from '../../model/lamp-kinds';
import type { Lamp } from '../../model/project';
import { Choices } from '../parts/Choices';
import { OpenFileButton } from '../parts/OpenFileButton';
import { LAMPS, lampName } from '../words/lamps';
import { PICTURE } from '../words/picture';
import { reread } from '../words/spoken';
import { LampFigures } from './LampFigures';
import type { LampFacts } from './lamp-facts';

interface LampPanelProps {
  readonly kinds: readonly LampFacts[];
  readonly lamps: readonly Lamp[];
  /** What is chosen as an LED lamp; null for lamps of another kind. */
  readonly led: LedLamp | null;
  /** The lamp that is chosen here. */
  readonly light: string;
  readonly groups: readonly LampGroup[];
  /** The group a choice is for; null for all. */
  readonly group: LampGroup | null;
  readonly onGroup: (group: LampGroup | null) => void;
  /** The color of the lamps chosen, and what they are called. */
  readonly slider: ReactNode;
  readonly name: string;
  /** What to know of other settings and of lamps that are off. */
  readonly notes: readonly string[];
  readonly onLed: (ra: RenderingClass) => void;
  readonly onLamp: (light: string) => void;
  readonly onOpenLamp: (file: File) => void;
}

const CLASSES = reread(() => RENDERING_CLASSES.map((ra) => ({ id: String(ra), name: LAMPS.classes[ra] })));
const LED = 'led:';

/** What kind of lamps they are, how well they show colors, and the figures that say so. */
export function LampPanel(props: LampPanelProps) {
  const { kinds, lamps, led, light, groups, group, notes, onLed, onLamp, onOpenLamp } = props;
  const kind = useId();
  const where = useId();
  const listed = [...OTHER_LAMPS.map((one) => one.light), ...lamps.map(({ id }) => id)];
  const others = led || listed.includes(light) ? listed : [...listed, light];
  return (
    <>
      <div className="lamp-choices">
        {groups.length > 1 && (
          <div className="lamp-choice">
            <label htmlFor={where}>{LAMPS.where}</label>
            <select
              id={where}
              className="select lamp-group"
              value={group ?? ''}
              onChange={({ target }) => props.onGroup(groups.find((one) => one === target.value) ?? null)}
            >
              <option value="">{LAMPS.everywhere}</option>
              {groups.map((one) => (
                <option key={one} value={one}>
                  {PICTURE.groups[one]}
                </option>
              ))}
            </select>
          </div>
        )}
        <div className="lamp-choice lamp-here">
          {props.slider}
          <output>{props.name}</output>
        </div>
        <div className="lamp-choice">
          <label htmlFor={kind}>{LAMPS.kind}</label>
          <select
            id={kind}
            className="select lamp-kind"
            value={led ? LED : light}
            onChange={({ target }) => (target.value === LED ? onLed(80) : onLamp(target.value))}
          >
            <option value={LED}>{LAMPS.led}</option>
            {others.map((one) => (
              <option key={one} value={one}>
                {lampName(one, lamps)}
              </option>
            ))}
          </select>
        </div>
        {led && (
          <div className="lamp-choice">
            <span aria-hidden="true">{LAMPS.rendering}</span>
            <Choices
              label={LAMPS.rendering}
              choices={CLASSES}
              chosen={String(led.ra)}
              onChoose={(id) => onLed(Number(id) as RenderingClass)}
            />
          </div>
        )}
        <OpenFileButton title={LAMPS.openTitle} accept=".csv,.tsv,.txt,.xml,.spdx,.cgats,.sp" onFile={onOpenLamp}>
          {LAMPS.open}
        </OpenFileButton>
      </div>
      {notes.length > 0 && <p className="lamp-note">{notes.join(' ')}</p>}
      <LampFigures kinds={kinds} lamps={lamps} />
    </>
  );
}
