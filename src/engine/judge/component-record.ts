import { labD65FromXyzD65, xyzD65FromLabD65 } from '../color/lab';
import { lrvFromReflectance } from '../color/lrv';
import type { Lab } from '../color/types';
import type { FinishComponent, Provenance } from '../finish/types';
import { undertoneOf } from '../naming/undertone';
import type { ComponentRecord, LabTriple } from './assessment';

/** Field order of a CIELAB value in the file format. */
export const labTriple = (lab: Lab<'D65-2'>): LabTriple => [lab.l, lab.a, lab.b];

/** Light reflectance value, 0-100: CIE Y under D65 for the 10 degree observer (BS 8493). */
export const lrvOf = (component: FinishComponent): number => lrvFromReflectance(component.spectrum);

/** One color component as the assessment shows it. */
export const componentRecord = (component: FinishComponent): ComponentRecord => ({
  role: component.role,
  share: component.share,
  ...named(component.labD65),
  lrv: lrvOf(component),
  provenance: component.provenance,
  uncertainty_de00: component.uncertaintyDe00,
});

/**
 * The area mean of a surface: components mixed in linear light by their shares, as seen from too far to tell them apart.
 * Provenance is the least certain one that covers a real part of it.
 */
export function averageRecord(components: readonly FinishComponent[]): ComponentRecord {
  const total = components.reduce((sum, c) => sum + c.share, 0);
  return {
    role: 'average',
    share: 1,
    ...named(averageLab(components)),
    lrv: averageLrv(components),
    provenance: leastCertain(components),
    uncertainty_de00: Math.sqrt(components.reduce((sum, c) => sum + ((c.share / total) * c.uncertaintyDe00) ** 2, 0)),
  };
}

/** Area mean of the light reflectance value, 0-100. */
export function averageLrv(components: readonly FinishComponent[]): number {
  const total = components.reduce((sum, c) => sum + c.share, 0);
  return components.reduce((sum, c) => sum + c.share * lrvOf(c), 0) / total;
}

/** CIELAB of the area mean: tristimulus values add, CIELAB does not. */
export function averageLab(parts: readonly { share: number; labD65: Lab<'D65-2'> }[]): Lab<'D65-2'> {
  let x = 0;
  let y = 0;
  let z = 0;
  let total = 0;
  for (const part of parts) {
    const xyz = xyzD65FromLabD65(part.labD65);
    x += part.share * xyz.x;
    y += part.share * xyz.y;
    z += part.share * xyz.z;
    total += part.share;
  }
  return labD65FromXyzD65({ x: x / total, y: y / total, z: z / total });
}

/** Below this share a component neither raises warnings nor sets how far a surface can be trusted. Our judgement. */
export const MINOR_SHARE = 0.05;

const TRUST: readonly Provenance[] = ['measured', 'declared', 'photo-with-card', 'photo', 'by-eye', 'screen'];

function leastCertain(components: readonly FinishComponent[]): Provenance {
  const counted = components.filter((c) => c.share >= MINOR_SHARE);
  const ranks = counted.map((c) => TRUST.indexOf(c.provenance));
  return TRUST[Math.max(0, ...ranks)]!;
}

function named(lab: Lab<'D65-2'>) {
  const undertone = undertoneOf(lab);
  return {
    lab_d65: labTriple(lab),
    munsell: undertone.munsell.notation,
    name: undertone.name,
    undertone: { word: undertone.word, strength: undertone.strength, level: undertone.level },
  };
}
