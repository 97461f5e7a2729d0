import type { ReactNode } from 'react';
import type { Problem } from '../../engine/result';
import type { SurfaceId } from '../../engine/surface';
import type { CarriedLook } from '../../kitchen/carry/carry-over';
import type { RelationChange } from '../../kitchen/carry/relation-repair';
import { Menu } from '../drawer/Menu';
import { Choices } from '../parts/Choices';
import { OpenFileButton } from '../parts/OpenFileButton';
import { PanelFrame } from '../room/PanelFrame';
import { LOOK } from '../words/look';
import { retold } from '../words/spoken';
import { BrokenRelations } from './BrokenRelations';
import { LaidList } from './LaidList';
import { RelationFolds } from './RelationFolds';
import { RepairList } from './RepairList';
import './look.css';

/** A look to choose: an option of the project or one that is kept in it. */
export interface LookChoice {
  readonly key: string;
  readonly name: string;
  readonly isKept: boolean;
}

export interface LookPanelProps {
  readonly choices: readonly LookChoice[];
  /** Key of the chosen one; null where there is none. */
  readonly chosen: string | null;
  readonly onChoose: (key: string) => void;
  readonly optionName: string;
  readonly asIs: boolean;
  readonly onAsIs: (asIs: boolean) => void;
  /** `waiting` while it is worked out; null where it cannot be told; or what is wrong with a color. */
  readonly carried: CarriedLook | Problem | 'waiting' | null;
  /** The project has room for one more option. */
  readonly hasRoom: boolean;
  readonly onLay: (carried: CarriedLook, changes: readonly RelationChange[]) => void;
  /** Shows it on the option as a trial, to be kept or dropped. */
  readonly onTry: (carried: CarriedLook, changes: readonly RelationChange[]) => void;
  /** Null where the look is no option, or none was laid. */
  readonly onSideBySide: ((carried: CarriedLook) => void) | null;
  readonly onPicture: (file: File) => void;
  readonly onFile: (file: File) => void;
  readonly onKeepFile: () => void;
  readonly onRemove: () => void;
  readonly onPoint: (surfaces: readonly SurfaceId[]) => void;
  readonly onClose: () => void;
  /** The picture while points are placed on it. */
  readonly children: ReactNode;
}

/** A copied look: which, how it is judged here, what breaks and holds, and what would mend it. */
export function LookPanel(props: LookPanelProps) {
  const { choices, carried, asIs, optionName } = props;
  const chosen = choices.find(({ key }) => key === props.chosen);
  return (
    <PanelFrame title={LOOK.title} opener="look" onClose={props.onClose}>
      <p className="small quiet">{LOOK.intro}</p>
      {chosen ? (
        <>
          <Menu
            label={LOOK.which}
            value={chosen.key}
            choices={choices.map(({ key, name }) => [key, name])}
            onChoose={props.onChoose}
          />
          <div className="field">
            <span className="label">{LOOK.mode}</span>
            <Choices
              label={LOOK.mode}
              choices={LOOK.modes}
              chosen={asIs ? 'as-is' : 'carried'}
              onChoose={(mode) => props.onAsIs(mode === 'as-is')}
            />
          </div>
          <p className="small quiet">{LOOK.modeNote[asIs ? 'as-is' : 'carried'](optionName)}</p>
        </>
      ) : (
        <p>{LOOK.nothing}</p>
      )}
      <div className="look-row">
        <OpenFileButton title={LOOK.pictureTitle} accept="image/jpeg,image/png,image/webp" onFile={props.onPicture}>
          {LOOK.picture}
        </OpenFileButton>
        <OpenFileButton title={LOOK.fileTitle} accept="application/json,.json" onFile={props.onFile}>
          {LOOK.file}
        </OpenFileButton>
      </div>
      {chosen && <CarriedPart {...props} carried={carried} />}
      {chosen && (
        <div className="look-row room-part look-result">
          <button type="button" className="button button-outlined" onClick={props.onKeepFile}>
            {LOOK.keep}
          </button>
          {chosen.isKept && (
            <button type="button" className="button button-outlined" onClick={props.onRemove}>
              {LOOK.remove}
            </button>
          )}
        </div>
      )}
      {props.children}
    </PanelFrame>
  );
}

function CarriedPart(props: LookPanelProps) {
  const { carried, asIs, hasRoom, optionName } = props;
  if (carried === 'waiting' || carried === null) {
    return <p role="status">{carried === null ? LOOK.notYet : LOOK.working}</p>;
  }
  if ('code' in carried) return <p role="status">{retold(`${carried.text} ${carried.remedy}`)}</p>;
  const { holds, breaks, cannot_tell, counts, repairs } = carried;
  const isLaid = carried.commands.length === 0;
  const isEmpty = holds.length + breaks.length + cannot_tell.length === 0;
  return (
    <section className="room-part look-result" aria-label={LOOK.result}>
      <p className="look-counts" role="status">
        {isEmpty ? LOOK.noRelations : LOOK.counts(counts.breaks, counts.holds, counts.cannot_tell)}
      </p>
      {!isEmpty && <p className="small quiet">{basisOf(carried)}</p>}
      {carried.look.source === 'picture' && <p className="small quiet">{LOOK.fromPictureNote}</p>}
      {!asIs && isLaid && !isEmpty && <p className="small quiet">{LOOK.laidAlready(optionName)}</p>}
      {!asIs && (
        <div className="look-row">
          <button
            type="button"
            className="button button-strong"
            title={isLaid ? LOOK.laidAlready(optionName) : hasRoom ? undefined : LOOK.full}
            disabled={isLaid}
            onClick={() => props.onLay(carried, [])}
          >
            {hasRoom ? LOOK.lay : LOOK.layHere(optionName)}
          </button>
          {props.onSideBySide && (
            <button type="button" className="button button-outlined" onClick={() => props.onSideBySide?.(carried)}>
              {LOOK.sideBySide}
            </button>
          )}
        </div>
      )}
      <BrokenRelations carried={carried} onPoint={props.onPoint} />
      {breaks.length > 0 && (
        <RepairList
          repairs={repairs}
          onTry={(repair) => props.onTry(carried, repair.changes)}
          onLay={(repair) => props.onLay(carried, repair.changes)}
          onPoint={props.onPoint}
          checks={[...breaks, ...holds, ...cannot_tell]}
        />
      )}
      <RelationFolds carried={carried} onPoint={props.onPoint} />
      {!asIs && <LaidList laid={carried.laid} kept={carried.kept} />}
    </section>
  );
}

/** What the relations rest on, and whether what breaks shows in the room. */
function basisOf({ breaks, views }: CarriedLook): string {
  const read = breaks.flatMap(({ in_place }) => in_place ?? []);
  const shown = read.filter(({ stands }) => stands === 'breaks').length;
  return [
    LOOK.basis,
    ...(read.length === 0 ? [] : [shown === read.length ? LOOK.inPlaceAll : LOOK.inPlaceSome(shown, read.length)]),
    ...(views === 'typical' ? [LOOK.typicalViews] : []),
  ].join(' ');
}
