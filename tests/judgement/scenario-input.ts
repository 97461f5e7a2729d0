import { whiteOf } from '../../src/engine/color/xyz';
import { averageComponent } from '../../src/engine/finish/average';
import { finishComponent } from '../../src/engine/finish/component';
import type { GivenColor } from '../../src/engine/finish/given-color';
import type {
  ComponentRole,
  FinishClass,
  FinishComponent,
  LaidFinish,
  Provenance,
} from '../../src/engine/finish/types';
import type { InstalledReading, JudgedSurface, JudgeInput } from '../../src/engine/judge/input';
import { plausibleCurves } from '../../src/engine/plausible/curves';
import { lightById, perLux } from '../../src/engine/spectrum/lights';
import { observer2 } from '../../src/engine/spectrum/observers';
import type { SurfaceId } from '../../src/engine/surface';
import { placeColors } from '../../src/kitchen/study/place-colors';
import { COLOR_CHECKER } from '../vectors/color-checker.data';
import { metamericTo } from './metamers';
import type { Scenario, ScenarioPlace } from './scenario';
import { type Row, scheme, tinted } from './schemes';

/**
 * A finish in words: its class, then parts "role share color", then what is known of it, by semicolons. A color is
 * "L* a* b*" (D65, 2 degree), "munsell 5Y 8/2", "checker white" (a measured chart patch) or "metamer L* a* b*" (a measured
 * spectrum of that color that parts from the usual one under lamps). "known by-eye" says how, "rms 2" how far (CIEDE2000);
 * unsaid: declared. "figure 7" is the size of its figure in mm, "boards 1" how far its pieces differ (one standard deviation, CIEDE2000).
 * "stone; base .9 82 1 8; vein .1 60 0 2; known measured".
 */
function finishFrom(id: string, text: string): LaidFinish {
  const [kind, ...clauses] = text.split(';').map((part) => part.trim());
  const said = (word: string) => clauses.find((c) => c.startsWith(`${word} `))?.slice(word.length + 1);
  const provenance = (said('known') ?? 'declared') as Provenance;
  const rms = said('rms');
  const figure = said('figure');
  const boards = said('boards');
  const parts = clauses.filter((c) => !/^(known|rms|figure|boards) /.test(c));
  return {
    id,
    label: id,
    class: kind as FinishClass,
    glossGu: 20,
    ...(figure !== undefined && { figureMm: Number(figure) }),
    ...(boards !== undefined && { pieceSigmaDe00: Number(boards) }),
    components: parts
      .map((part) => componentFrom(part, kind as FinishClass, provenance))
      .map((c): FinishComponent => (rms === undefined ? c : { ...c, uncertaintyDe00: Number(rms) })),
  };
}

function componentFrom(text: string, finishClass: FinishClass, provenance: Provenance): FinishComponent {
  const [role, share, ...color] = text.split(/\s+/);
  const isMetamer = color[0] === 'metamer';
  const made = finishComponent({
    role: role as ComponentRole,
    share: Number(share),
    color: colorFrom(isMetamer ? color.slice(1) : color),
    finishClass,
    provenance,
  });
  if (!made.ok) throw new Error(`${text}: ${made.problem.text}`);
  if (!isMetamer) return made.value;
  const one: LaidFinish = { id: '', label: '', class: finishClass, glossGu: 20, components: [made.value] };
  return metamericTo(one, 0.7).components[0]!;
}

function colorFrom(words: readonly string[]): GivenColor {
  if (words[0] === 'munsell') return { kind: 'munsell', munsell: words.slice(1).join(' ') };
  if (words[0] === 'checker') {
    const name = words.slice(1).join(' ');
    const patch =
      COLOR_CHECKER.find((one) => one.patch === name) ?? COLOR_CHECKER.find((one) => one.patch.startsWith(`${name} `));
    if (!patch) throw new Error(`no patch ${words.join(' ')}`);
    return { kind: 'spectrum', start_nm: 380, step_nm: 5, reflectance: [...patch.reflectance] };
  }
  const [l, a, b] = words.map(Number);
  return { kind: 'lab', lab: [l!, a!, b!], illuminant: 'D65', observer_deg: 2 };
}

