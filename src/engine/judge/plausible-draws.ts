import { mixedLab } from '../color/mixed-lab';
import type { Lab } from '../color/types';
import { averageComponent } from '../finish/average';
import { readingOf } from '../finish/uncertainty';
import { drawLab } from '../uncertainty/lab-error';
import type { InstalledReading, JudgedSurface } from './input';
import { type PlacedColor, placedAs } from './pairs';
import { recolored, type SampleColor } from './sample-color';
import { sourceDraws } from './source-draws';
import { mainReading } from './view-weights';

/** A finish under drawn errors: as a sample, and in one place. */
export interface DrawnFinish {
  readonly sample: Lab<'D65-2'>;
  readonly components: readonly Lab<'D65-2'>[];
  readonly average: Lab<'D65-2'>;
}

/** One set of colors that the finishes may have. */
export interface Draw {
  /** Sample colors by key. */
  readonly samples: ReadonlyMap<string, SampleColor>;
  /** The components on their surfaces, in the order given. */
  readonly placed: readonly PlacedColor[];
  /** The same with the drawn curves, but each sample's color as given: what the curves alone make of them. */
  readonly curvesOnly: () => readonly PlacedColor[];
  readonly read: (surface: JudgedSurface, reading: InstalledReading) => DrawnFinish;
}

/**
 * Sets of plausible colors. Errors of the sample are normal, their root mean square CIEDE2000 difference the component's
 * uncertainty; what one reading covers errs together (`readingOf`), and a finish errs the same on all its surfaces. In place
 * each finish follows one of the curves its color may have (`InstalledReading.variants`), all equally likely, and carries its
 * sample's error along. Same seed, same sets.
 */
export function* plausibleDraws(placed: readonly PlacedColor[], draws: number, seed: number): Generator<Draw> {
  const colors = new Map(placed.map((p) => [p.color.key, p.color]));
  const surfaces = new Map<JudgedSurface, NominalFinish>();
  for (const { surface } of placed) if (!surfaces.has(surface)) surfaces.set(surface, nominalFinish(surface, placed));
  const streams = new Map(
    [...seedNames([...colors.values()])].map(([source, name]) => [source, sourceDraws(name, draws, seed)]),
  );
  for (let d = 0; d < draws; d++) {
    const curves = new Map([...streams].map(([source, { picks }]) => [source, picks[d]!]));
    const samples = new Map<string, SampleColor>();
    for (const [key, color] of colors) {
      const { normals } = streams.get(errorSource(color))!;
      const error = [normals[3 * d]!, normals[3 * d + 1]!, normals[3 * d + 2]!] as const;
      samples.set(key, recolored(color, drawLab(color.lab, color.uncertaintyDe00, error, color.lightnessDe00)));
    }
    const readAs =
      (colors: ReadonlyMap<string, SampleColor>) =>
      (surface: JudgedSurface, reading: InstalledReading): DrawnFinish =>
        drawnFinish(surfaces.get(surface)!, reading, colors, curves);
    let curvesOnly: readonly PlacedColor[] | null = null;
    yield {
      samples,
      placed: drawnPlaces(placed, samples, readAs(samples)),
      curvesOnly() {
        curvesOnly ??= drawnPlaces(placed, colors, readAs(colors));
        return curvesOnly;
      },
      read: readAs(samples),
    };
  }
}

/** What one reading covers errs together: a finish's components read in the same way, wherever it lies; a grout by itself. */
const errorSource = (color: SampleColor): string =>
  color.role === 'grout' ? color.key : `${color.finish}|${readingOf(color)}`;

/**
 * By source, what its random numbers are seeded by: its colors, so that neither the name of a finish nor how roughly it is known
 * nor what else is in the scheme changes them. Two sources of the same colors err apart, in the order they come.
 */
function seedNames(colors: readonly SampleColor[]): Map<string, string> {
  const contents = new Map<string, string>();
  for (const color of colors) {
    const { l, a, b } = color.lab;
    const source = errorSource(color);
    contents.set(source, `${contents.get(source) ?? ''}#${color.role}:${l},${a},${b}`);
  }
  const seen = new Map<string, number>();
  return new Map(
    [...contents].map(([source, content]) => {
      const before = seen.get(content) ?? 0;
      seen.set(content, before + 1);
      return [source, before === 0 ? content : `${content}|${before}`];
    }),
  );
}

interface NominalFinish {
  readonly colors: readonly SampleColor[];
  /** Area shares, sum 1. */
  readonly weights: readonly number[];
  readonly sample: Lab<'D65-2'>;
}

function nominalFinish(surface: JudgedSurface, placed: readonly PlacedColor[]): NominalFinish {
  const { components } = surface.finish;
  const total = components.reduce((sum, c) => sum + c.share, 0);
  return {
    colors: placed.filter((p) => p.surface === surface).map((p) => p.color),
    weights: components.map((c) => c.share / total),
    sample: averageComponent(components).labD65,
  };
}

function drawnFinish(
  { colors, weights, sample }: NominalFinish,
  reading: InstalledReading,
  samples: ReadonlyMap<string, SampleColor>,
  curves: ReadonlyMap<string, number>,
): DrawnFinish {
  const own = colors.map(({ key }) => samples.get(key)!.lab);
  const components = colors.map((color, i): Lab<'D65-2'> => {
    const variants = reading.variants?.[i] ?? [reading.components[i] ?? reading.average];
    const variant = variants[Math.floor(curves.get(errorSource(color))! * variants.length)]!;
    return plus(variant, minus(own[i]!, color.lab));
  });
  const nominal = colors.map((_, i) => reading.components[i] ?? reading.average);
  return {
    sample: plus(
      sample,
      change(
        own,
        colors.map((c) => c.lab),
        weights,
      ),
    ),
    components,
    average: plus(reading.average, change(components, nominal, weights)),
  };
}

function drawnPlaces(
  placed: readonly PlacedColor[],
  samples: ReadonlyMap<string, SampleColor>,
  read: Draw['read'],
): PlacedColor[] {
  const finishes = new Map<JudgedSurface, { reading: InstalledReading; drawn: DrawnFinish } | null>();
  const seen = new Map<JudgedSurface, number>();
  return placed.map(({ surface, color }) => {
    let there = finishes.get(surface);
    if (there === undefined) {
      const reading = mainReading(surface);
      there = reading && { reading, drawn: read(surface, reading) };
      finishes.set(surface, there);
    }
    const i = seen.get(surface) ?? 0;
    seen.set(surface, i + 1);
    const drawn = { ...samples.get(color.key)!, share: color.share };
    return placedAs(surface, drawn, there && { reading: there.reading, raw: there.drawn.components[i] });
  });
}

type Step = Lab<'D65-2'>;

const plus = (lab: Lab<'D65-2'>, by: Step): Lab<'D65-2'> => ({ l: lab.l + by.l, a: lab.a + by.a, b: lab.b + by.b });
const minus = (to: Lab<'D65-2'>, from: Lab<'D65-2'>): Step => ({
  l: to.l - from.l,
  a: to.a - from.a,
  b: to.b - from.b,
});

/** How far the area mean moves when the parts do; means are of light, as parts mix from afar. */
function change(to: readonly Lab<'D65-2'>[], from: readonly Lab<'D65-2'>[], weights: readonly number[]): Step {
  return minus(mixedLab(to, weights), mixedLab(from, weights));
}
