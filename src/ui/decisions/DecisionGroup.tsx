import type { DecisionState, SurfaceId } from '../../engine/surface';
import type { Narrowing } from '../../kitchen/study/narrowing';
import type { PathGroup } from '../../model/decision-path';
import { pointing } from '../parts/pointing';
import { DECISIONS, groupName, narrowingWords } from '../words/decisions';
import { STATE_WORDS } from '../words/finishes';

interface DecisionGroupProps {
  readonly group: PathGroup;
  readonly isNext: boolean;
  readonly label: string;
  readonly narrowing: Narrowing | 'pending' | null;
  readonly hangsOn: readonly SurfaceId[];
  readonly onChoose: (surface: SurfaceId) => void;
  readonly onState: (surfaces: readonly SurfaceId[], state: DecisionState) => void;
  readonly onPoint: (surfaces: readonly SurfaceId[]) => void;
}

/** Surfaces decided as one: what lies there, how settled it is, what is left for it or hangs on it, and what to do with it. */
export function DecisionGroup(props: DecisionGroupProps) {
  const { group, isNext, label, narrowing, hangsOn, onChoose, onState, onPoint } = props;
  const { surfaces, state } = group;
  const name = groupName(surfaces);
  const change = state === 'open' ? DECISIONS.choose : DECISIONS.change;
  const turn = state === 'open' ? DECISIONS.decide : state === 'decided' ? DECISIONS.reopen : null;
  return (
    <div className={`decision-group ${state === 'open' ? '' : 'is-settled'}`} {...pointing(surfaces, onPoint)}>
      <p>
        <b>{name}</b>
        <span className="decision-state">
          {STATE_WORDS[state]}
          {isNext ? `, ${DECISIONS.isNext}` : ''}
        </span>
      </p>
      <p className="small quiet">{label}</p>
      {state === 'open' && narrowing && (
        <p className="small">{narrowing === 'pending' ? DECISIONS.narrowing : narrowingWords(narrowing)}</p>
      )}
      {hangsOn.length > 0 && <p className="small">{DECISIONS.hangsOn(hangsOn)}</p>}
      <div className="decision-buttons">
        <button
          type="button"
          className={`button ${isNext ? 'button-strong' : 'button-outlined'}`}
          aria-label={DECISIONS.of(change, name)}
          onClick={() => onChoose(surfaces[0]!)}
        >
          {change}
        </button>
        {turn && (
          <button
            type="button"
            className="button button-outlined"
            aria-label={DECISIONS.of(turn, name)}
            onClick={() => onState(surfaces, state === 'open' ? 'decided' : 'open')}
          >
            {turn}
          </button>
        )}
      </div>
    </div>
  );
}
