import { useId } from 'react';
import type { LayoutId } from '../../model/new-kitchen/layout-drafts';
import { KITCHEN } from '../words/kitchen';
import './layout-choice.css';

interface LayoutChoiceProps {
  /** Null: the kitchen is none of them. */
  readonly chosen: LayoutId | null;
  readonly onChoose: (layout: LayoutId) => void;
}

type Block = readonly [x: number, y: number, width: number, height: number];

/** Units on a plan of 48 by 36, back wall at the top. */
const LEFT: Block = [3, 3, 8, 24];
const BACK: Block = [3, 3, 42, 8];
const RIGHT: Block = [37, 3, 8, 24];
const PLANS: { readonly [L in LayoutId]: readonly Block[] } = {
  'one-wall': [BACK],
  galley: [
    [3, 3, 8, 30],
    [37, 3, 8, 30],
  ],
  l: [LEFT, BACK],
  u: [LEFT, BACK, RIGHT],
  'l-island': [LEFT, BACK, [20, 20, 20, 9]],
  peninsula: [LEFT, BACK, [3, 22, 28, 9]],
};
const LAYOUTS = Object.keys(PLANS) as readonly LayoutId[];

/** The six layouts as small plans, of which one is chosen. */
export function LayoutChoice({ chosen, onChoose }: LayoutChoiceProps) {
  const group = useId();
  return (
    <div className="layouts" role="radiogroup" aria-label={KITCHEN.layout}>
      {LAYOUTS.map((layout) => (
        <label key={layout} className="layout">
          <input
            type="radio"
            name={group}
            value={layout}
            checked={layout === chosen}
            onChange={() => onChoose(layout)}
          />
          <span className="layout-card">
            <svg className="layout-plan" viewBox="0 0 48 36" aria-hidden="true">
              <rect className="layout-room" x={1.5} y={1.5} width={45} height={33} />
              {PLANS[layout].map(([x, y, width, height]) => (
                <rect key={`${x}-${y}`} className="layout-block" x={x} y={y} width={width} height={height} />
              ))}
            </svg>
            <span className="steady" data-text={KITCHEN.layouts[layout]}>
              {KITCHEN.layouts[layout]}
            </span>
          </span>
        </label>
      ))}
    </div>
  );
}
