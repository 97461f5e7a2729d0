import type { ReactNode } from 'react';
import type { DecisionState, SurfaceId } from '../../engine/surface';
import type { Narrowing } from '../../kitchen/study/narrowing';
import type { DecisionPath, PathGroup } from '../../model/decision-path';
import { PanelFrame } from '../room/PanelFrame';
import { DECISIONS, groupName, STEP_NAMES, STEP_REASONS } from '../words/decisions';
import { DecisionGroup } from './DecisionGroup';
import './decisions.css';

interface DecisionsPanelProps {
  readonly path: DecisionPath;
  readonly labelOf: (finish: string) => string;
  /** Null until it is counted. */
  readonly narrowings: readonly Narrowing[] | null;
  /** What was decided later and is looked at again when a group changes. */
  readonly hangsOn: (group: PathGroup) => readonly SurfaceId[];
  readonly notice: ReactNode;
  readonly onChoose: (surface: SurfaceId) => void;
  readonly onState: (surfaces: readonly SurfaceId[], state: DecisionState) => void;
  readonly onPoint: (surfaces: readonly SurfaceId[]) => void;
  readonly onClose: () => void;
}

/** The order of deciding: what is settled, what comes next and why, and what is left of the library for what is open. */
export function DecisionsPanel(props: DecisionsPanelProps) {
  const { path, narrowings } = props;
  const nextStep = path.steps.find(({ groups }) => groups.some((group) => isNext(group, path)));
  const next = nextStep?.groups.find((group) => isNext(group, path));
  return (
    <PanelFrame title={DECISIONS.title} opener="decisions" onClose={props.onClose}>
      {props.notice}
      <p className="decision-next">
        {next && nextStep ? (
          <>
            <strong>{DECISIONS.next(groupName(next.surfaces))}</strong> {STEP_REASONS[nextStep.id]}
          </>
        ) : (
          DECISIONS.allDecided
        )}
      </p>
      <ol className="decision-steps">
        {path.steps.map(({ id, groups }) => (
          <li key={id} className={id === nextStep?.id ? 'is-next' : ''}>
            <h3>{STEP_NAMES[id]}</h3>
            {groups.map((group) => (
              <DecisionGroup
                key={group.surfaces[0]}
                group={group}
                isNext={group === next}
                label={props.labelOf(group.finish)}
                narrowing={
                  narrowings?.find(({ surfaces }) => surfaces[0] === group.surfaces[0]) ??
                  (narrowings ? null : 'pending')
                }
                hangsOn={props.hangsOn(group)}
                onChoose={props.onChoose}
                onState={props.onState}
                onPoint={props.onPoint}
              />
            ))}
          </li>
        ))}
      </ol>
      <p className="small quiet">{DECISIONS.asSamples}</p>
    </PanelFrame>
  );
}

const isNext = ({ surfaces }: PathGroup, { next }: DecisionPath): boolean => next !== null && surfaces.includes(next);
