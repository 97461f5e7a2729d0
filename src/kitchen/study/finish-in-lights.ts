import { labUnder } from '../../engine/change/lab-under';
import { metamerismIndex } from '../../engine/change/metamerism';
import { type MatchVerdict, pairUnder } from '../../engine/change/pair-under';
import { changeOf, type LightChange, type ShiftVerdict, shiftUnder } from '../../engine/change/shift-under';
import { differenceCiede2000 } from '../../engine/color/difference';
import { averageComponent } from '../../engine/finish/average';
import type { ComponentRole, FinishComponent, LaidFinish } from '../../engine/finish/types';
import { readingOf } from '../../engine/finish/uncertainty';
import type { ComponentRecord, LabTriple } from '../../engine/judge/assessment';
import { combinedUncertainty } from '../../engine/judge/cannot-tell';
import { averageRecord, componentRecord, labTriple } from '../../engine/judge/component-record';
import { undertoneOf } from '../../engine/naming/undertone';
import { plausibleCurves } from '../../engine/plausible/curves';
import { GRID_COUNT } from '../../engine/spectrum/grid';
import type { ReflectanceSpd } from '../../engine/spectrum/types';
import { estimatesBetween } from '../../engine/uncertainty/estimates';
import type { UncertainLab } from '../../engine/uncertainty/propagate';
import { type DaylightMatch, daylightMatch, pairSentence } from './pair-in-lights';
import type { WorktopLight } from './worktop-lights';

/** A finish under each light, for `upstand shift` and the reading. Field names are the file format's. */
export interface FinishInLights {
  readonly finish: string;
  readonly label: string;
  /** Under D65: its components and their area mean, as in the assessment. */
  readonly components: readonly ComponentRecord[];
  readonly average: ComponentRecord;
  readonly lights: readonly FinishUnderLight[];
  readonly beside: PairInLights | null;
}

interface LightRecord {
  readonly kind: WorktopLight['kind'];
  readonly id: string;
  readonly name: string;
  readonly cct_k: number | null;
  readonly duv: number | null;
}

export interface FinishUnderLight extends LightRecord {
  readonly average: ColorUnderLight;
  readonly components: readonly ColorUnderLight[];
}

/** A color under a light to an eye used to it (CAT16, D = 1): what is left is what the light does to this color alone. */
export interface ColorUnderLight {
  readonly role: ComponentRole | 'average';
  readonly lab_d65: LabTriple;
  readonly name: string;
  /** CIEDE2000 from D65, by the curve computed with. */
  readonly shift_de00: number;
  /** The same at the 5th and 95th percentile of all curves the color may have; equal where the spectrum was measured. */
  readonly shift_from_to_de00: readonly [p05: number, p95: number];
  readonly verdict: ShiftVerdict;
}

/** The chief components of two finishes, side by side under each light. */
export interface PairInLights {
  readonly finish: string;
  readonly label: string;
  readonly average: ComponentRecord;
  readonly compared: readonly [own: ComponentRole, other: ComponentRole];
  readonly de00_d65: number;
  /** How far the two colors are known together, root mean square: a smaller difference tells nothing. */
  readonly uncertainty_de00: number;
  /** Root mean square error of the difference itself. */
  readonly difference_error_de00: number;
  readonly by_day: DaylightMatch;
  readonly lights: readonly PairUnderLight[];
  /** The answer in words. */
  readonly sentence: string;
}

export interface PairUnderLight extends LightRecord {
  readonly de00: number;
  /** At the 5th and 95th percentile of all curves the two colors may have. */
  readonly de00_from_to: readonly [p05: number, p95: number];
  /** Special index for a change of illuminant from D65 (CIE 15), CIEDE2000, 2 degree; null unless they match by day and both are measured. */
  readonly metamerism_index: number | null;
  readonly verdict: MatchVerdict;
}

/** What each light does to a finish, and to how it goes with another. Quick once the curves of the finishes are known. */
export function finishInLights(
  finish: LaidFinish,
  lights: readonly WorktopLight[],
  beside: LaidFinish | null = null,
): FinishInLights {
  const curves = finish.components.map((component) => plausibleCurves(component, finish.class));
  const mixed = mixedCurves(finish.components, curves);
  const average = averageComponent(finish.components).labD65;
  return {
    finish: finish.id,
    label: finish.label,
    components: finish.components.map(componentRecord),
    average: averageRecord(finish.components),
    lights: lights.map((light) => ({
      ...recordOf(light),
      average: colorUnder(
        'average',
        changeOf(
          average,
          mixed.map((rho) => labUnder(rho, light.spd)),
        ),
      ),
      components: finish.components.map((c) => colorUnder(c.role, shiftUnder(c, finish.class, light.spd))),
    })),
    beside: beside && pairInLights(finish, beside, lights),
  };
}

