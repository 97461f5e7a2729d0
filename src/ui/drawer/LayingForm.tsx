import { useId } from 'react';
import type { SurfaceId } from '../../engine/surface';
import { isTiled, JOINT_MM, SLAB_SHIFT_MM, wantsSmallOffset } from '../../model/laying';
import { directionsFor, layoutsFor } from '../../model/layouts';
import type { Finish, Laying } from '../../model/project';
import { slabOf } from '../../model/slab';
import { Choices } from '../parts/Choices';
import { LAYING } from '../words/drawer';
import { LAYOUT_WORDS, labelWithoutCode } from '../words/finishes';
import { LayoutPicture } from './LayoutPicture';
import { MmField } from './MmField';

interface LayingFormProps {
  readonly finish: Finish;
  readonly surface: SurfaceId;
  readonly laying: Laying;
  readonly grouts: readonly Finish[];
  readonly onLaying: (laying: Laying) => void;
}

/** How the finish is laid: only what can be set for this finish on this surface. */
export function LayingForm({ finish, surface, laying, grouts, onLaying }: LayingFormProps) {
  const group = useId();
  const usual = layoutsFor(finish, surface);
  // What lies there now stays in the list, even where it is unusual.
  const layouts = usual.includes(laying.layout) ? usual : [...usual, laying.layout];
  const directions = directionsFor(finish, laying);
  const tiled = isTiled(finish, laying);
  const slab = laying.layout === 'plain' ? slabOf(finish) : null;
  if (layouts.length < 2 && directions.length < 2 && !tiled && !slab) {
    return (
      <p className="small drawer-note">
        {LAYOUT_WORDS[laying.layout]}. {LAYING.none}
      </p>
    );
  }
  const match = laying.slab ?? { match: 'bookmatch', shift_mm: 0 };
  return (
    <div className="laying-form">
      {layouts.length > 1 && (
        <fieldset className="field laying-layouts">
          <legend className="label">{LAYING.layout}</legend>
          {layouts.map((layout) => (
            <label key={layout} className="check">
              <input
                type="radio"
                name={group}
                value={layout}
                checked={layout === laying.layout}
                onChange={() => onLaying(withLayout(finish, laying, layout))}
              />
              <LayoutPicture layout={layout} />
              {LAYOUT_WORDS[layout]}
            </label>
          ))}
          {wantsSmallOffset(finish, laying) && <p className="small">{LAYING.longTile}</p>}
          {laying.layout === 'hexagon' && finish.piece_mm && (
            <p className="small">{LAYING.hexagon(Math.min(...finish.piece_mm))}</p>
          )}
        </fieldset>
      )}
      {directions.length > 1 && (
        <div className="field">
          <span className="label">{LAYING.direction}</span>
          <Choices
            label={LAYING.direction}
            choices={directions.map((turn) => ({ id: String(turn), name: LAYING.directions[turn] }))}
            chosen={String(laying.direction_deg ?? 0)}
            onChoose={(turn) => onLaying({ ...laying, direction_deg: directions.find((one) => String(one) === turn) })}
          />
        </div>
      )}
      {tiled && (
        <>
          <MmField
            label={LAYING.joint}
            mm={laying.joint_mm}
            bounds={JOINT_MM}
            problem={LAYING.jointProblem}
            onMm={(joint_mm) => onLaying({ ...laying, joint_mm })}
          />
          <label className="field">
            <span className="label">{LAYING.grout}</span>
            <select
              className="select"
              value={laying.grout ?? ''}
              onChange={(event) => onLaying({ ...laying, grout: event.target.value })}
            >
              {laying.grout === undefined && <option value="">{LAYING.groutNone}</option>}
              {grouts.map((grout) => (
                <option key={grout.id} value={grout.id}>
                  {labelWithoutCode(grout.label, grout.id)}, {grout.id}
                </option>
              ))}
            </select>
          </label>
        </>
      )}
      {(tiled || laying.layout === 'herringbone') && (
        <div className="field">
          <span className="label">{LAYING.start}</span>
          <Choices
            label={LAYING.start}
            choices={STARTS.map((id) => ({ id, name: LAYING.starts[id] }))}
            chosen={laying.start ?? 'centered'}
            onChoose={(start) => onLaying({ ...laying, start })}
          />
        </div>
      )}
      {slab && (
        <>
          <div className="field">
            <span className="label">{LAYING.slab}</span>
            <Choices
              label={LAYING.slab}
              choices={MATCHES.map((id) => ({ id, name: LAYING.matches[id] }))}
              chosen={match.match}
              onChoose={(chosen) => onLaying({ ...laying, slab: { ...match, match: chosen } })}
            />
            <p className="small">{LAYING.slabSize(...slab)}</p>
          </div>
          <MmField
            label={LAYING.shift}
            mm={match.shift_mm}
            bounds={SLAB_SHIFT_MM}
            problem={LAYING.shiftProblem}
            onMm={(shift_mm) => onLaying({ ...laying, slab: { ...match, shift_mm } })}
          />
        </>
      )}
    </div>
  );
}

const STARTS = ['centered', 'corner'] as const;
const MATCHES = ['bookmatch', 'slip'] as const;

/** The same laying in another layout, with a direction the layout has. */
function withLayout(finish: Finish, laying: Laying, layout: Laying['layout']): Laying {
  const next = { ...laying, layout };
  const { direction_deg, ...straight } = next;
  return direction_deg === undefined || directionsFor(finish, next).includes(direction_deg) ? next : straight;
}
