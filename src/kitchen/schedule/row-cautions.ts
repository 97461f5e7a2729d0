import type { SurfaceId } from '../../engine/surface';
import { cautionText } from '../../model/caution-words';
import type { Caution } from '../../model/cautions';
import type { Finish } from '../../model/project';
import type { ScheduleItem } from './types';

const COUNTERS: readonly SurfaceId[] = ['counter', 'island-counter'];
const SANDED: readonly SurfaceId[] = ['wall', 'ceiling', 'frame', 'base-fronts', 'wall-fronts', 'tall-fronts'];

/** The surfaces a caution is about. */
function surfacesOf(caution: Caution): readonly SurfaceId[] {
  switch (caution.code) {
    case 'dust':
    case 'glare':
      return caution.surfaces;
    case 'low-vision':
      return caution.surfaces.flat();
    case 'glass':
      return ['backsplash'];
    case 'acid':
    case 'load':
      return COUNTERS;
    case 'slip':
      return ['floor'];
    case 'lead':
      return SANDED;
    case 'heat':
      return ['appliance'];
  }
}

/** What to heed before one orders an item, in sentences. */
export const rowCautions = (item: ScheduleItem, cautions: readonly Caution[]): readonly string[] =>
  item.kind === 'grout'
    ? []
    : cautions
        .filter((caution) => surfacesOf(caution).some((surface) => item.surfaces.includes(surface)))
        .filter(({ code }) => code !== 'lead' || item.kind === 'coat')
        .map(cautionText);

/** How it is kept and what to ask for, by material (common practice, no source). */
const CARE: { readonly [C in Finish['class']]?: string } = {
  stone: 'Ask whether it is sealed and how often to seal it again. Wipe with soap without acid.',
  engineered: 'Keep hot pans off: the resin in it can mark.',
  'solid surface': 'Keep hot pans off. Scratches can be sanded out by a fabricator.',
  laminate: 'Keep hot pans off, and joints dry.',
  wood: 'Wipe water off; oil again where it looks dry, if it is oiled. It changes color in light.',
  metal: 'Ask how it is cleaned. Brass, copper and bronze without lacquer darken with use.',
  grout: 'It dries lighter than it looks wet: judge a dry piece.',
  paint: 'Keep a labeled can for repairs; paint from another batch may show.',
  glazed: 'Mix pieces from several boxes before they are set.',
  porcelain: 'Mix pieces from several boxes before they are set.',
  vinyl: 'Mix planks from several cartons before they are laid.',
};

export const careOf = (finish: Finish | null): readonly string[] => {
  const care = finish ? CARE[finish.class] : undefined;
  return care === undefined ? [] : [care];
};
