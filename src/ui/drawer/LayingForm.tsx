import { useId, useState } from 'react';
import type { Layout } from '../../engine/pattern/types';
import type { Finish, Laying } from '../../model/project';
import { DRAWER } from '../words/drawer';
import { LAYOUT_WORDS, labelWithoutCode } from '../words/finishes';

interface LayingFormProps {
  readonly laying: Laying;
  readonly grouts: readonly Finish[];
  readonly onLaying: (laying: Laying) => void;
}

const LEAST_JOINT_MM = 1.6;
const WIDEST_JOINT_MM = 20;
const TILED: readonly Layout[] = ['stack', 'running-bond'];

/** How the finish is laid: for tiles the bond, the joint and its grout; boards and sheets have nothing to set. */
export function LayingForm({ laying, grouts, onLaying }: LayingFormProps) {
  const id = useId();
  const [joint, setJoint] = useState(String(laying.joint_mm ?? ''));
  if (!TILED.includes(laying.layout)) {
    return (
      <p className="small drawer-note">
        {LAYOUT_WORDS[laying.layout]}. {DRAWER.layingNone}
      </p>
    );
  }
  const width = Number(joint);
  const isWrong = !(width >= LEAST_JOINT_MM && width <= WIDEST_JOINT_MM);
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
            setJoint(event.target.value);
            const next = Number(event.target.value);
            if (next >= LEAST_JOINT_MM && next <= WIDEST_JOINT_MM) onLaying({ ...laying, joint_mm: next });
          }}
        />
        {isWrong && (
          <p id={`${id}-wrong`} className="small">
            {DRAWER.jointProblem}
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
