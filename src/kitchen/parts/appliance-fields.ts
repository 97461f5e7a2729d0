import type { RunRows } from '../../model/layout/types';
import type { Plan } from '../plan/types';
import { freeFridgeTop } from './fridge';
import type { FrontPlace } from './front';
import { OVEN_HEIGHT } from './oven';
import { ovenNiche } from './tall-units';

/** An appliance that shows among the fronts of a run. */
export interface ApplianceField extends FrontPlace {
  readonly isTall: boolean;
  readonly kind: 'oven' | 'fridge' | 'dishwasher';
}

/** What of a run's fronts is an appliance's own face. */
export function applianceFields(plan: Plan, run: RunRows): ApplianceField[] {
  const { plinth, counter, tallTop } = plan;
  const fields: ApplianceField[] = [];
  for (const { kind, from, to } of run.base.units) {
    const a = [from, to] as const;
    if (kind === 'cooktop-oven') {
      const z = [Math.max(plinth.top, counter.bottom - OVEN_HEIGHT), counter.bottom] as const;
      fields.push({ kind: 'oven', isTall: false, a, z });
    } else if (kind === 'dishwasher' && plan.dishwasher === 'free-standing') {
      fields.push({ kind: 'dishwasher', isTall: false, a, z: [plinth.top, counter.bottom] });
    }
  }
  for (const unit of run.tall.flatMap((block) => block.units)) {
    if (unit.kind === 'oven') fields.push({ kind: 'oven', isTall: true, ...ovenNiche(plan, unit) });
    else if (unit.kind === 'fridge' && plan.fridge === 'free-standing') {
      const z = [plinth.top, freeFridgeTop([plinth.top, tallTop])] as const;
      fields.push({ kind: 'fridge', isTall: true, a: [unit.from, unit.to], z });
    }
  }
  return fields;
}
