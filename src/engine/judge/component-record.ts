import { lrvFromReflectance } from '../color/lrv';
import type { Lab } from '../color/types';
import { averageComponent } from '../finish/average';
import type { Specular } from '../finish/given-color';
import type { FinishComponent } from '../finish/types';
import { undertoneOf } from '../naming/undertone';
import type { ComponentRecord, LabTriple } from './assessment';

/** Field order of a CIELAB value in the file format. */
export const labTriple = (lab: Lab<'D65-2'>): LabTriple => [lab.l, lab.a, lab.b];

const known = new WeakMap<FinishComponent, ComponentRecord>();

/** One color component as the assessment shows it; LRV for the 10 degree observer. Remembered per component. */
export function componentRecord(component: FinishComponent): ComponentRecord {
  const before = known.get(component);
  if (before) return before;
  const made = record(component, component.spectrumSource, component.specular ?? null);
  known.set(component, made);
  return made;
}

/** The area mean of a surface: components mixed in linear light by their shares, as seen from too far to tell them apart. */
export const averageRecord = (components: readonly FinishComponent[]): ComponentRecord =>
  record(
    averageComponent(components),
    allAlike(components.map((c) => c.spectrumSource)) ?? 'mixed',
    allAlike(components.map((c) => c.specular ?? null)),
  );

const allAlike = <T>(values: readonly T[]): T | null => (new Set(values).size === 1 ? values[0]! : null);

/** Below this share a component neither raises warnings nor anchors a view. Our judgment. */
export const MINOR_SHARE = 0.05;

function record(
  color: Omit<FinishComponent, 'role' | 'spectrumSource' | 'specular'> & Pick<ComponentRecord, 'role'>,
  spectrumSource: ComponentRecord['spectrum_source'],
  specular: Specular | null,
): ComponentRecord {
  const undertone = undertoneOf(color.labD65);
  return {
    role: color.role,
    share: color.share,
    lab_d65: labTriple(color.labD65),
    lrv: lrvFromReflectance(color.spectrum),
    munsell: undertone.munsell.notation,
    name: undertone.name,
    undertone: { word: undertone.word, strength: undertone.strength, level: undertone.level },
    provenance: color.provenance,
    uncertainty_de00: color.uncertaintyDe00,
    spectrum_source: spectrumSource,
    specular,
  };
}
