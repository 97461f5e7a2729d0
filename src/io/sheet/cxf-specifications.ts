import type { Specular } from '../../engine/finish/given-color';
import { illuminantId } from '../color-line';
import type { XmlElement } from '../xml-reader';
import { allWords, childOf, childrenOf, textOf } from './cxf-elements';
import { conditionIn, type MeasurementCondition } from './measurement-condition';
import { observerInCell } from './said-conditions';

/** What a ColorSpecification says of the values that refer to it; null where it says nothing. */
export interface CxfSpecification {
  readonly illuminant: string | null;
  readonly observer_deg: 2 | 10 | null;
  readonly specular: Specular | null;
  readonly condition: MeasurementCondition | null;
  readonly geometry: 'one-angle' | 'other-angle' | 'many-angles' | 'light-source' | null;
  readonly isTransmitted: boolean;
  readonly start_nm: number | null;
  readonly step_nm: number | null;
}

/** The specifications by their Id; those whose Id stands twice are 'twice'. */
export function cxfSpecifications(resources: XmlElement): ReadonlyMap<string, CxfSpecification | 'twice'> {
  const found = new Map<string, CxfSpecification | 'twice'>();
  for (const collection of childrenOf(resources, 'ColorSpecificationCollection')) {
    for (const element of childrenOf(collection, 'ColorSpecification')) {
      const id = element.attributes.get('Id') ?? '';
      found.set(id, found.has(id) ? 'twice' : specificationOf(element));
    }
  }
  return found;
}

function specificationOf(element: XmlElement): CxfSpecification {
  const light = childOf(element, 'TristimulusSpec');
  const measured = childOf(element, 'MeasurementSpec');
  const geometry = childOf(measured, 'GeometryChoice');
  const range = childOf(measured, 'WavelengthRange');
  const device = childOf(measured, 'Device');
  const type = textOf(measured, 'MeasurementType');
  const sphere = childOf(geometry, 'SphereGeometry');
  const angle = childOf(geometry, 'SingleAngle');
  const angles = ['IlluminationAngle', 'MeasurementAngle'].map((name) => Number(textOf(angle, name) || Number.NaN));
  const isAcross = [...angles].sort((a, b) => a - b).join() === '0,45';
  return {
    illuminant: illuminantId(textOf(light, 'Illuminant')),
    observer_deg: observerInCell(textOf(light, 'Observer').replace('_', ' ')),
    // 45:0 and 0:45 never see the mirror-like reflection (CIE 15).
    specular: sphere ? mirrorPartOf(allWords(sphere)) : isAcross ? 'excluded' : null,
    condition: device ? conditionOf(device) : null,
    geometry:
      childOf(geometry, 'EmissiveMode') || /emissi/i.test(type)
        ? 'light-source'
        : childOf(geometry, 'MultiAngle')
          ? 'many-angles'
          : angle && angles.every((one) => !Number.isNaN(one)) && !isAcross
            ? 'other-angle'
            : angle || sphere
              ? 'one-angle'
              : null,
    isTransmitted: /transmi/i.test(type),
    start_nm: wavelength(range, 'StartWL'),
    step_nm: wavelength(range, 'Increment'),
  };
}

/** A wavelength or a step in nm from an attribute; null where there is none that makes sense. */
export function wavelength(element: XmlElement | undefined, name: string): number | null {
  const text = element?.attributes.get(name)?.trim() ?? '';
  const nm = /^\d{1,4}(\.\d+)?$/.test(text) ? Number(text) : 0;
  return nm > 0 ? nm : null;
}

export function mirrorPartOf(words: string): Specular | null {
  if (/exclu|\b(SCE|RSEX|SPEX)\b/i.test(words)) return 'excluded';
  return /inclu|\b(SCI|RSIN|SPIN)\b/i.test(words) ? 'included' : null;
}

/** From what a Device says of its light and filters, not from its model's name. Names of the elements from memory. */
function conditionOf(device: XmlElement): MeasurementCondition | null {
  const [light, filter, polarized] = ['DeviceIllumination', 'DeviceFilter', 'DevicePolarization'].map((name) =>
    textOf(device, name),
  ) as [string, string, string];
  const named = conditionIn(light) ?? conditionIn(filter);
  if (named) return named;
  if (/^(true|yes|1$|polari)/i.test(polarized) || /polari/i.test(filter)) return 'M3';
  return /uv[ _-]?(exclu|cut)/i.test(`${light} ${filter}`) ? 'M2' : null;
}
