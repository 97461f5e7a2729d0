import { expect, it } from 'vitest';
import { finishComponent } from '../../src/engine/finish/component';
import { plausibleCurves } from '../../src/engine/plausible/curves';

// Putting the mirror-like part back took a bright white to reflectances of 1, where no departure is left: seventeen times
// the same curve, and a spread of 0 that claimed to know it.
it('has a family of curves for a bright gloss white measured without its mirror reflection', () => {
  const made = finishComponent({
    role: 'base',
    share: 1,
    color: { kind: 'lab', lab: [98.4, 0.2, 1], illuminant: 'D65', observer_deg: 2, specular: 'excluded' },
    finishClass: 'paint',
    provenance: 'measured',
    glossGu: 90,
  });
  if (!made.ok) throw new Error(made.problem.text);
  const curves = plausibleCurves(made.value, 'paint');
  expect(new Set(curves.map((curve) => curve.join()))).toHaveProperty('size', curves.length);
});
