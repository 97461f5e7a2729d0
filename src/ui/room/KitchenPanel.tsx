import { type ReactNode, useRef, useState } from 'react';
import type { Problem } from '../../engine/result';
import type { PlanDrawing } from '../../kitchen/plan/plan-drawing';
import { changeLayout, layoutOf } from '../../model/change-layout';
import type { ClearanceHint } from '../../model/clearances/types';
import type { Kitchen, Region } from '../../model/kitchen';
import type { Rows } from '../../model/layout/types';
import type { LengthUnit } from '../../model/length-text';
import { changeRegion } from '../../model/new-kitchen';
import type { Loss } from '../../model/new-kitchen/losses';
import type { UserNeed } from '../../model/project';
import { inUnit } from '../../model/unit-words';
import { KITCHEN } from '../words/kitchen';
import { reread } from '../words/spoken';
import { ApplianceForm } from './ApplianceForm';
import { ClearanceList } from './ClearanceList';
import { problemAtField } from './field-problem';
import { focusField } from './focus-field';
import { IslandForm } from './IslandForm';
import { type DrawingId, KitchenDrawing } from './KitchenDrawing';
import { CABINET_LENGTHS, COUNTER_LENGTHS, DOOR_LENGTHS, ROOM_LENGTHS } from './kitchen-lengths';
import { LayoutChoice } from './LayoutChoice';
import { LengthFields, type OnKitchen } from './LengthFields';
import { LossNotice } from './LossNotice';
import { OpenSideForm } from './OpenSideForm';
import { PanelFrame } from './PanelFrame';
import { PickField } from './PickField';
import type { PlanEye } from './PlanView';
import { RunForm } from './RunForm';
import { WindowList } from './WindowList';
import { YearField } from './YearField';
import './kitchen-panel.css';

export interface KitchenPanelProps {
  readonly kitchen: Kitchen;
  readonly rows: Rows;
  readonly drawing: PlanDrawing;
  readonly eye: PlanEye | null;
  readonly hints: readonly ClearanceHint[];
  /** Whom the kitchen has to suit. */
  readonly users: readonly UserNeed[];
  readonly onUsers: (users: readonly UserNeed[]) => void;
  /** Null: not known. */
  readonly yearBuilt: number | null;
  readonly onYearBuilt: (year: number | null) => readonly Problem[];
  readonly unit: LengthUnit;
  readonly onUnit: (unit: LengthUnit) => void;
  readonly onKitchen: OnKitchen;
  /** What the kitchen lost in its last changes. */
  readonly losses: readonly Loss[];
  readonly onLossesRead: () => void;
  readonly onClose: () => void;
}

const REGION_TOO_LARGE: readonly Problem[] = reread(() => [
  { code: 'does-not-fit', text: KITCHEN.regionTooLarge, remedy: '' },
]);

