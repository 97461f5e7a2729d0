import type { SurfaceId } from '../../engine/surface';
import type { RunRows } from '../../model/layout/types';
import type { Plan } from '../plan/types';
import { freeFridgeTop } from './fridge';
import type { FrontPlace } from './front';
import { OVEN_HEIGHT } from './oven';
import { APRON } from './sink';
import { ovenNiche } from './tall-units';

/** A part of a run's fronts that is finished otherwise: the face of an appliance, the apron of a sink. */
export interface FrontField extends FrontPlace {
  readonly kind: 'oven' | 'fridge' | 'dishwasher' | 'apron';
  readonly surface: SurfaceId;
  readonly isTall: boolean;
}

export function frontFields(plan: Plan, run: RunRows): FrontField[] {
  const { plinth, counter, tallTop } = plan;
  const fields: FrontField[] = [];
  const low = { surface: 'appliance', isTall: false } as const;
  for (const { kind, from, to } of run.base.units) {
    const a = [from, to] as const;
    if (kind === 'cooktop-oven') {
      const z = [Math.max(plinth.top, counter.bottom - OVEN_HEIGHT), counter.bottom] as const;
      fields.push({ ...low, kind: 'oven', a, z });
    } else if (kind === 'dishwasher' && plan.dishwasher === 'free-standing') {
      fields.push({ ...low, kind: 'dishwasher', a, z: [plinth.top, counter.bottom] });
    } else if (kind === 'sink' && plan.sink.fit === 'apron') {
      fields.push({ ...low, kind: 'apron', surface: 'sink', a, z: [counter.bottom - APRON.height, counter.bottom] });
    }
  }
  for (const unit of run.tall.flatMap((block) => block.units)) {
    const tall = { surface: 'appliance', isTall: true } as const;
    if (unit.kind === 'oven') fields.push({ ...tall, kind: 'oven', ...ovenNiche(plan, unit) });
    else if (unit.kind === 'fridge' && plan.fridge === 'free-standing') {
      const z = [plinth.top, freeFridgeTop([plinth.top, tallTop])] as const;
      fields.push({ ...tall, kind: 'fridge', a: [unit.from, unit.to], z });
    }
  }
  return fields;
}
