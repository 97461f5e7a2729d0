import { useId, useState } from 'react';
import type { Layout } from '../../engine/pattern/types';
import { JOINT_MM } from '../../model/laying';
import type { Finish, Laying } from '../../model/project';
import { DRAWER } from '../words/drawer';
import { LAYOUT_WORDS, labelWithoutCode } from '../words/finishes';
import { jointOf, jointText, type TypedJoint } from './joint-text';

interface LayingFormProps {
  readonly laying: Laying;
  readonly grouts: readonly Finish[];
  readonly onLaying: (laying: Laying) => void;
}

const [LEAST_MM, WIDEST_MM] = JOINT_MM;
const TILED: readonly Layout[] = ['stack', 'running-bond'];

/** How the finish is laid: for tiles the bond, the joint and its grout; boards and sheets have nothing to set. */
export function LayingForm({ laying, grouts, onLaying }: LayingFormProps) {
  const id = useId();
  const [typed, setTyped] = useState<TypedJoint | null>(null);
  if (!TILED.includes(laying.layout)) {
    return (
      <p className="small drawer-note">
        {LAYOUT_WORDS[laying.layout]}. {DRAWER.layingNone}
      </p>
    );
  }
  const joint = jointText(typed, laying.joint_mm);
  const isWrong = joint !== '' && jointOf(joint) === null;
  return (
    <div className="laying-form">
      <label className="field">
        <span className="label">{DRAWER.layout}</span>
        <select
          className="select"
          value={laying.layout}
          onChange={(event) => onLaying({ ...laying, layout: event.target.value as Layout })}
        >
          {TILED.map((layout) => (
            <option key={layout} value={layout}>
              {LAYOUT_WORDS[layout]}
            </option>
          ))}
        </select>
      </label>
      <div className="field">
        <label htmlFor={`${id}-joint`}>{DRAWER.joint}</label>
        <input
          id={`${id}-joint`}
          className="input"
          inputMode="decimal"
          value={joint}
          aria-invalid={isWrong}
          aria-describedby={isWrong ? `${id}-wrong` : undefined}
          onChange={(event) => {
            const next = jointOf(event.target.value);
            setTyped({ text: event.target.value, joint_mm: next ?? laying.joint_mm });
            if (next !== null) onLaying({ ...laying, joint_mm: next });
          }}
        />
        {isWrong && (
          <p id={`${id}-wrong`} className="small">
            {DRAWER.jointProblem(LEAST_MM, WIDEST_MM)}
          </p>
        )}
      </div>
      <label className="field">
        <span className="label">{DRAWER.grout}</span>
        <select
          className="select"
          value={laying.grout ?? ''}
          onChange={(event) => onLaying({ ...laying, grout: event.target.value })}
        >
          {laying.grout === undefined && <option value="">{DRAWER.groutNone}</option>}
          {grouts.map((grout) => (
            <option key={grout.id} value={grout.id}>
              {labelWithoutCode(grout.label, grout.id)}, {grout.id}
            </option>
          ))}
        </select>
      </label>
    </div>
  );
}