const recordOf = ({ kind, id, name, cct_k, duv }: WorktopLight): LightRecord => ({ kind, id, name, cct_k, duv });

const colorUnder = (role: ColorUnderLight['role'], { lab, de00, shifts, verdict }: LightChange): ColorUnderLight => ({
  role,
  lab_d65: labTriple(lab),
  name: undertoneOf(lab).name,
  shift_de00: de00,
  shift_from_to_de00: [shifts.p05, shifts.p95],
  verdict,
});

/**
 * Curves of the area mean. The parts of a finish are taken to be made alike, so that each follows its curve of one number;
 * what was read otherwise, as a grout, goes its own way: every number of the one with every number of the other.
 */
function mixedCurves(
  components: readonly FinishComponent[],
  curves: readonly (readonly ReflectanceSpd[])[],
): ReflectanceSpd[] {
  const total = components.reduce((sum, c) => sum + c.share, 0);
  const sources = [...new Set(components.map(readingOf))];
  const counts = sources.map((source) =>
    Math.max(...curves.filter((_, c) => readingOf(components[c]!) === source).map((family) => family.length)),
  );
  const strides = counts.map((_, s) => counts.slice(0, s).reduce((product, count) => product * count, 1));
  const count = counts.reduce((product, own) => product * own, 1);
  return Array.from({ length: count }, (_, combination) => {
    const mean = new Float64Array(GRID_COUNT);
    components.forEach((component, c) => {
      const s = sources.indexOf(readingOf(component));
      const member = Math.floor(combination / strides[s]!) % counts[s]!;
      // A measured part has one curve, whichever the others follow.
      const rho = curves[c]![member % curves[c]!.length]!;
      for (let i = 0; i < GRID_COUNT; i++) mean[i] = mean[i]! + (component.share / total) * rho[i]!;
    });
    return mean as ReflectanceSpd;
  });
}

function pairInLights(own: LaidFinish, other: LaidFinish, lights: readonly WorktopLight[]): PairInLights {
  const [a, b] = [chief(own), chief(other)];
  const de00 = differenceCiede2000(a.labD65, b.labD65);
  const uncertainty = own.id === other.id ? 0 : combinedUncertainty(a, b);
  const byDay = daylightMatch(de00, uncertainty);
  const measured = own.id === other.id || (a.spectrumSource === 'measured' && b.spectrumSource === 'measured');
  const under = lights.map((light): PairUnderLight => {
    const pair = pairUnder(
      { component: a, finishClass: own.class },
      { component: b, finishClass: other.class },
      light.spd,
    );
    return {
      ...recordOf(light),
      de00: pair.de00,
      de00_from_to: [pair.differences.p05, pair.differences.p95],
      // Of guessed curves, the smoothest ones, it would say nothing of the finishes.
      metamerism_index: measured && byDay === 'match' ? metamerismIndex(a.spectrum, b.spectrum, light.spd) : null,
      verdict: byDay === 'match' ? pair.verdict : byDay,
    };
  });
  return {
    finish: other.id,
    label: other.label,
    average: averageRecord(other.components),
    compared: [a.role, b.role],
    de00_d65: de00,
    uncertainty_de00: uncertainty,
    by_day: byDay,
    lights: under,
    difference_error_de00: estimatesBetween(readingIn(own, a), readingIn(other, b)).de00.sigma,
    sentence: pairSentence({ match: byDay, de00, uncertainty, measured }, under),
  };
}

/** Parts of one finish known the same way err together. */
const readingIn = (finish: LaidFinish, component: FinishComponent): UncertainLab => ({
  lab: component.labD65,
  u: component.uncertaintyDe00,
  lightness: component.lightnessDe00,
  source: `${finish.id} ${readingOf(component)}`,
});

/** What one holds beside another sample: the component of the largest share. */
const chief = ({ components }: LaidFinish): FinishComponent =>
  components.reduce((most, c) => (c.share > most.share ? c : most));
