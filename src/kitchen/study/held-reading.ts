import { differenceCiede2000 } from '../../engine/color/difference';
import { apply } from '../../engine/color/matrix3';
import { pictureSrgb8 } from '../../engine/color/picture-light';
import { xyzFromEmission } from '../../engine/color/xyz';
import type { ComponentRole, LaidFinish } from '../../engine/finish/types';
import type { PairVerdict } from '../../engine/judge/assessment';
import { isWithheld } from '../../engine/judge/cannot-tell';
import { leanWord } from '../../engine/judge/lean-word';
import { judgePair } from '../../engine/judge/pair';
import { sampleColor } from '../../engine/judge/sample-color';
import type { DirectMap } from '../../engine/light/direct-map';
import { irradianceSpectrum } from '../../engine/light/reading';
import type { PatternSample } from '../../engine/pattern/sample';
import { emissionSpd } from '../../engine/spectrum/grid';
import { observer2 } from '../../engine/spectrum/observers';
import type { SurfaceId } from '../../engine/surface';
import type { Finish, Placement, Project } from '../../model/project';
import type { ByLayer } from '../look';
import type { SeenBy } from '../seen-by';
import { exposureMatrix } from './exposure';
import { type ComparisonWhite, laidWhite } from './held-whites';
import { laidSample } from './lay-sample';
import type { LitScheme } from './lit-scheme';
import { localExposure } from './local-exposure';
import { type KeyedPattern, patternSpecFor } from './pattern-spec';
import { placeColors } from './place-colors';
import { lightOnRect } from './place-light';
import type { RoomBasis } from './room-study';
import { adoptedWhite, type SettingLight } from './setting-light';

type Triple = readonly [number, number, number];

/** What is held beside a surface: a comparison white, or a finish of the library. */
export type HeldChoice =
  | { readonly kind: 'white'; readonly id: ComparisonWhite }
  | { readonly kind: 'finish'; readonly id: string };

/** A card of a finish held against a surface, in the light of the place. */
export interface HeldReading {
  readonly choice: HeldChoice;
  readonly label: string;
  /** Of the card: width and height as it is held, m. */
  readonly size_m: readonly [width: number, height: number];
  readonly components: readonly {
    readonly role: ComponentRole;
    readonly share: number;
    readonly lab_d65: Triple;
    /** As the picture shows it there: linear sRGB, 1 = display white; and encoded. */
    readonly linear: Triple;
    readonly srgb8: Triple;
  }[];
  /** Where the components lie; null for one plain color. */
  readonly pattern: KeyedPattern | null;
  /** What runs along s in the pattern runs up the card: grain, on sheets of wood. */
  readonly grainUp: boolean;
  readonly surface: SurfaceId;
  /** The chief component of the card, and the one the surface shows at the place. */
  readonly compared: readonly [held: ComponentRole, surface: ComponentRole];
  readonly surface_lab_d65: Triple;
  readonly de00: number;
  readonly verdict: PairVerdict;
  /** Which of the two the verdict is about; null where it is about both. */
  readonly faulty: 'held' | 'surface' | null;
  /** How the card looks beside the surface. */
  readonly held_looks: string;
}

/** Cards as they are handed out; tiles up to this are held whole, boards and sheets are cut to it (common practice, no source), m. */
const CARD_M: readonly [number, number] = [0.1, 0.15];
const LARGEST_M = 0.3;
/** Below this it is dark. */
const DARK_LX = 0.01;

/** What reads a place: `place` is what the pattern of the surface has there. */
export interface HeldPlace {
  readonly rect: number;
  readonly u: number;
  readonly v: number;
  readonly place: PatternSample | null;
}

/**
 * A white or a finish held at a place of a surface, facing as it does: its colors in the light there, and what they make of each
 * other. The card is too small to change that light. Null where it is black, dark or not lit yet, or where there is no such finish.
 */