/** What a scenario gives the judge. */
export function inputOf(scenario: Scenario, finishes: Readonly<Record<string, string>>): JudgeInput {
  const made = new Map<string, LaidFinish>();
  const laid = (name: string): LaidFinish => {
    const known = made.get(name) ?? finishFrom(name, finishes[name] ?? name);
    made.set(name, known);
    return known;
  };
  const rows = Object.entries(scenario.scheme).map(
    ([surface, name]): Row => [surface as SurfaceId, laid(name), ...(scenario.seen?.[surface as SurfaceId] ?? [])],
  );
  const plain = scheme(rows, scenario.id);
  return {
    ...plain,
    lights: scenario.lights ?? 'one',
    ...(scenario.low_vision && { lowVision: true }),
    surfaces: plain.surfaces.map((s): JudgedSurface => {
      const read = (reading: InstalledReading) => inLight(s, reading, scenario);
      const meets = meetsIn(s.surface, plain.surfaces, scenario);
      return { ...s, ...meets, state: scenario.states?.[s.surface] ?? 'open', installed: s.installed.map(read) };
    }),
  };
}

/** Nothing, as if nobody had looked, unless the scenario says what touches or is apart. */
function meetsIn(
  of: SurfaceId,
  all: readonly JudgedSurface[],
  { touching, apart }: Scenario,
): Pick<JudgedSurface, 'meets'> {
  if (!touching && !apart) return {};
  const isAmong = (pairs: Scenario['touching'] = [], other: SurfaceId) =>
    pairs.some(([a, b]) => (a === of && b === other) || (b === of && a === other));
  const others = all.map(({ surface }) => surface).filter((one) => one !== of && !isAmong(apart, one));
  return {
    meets: Object.fromEntries(
      others.map((one) => [one, isAmong(touching, one) ? ('adjacent' as const) : ('together' as const)]),
    ),
  };
}

function inLight(s: JudgedSurface, reading: InstalledReading, { lamp, places }: Scenario): InstalledReading {
  const lit = lamp === undefined ? reading : underLamp(s.finish, reading, lamp);
  const place = places?.[s.surface];
  return place ? inPlace(lit, place) : lit;
}

/** The reading under one lamp, by every curve that its colors may have. */
function underLamp(finish: LaidFinish, reading: InstalledReading, lamp: string): InstalledReading {
  const light = lightById(lamp);
  if (!light) throw new Error(`no light ${lamp}`);
  const spd = perLux(light);
  const read = placeColors(spd, whiteOf(spd, observer2));
  return {
    ...reading,
    components: finish.components.map((c) => read(c.spectrum)),
    average: read(averageComponent(finish.components).spectrum),
    variants: finish.components.map((c) => plausibleCurves(c, finish.class).map(read)),
  };
}

function inPlace(reading: InstalledReading, place: ScenarioPlace): InstalledReading {
  const [a, b] = place.white ?? place.light_white ?? [0, 0];
  const white = { l: 100, a, b };
  const [la, lb] = place.light_white ?? [0, 0];
  return {
    ...reading,
    illuminanceLx: place.lux ?? reading.illuminanceLx,
    luxMin: place.lux ?? reading.luxMin,
    placeWhite: white,
    lightWhite: { l: 100, a: la, b: lb },
    components: reading.components.map((lab) => tinted(lab, white)),
    average: tinted(reading.average, white),
    ...(reading.variants && { variants: reading.variants.map((all) => all.map((lab) => tinted(lab, white))) }),
    tintFrom: Object.entries(place.from ?? {}).map(([surface, share]) => ({ surface: surface as SurfaceId, share })),
  };
}
