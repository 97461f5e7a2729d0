import type { GivenComponent } from '../../src/engine/finish/component';
import { FINISH_CLASSES } from '../../src/engine/finish/types';
import { mulberry32 } from '../../src/engine/random';

/** An invented library: near-neutrals and colours of moderate chroma, of every class, a wood among eleven. */
export function inventedLibrary(count: number): readonly GivenComponent[] {
  const random = mulberry32(10_000);
  const spread = (reach: number) => reach * (2 * random() - 1);
  return Array.from({ length: count }, (_, i) => ({
    role: 'base',
    share: 1,
    finishClass: FINISH_CLASSES[i % FINISH_CLASSES.length]!,
    provenance: 'declared',
    color: {
      kind: 'lab',
      lab: [25 + 70 * random(), i % 2 ? spread(3) : spread(14), i % 2 ? 3 + spread(5) : 6 + spread(20)],
      illuminant: 'D65',
      observer_deg: 2,
    },
  }));
}