export function readHeld(
  project: Pick<Project, 'library'>,
  basis: RoomBasis,
  lit: LitScheme,
  setting: SettingLight,
  maps: ByLayer<DirectMap>,
  { rect, u, v, place }: HeldPlace,
  choice: HeldChoice,
  seenBy: SeenBy,
): HeldReading | null {
  const light = lightOnRect(basis, lit, setting, maps, rect, u, v);
  const laid = light && lit.solved.scheme.surfaces[light.surface];
  const card = cardOf(project, choice);
  if (!light || !laid || laid.surface === 'stand' || !card) return null;
  const irradiance = irradianceSpectrum(setting.spectra, setting.levels, light.direct, light.indirect);
  if (xyzFromEmission(irradiance, observer2).y < DARK_LX) return null;
  const labOf = placeColors(irradiance, adoptedWhite(setting, basis.worktopLight));
  const exposure = exposureMatrix(basis, setting, seenBy);
  const over = localExposure(setting, exposure, light.direct);
  const components = card.finish.components.map(({ role, share, spectrum }) => {
    const { x, y, z } = xyzFromEmission(emissionSpd(irradiance.map((e, i) => e * spectrum[i]!)), observer2);
    const [r, g, b] = apply(exposure, [x / over, y / over, z / over]);
    const { l, a, b: yellow } = labOf(spectrum);
    return {
      role,
      share,
      lab_d65: [l, a, yellow] as const,
      linear: [r, g, b] as const,
      srgb8: pictureSrgb8({ r, g, b }),
    };
  });

  const own = largest(card.finish.components.map(({ share }) => share));
  const there = Math.min(largest(place?.weights ?? [1]), laid.finish.components.length - 1);
  const surface = laid.finish.components[there]!;
  const [heldLab, surfaceLab] = [labOf(card.finish.components[own]!.spectrum), labOf(surface.spectrum)];
  const held = { color: sampleColor(laid.surface, card.finish, own), lab: heldLab };
  const beside = { color: sampleColor(laid.surface, laid.finish, there), lab: surfaceLab };
  const judgment = judgePair(held, beside, { anchorY: null });
  return {
    choice,
    label: card.finish.label,
    size_m: card.size_m,
    components,
    pattern: card.pattern,
    grainUp: card.grainUp,
    surface: laid.surface,
    compared: [card.finish.components[own]!.role, surface.role],
    surface_lab_d65: [surfaceLab.l, surfaceLab.a, surfaceLab.b],
    de00: differenceCiede2000(heldLab, surfaceLab),
    verdict: isWithheld(judgment, held, beside) ? 'cannot-tell' : judgment.verdict,
    faulty: judgment.faulty && (judgment.faulty === 'a' ? 'held' : 'surface'),
    held_looks: leanWord(surfaceLab, heldLab),
  };
}

interface Card {
  readonly finish: LaidFinish;
  readonly size_m: readonly [number, number];
  readonly pattern: KeyedPattern | null;
  readonly grainUp: boolean;
}

const AS_SAMPLE: Omit<Placement, 'finish'> = { state: 'open', laying: { layout: 'plain' } };

function cardOf(project: Pick<Project, 'library'>, choice: HeldChoice): Card | null {
  if (choice.kind === 'white') return { finish: laidWhite(choice.id), size_m: CARD_M, pattern: null, grainUp: false };
  const finish = project.library.find(({ id }) => id === choice.id);
  const laid = finish && laidSample(project, choice.id);
  if (!finish || !laid?.ok) return null;
  const pattern = patternSpecFor(finish, { ...AS_SAMPLE, finish: finish.id }, laid.value);
  const grainUp = finish.pattern.kind === 'grain' && !finish.piece_mm;
  return { finish: laid.value, size_m: sizeOf(finish), pattern, grainUp };
}

const sizeOf = ({ piece_mm }: Finish): readonly [number, number] =>
  piece_mm ? [Math.min(LARGEST_M, piece_mm[0] / 1000), Math.min(LARGEST_M, piece_mm[1] / 1000)] : CARD_M;

const largest = (values: readonly number[]): number => values.indexOf(Math.max(...values));
