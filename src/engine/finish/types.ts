import type { Lab } from '../color/types';
import type { ReflectanceSpd } from '../spectrum/types';
import type { Specular } from './given-color';

export const FINISH_CLASSES = [
  'paint',
  'stone',
  'engineered',
  'solid surface',
  'laminate',
  'wood',
  'vinyl',
  'glazed',
  'porcelain',
  'glass',
  'metal',
  'grout',
] as const;

export type FinishClass = (typeof FINISH_CLASSES)[number];

/** How a colour came to be known; it sets how far it can be trusted. */
export type Provenance = 'measured' | 'declared' | 'photo-with-card' | 'photo' | 'by-eye' | 'screen';

export type ComponentRole =
  | 'base'
  | 'vein'
  | 'fleck'
  | 'grain'
  | 'cleft'
  | 'pool'
  | 'thread'
  | 'shade'
  | 'cloud'
  | 'grout';

/**
 * One colour component of a finish, ready to compute with.
 * `share` is the area share in its surface (0-1, shares of a surface sum to 1).
 */
export interface FinishComponent {
  readonly role: ComponentRole;
  readonly share: number;
  readonly labD65: Lab<'D65-2'>;
  readonly spectrum: ReflectanceSpd;
  /** Where the spectrum comes from: a measurement, or a plausible curve of the same colour. */
  readonly spectrumSource: 'measured' | 'lhtss' | 'sigmoid';
  readonly provenance: Provenance;
  /** Root mean square of the whole colour difference between what is said and what is, CIEDE2000 units. */
  readonly uncertaintyDe00: number;
  /** The part of lightness in that, where it is known apart: from a light reflectance value; absent otherwise. */
  readonly lightnessDe00?: number;
  /** What the spectrum counts of the mirror-like reflection; absent where nobody said. */
  readonly specular?: Specular;
  /** Class of the material the component is made of; absent: that of the finish it belongs to. */
  readonly finishClass?: FinishClass;
}

/** A finish as laid on one surface (grout included as a component), ready to compute with. */
export interface LaidFinish {
  readonly id: string;
  readonly label: string;
  readonly class: FinishClass;
  /** Gloss units at 60 degrees (ISO 2813). */
  readonly glossGu: number;
  /** One to four components; the order is the order of the pattern's weight channels. */
  readonly components: readonly FinishComponent[];
  /** Size of its figure, or of its pieces where joints draw them, mm; absent where it has none or it is not known. */
  readonly figureMm?: number;
  /** How far its pieces differ from one another, standard deviation in CIEDE2000 units; absent where nobody said. */
  readonly pieceSigmaDe00?: number;
}