/** The kitchen itself: layout, sizes, what stands where, with plan, elevations and what planners recommend. */
export function KitchenPanel(props: KitchenPanelProps) {
  const { kitchen, unit, onKitchen } = props;
  const inside = useRef<HTMLDivElement>(null);
  const [refused, setRefused] = useState<{ readonly words: string; readonly basis: Kitchen } | null>(null);
  const [window, setWindow] = useState<string | null>(kitchen.openings[0]?.id ?? null);
  const [shown, setShown] = useState<DrawingId>('plan');
  const [lastPointed, setPointed] = useState<ClearanceHint | null>(null);
  // What was measured before the kitchen changed is no measure of it.
  const pointed = lastPointed && props.hints.includes(lastPointed) ? lastPointed : null;
  const form = { kitchen, unit, onKitchen };
  const common = { unit, basis: kitchen } as const;
  const layout = layoutOf(kitchen);
  const goTo = (path: string) => {
    const opening = /^openings\[(\d+)\]/.exec(path);
    if (opening) setWindow(kitchen.openings[Number(opening[1])]?.id ?? null);
    // The form of a window that was just chosen stands there only after the next frame.
    requestAnimationFrame(() => focusField(inside.current, path));
  };
  return (
    <PanelFrame title={KITCHEN.title} opener="kitchen" onClose={props.onClose}>
      <div ref={inside} className="kitchen-panel">
        <div className="kitchen-column">
          <LayoutChoice
            chosen={layout}
            onChoose={(next) => {
              const changed = changeLayout(kitchen, next);
              if (!changed) return setRefused({ words: KITCHEN.layoutTooLarge(KITCHEN.layouts[next]), basis: kitchen });
              const [problem] = onKitchen(changed.kitchen, false, changed.losses);
              const words = problem && inUnit(problemAtField(problem, KITCHEN.layouts[next]), unit);
              setRefused(words ? { words, basis: kitchen } : null);
            }}
          />
          {layout === null && <p className="small quiet">{KITCHEN.ownLayout}</p>}
          {refused?.basis === kitchen && (
            <p className="small field-wrong" role="alert">
              {refused.words}
            </p>
          )}
          <LossNotice losses={props.losses} onDismiss={props.onLossesRead} />
          <KitchenDrawing {...props} shown={shown} onShow={setShown} pointed={pointed} onField={goTo} />
        </div>
        <div className="kitchen-column">
          <ClearanceList
            kitchen={kitchen}
            hints={props.hints}
            unit={unit}
            users={props.users}
            onUsers={props.onUsers}
            onPoint={setPointed}
            onShow={() => setShown('plan')}
          />
          <div className="room-row">
            <PickField
              {...common}
              label={KITCHEN.region}
              as="menu"
              words={KITCHEN.regions}
              chosen={kitchen.region}
              onPick={(region: Region) => {
                const changed = changeRegion(kitchen, region);
                return changed ? onKitchen(changed.kitchen, false, changed.losses) : REGION_TOO_LARGE;
              }}
            />
            <PickField
              {...common}
              label={KITCHEN.unit}
              as="row"
              words={KITCHEN.units}
              chosen={unit}
              onPick={(next) => {
                props.onUnit(next);
                return [];
              }}
            />
          </div>
          <p className="small quiet">{KITCHEN.regionNote}</p>
          <YearField year={props.yearBuilt} onYear={props.onYearBuilt} />
          <div>
            <Fold title={KITCHEN.room} isOpen>
              <LengthFields {...form} lengths={ROOM_LENGTHS} />
              <LengthFields {...form} lengths={DOOR_LENGTHS} />
            </Fold>
            <Fold title={KITCHEN.runs}>
              {kitchen.runs.map((run, index) => (
                <RunForm key={run.wall} run={run} index={index} {...form} />
              ))}
            </Fold>
            <Fold title={KITCHEN.island}>
              <IslandForm {...form} />
            </Fold>
            <Fold title={KITCHEN.appliances}>
              <ApplianceForm {...form} />
            </Fold>
            <Fold title={KITCHEN.cabinets}>
              <div className="room-fields">
                <PickField
                  {...common}
                  label={KITCHEN.frontStyle}
                  as="menu"
                  words={KITCHEN.frontStyles}
                  chosen={kitchen.fronts.style}
                  onPick={(style) => onKitchen({ ...kitchen, fronts: { ...kitchen.fronts, style } }, false)}
                />
                <PickField
                  {...common}
                  label={KITCHEN.mounting}
                  as="menu"
                  words={KITCHEN.mountings}
                  chosen={kitchen.fronts.mounting}
                  onPick={(mounting) => onKitchen({ ...kitchen, fronts: { ...kitchen.fronts, mounting } }, false)}
                />
                <PickField
                  {...common}
                  label={KITCHEN.handle}
                  as="menu"
                  words={KITCHEN.handles}
                  chosen={kitchen.fronts.handle}
                  onPick={(handle) => onKitchen({ ...kitchen, fronts: { ...kitchen.fronts, handle } }, false)}
                />
              </div>
              <LengthFields {...form} lengths={CABINET_LENGTHS} />
            </Fold>
            <Fold title={KITCHEN.counter}>
              <PickField
                {...common}
                label={KITCHEN.edge}
                as="menu"
                words={KITCHEN.edges}
                chosen={kitchen.counter.edge}
                onPick={(edge) => onKitchen({ ...kitchen, counter: { ...kitchen.counter, edge } }, false)}
              />
              <LengthFields {...form} lengths={COUNTER_LENGTHS} />
            </Fold>
            <Fold title={KITCHEN.windows}>
              <WindowList
                kitchen={kitchen}
                chosen={window}
                onChoose={setWindow}
                onOpenings={(openings) => onKitchen({ ...kitchen, openings }, false)}
              />
            </Fold>
            <Fold title={KITCHEN.openSide}>
              <OpenSideForm {...form} />
            </Fold>
            <Fold title={KITCHEN.extras}>
              <label className="check">
                <input
                  type="checkbox"
                  checked={kitchen.objects}
                  onChange={(event) => onKitchen({ ...kitchen, objects: event.target.checked }, false)}
                />
                {KITCHEN.objects}
              </label>
            </Fold>
          </div>
        </div>
      </div>
    </PanelFrame>
  );
}

interface FoldProps {
  readonly title: string;
  readonly isOpen?: boolean;
  readonly children: ReactNode;
}

function Fold({ title, isOpen = false, children }: FoldProps) {
  return (
    <details className="fold" open={isOpen}>
      <summary>{title}</summary>
      <div className="kitchen-fold">{children}</div>
    </details>
  );
}
