import type { SurfaceId } from '../../surface';
import { BUSY } from '../busy-patterns';
import { faultCode, isAssurance } from '../claims';
import { MINOR_SHARE } from '../component-record';
import { bowmanSapolinski, EDGE } from '../edges';
import { WOODS } from '../near-woods';
import { AS_INSTALLED, AS_SAMPLE, oneDecimal, percent } from '../number-words';
import { PAIR } from '../pair';
import { faultSentence } from '../pair-sentences';
import { pairWhy } from '../pair-why';
import { componentPhrase, joined, lowerFirst, surfacesPhrase } from '../surface-words';
import { WHITES } from '../whites';
import { faultHoldsAtLeast } from './firmly';
import type { InPlace } from './in-place';
import { type Bearing, heldFinishes, mainOf, type Relation, relationOf, sampleSide, spokenOf } from './relations';
import type { Ranking } from './shortlist';
import type { Standing } from './standing';
import type { ShortlistPlace } from './types';

/** One thing there is to say of a candidate beside something settled. */
export interface WhyPoint {
  /** What follows from it: see `Bearing`; an edge only ranks, and so does what may be in place. */
  readonly kind: Bearing | 'edge' | 'in-place' | 'material' | 'not-made';
  readonly beside: readonly SurfaceId[];
  /** The first setting it shows in; null: as a sample. */
  readonly setting: string | null;
  readonly text: string;
  /** The numbers and their conditions. */
  readonly why: string;
}

/**
 * Everything there is to say for and against one candidate, gravest first: every component against every settled one, also where it says
 * nothing, and every edge. Null where it is no candidate.
 * @param places what it shows in its place, as far as that is known
 */
export function whyPoints(
  { asked, held, standings }: Ranking,
  finish: string,
  places: readonly InPlace[] = [],
): readonly WhyPoint[] | null {
  const standing = standings.find(({ candidate }) => candidate.finish.id === finish);
  if (!standing) return null;
  const finishes = heldFinishes(held);
  const { colors } = standing.candidate;
  const main = mainOf(colors);
  const points = finishes
    .filter((one) => one.finish !== finish)
    .flatMap((one) =>
      colors.flatMap((own, i) =>
        one.colors.flatMap((other, j) => {
          const areMain = i === main && j === one.main;
          const isMinor = own.share < MINOR_SHARE || other.share < MINOR_SHARE;
          if (own.key === other.key || isMinor) return [];
          const relation = relationOf(sampleSide(own), sampleSide(other), areMain, one);
          // Parts that say nothing are many; that main colors say nothing is an answer.
          return areMain || relation.judgment.verdict !== 'none' ? [pointOf(relation, asked.place)] : [];
        }),
      ),
    );
  return [
    ...notMadePoints(standing),
    ...points,
    ...materialWhys(standing),
    ...edgePoints(standing, held),
    ...inPlacePoints(places, asked.place),
  ].sort((x, y) => KINDS.indexOf(x.kind) - KINDS.indexOf(y.kind));
}

const KINDS: readonly WhyPoint['kind'][] = [
  'not-made',
  'rejects',
  'in-place',
  'may',
  'part',
  'material',
  'agrees',
  'echoes',
  'matches',
  'none',
  'edge',
];

const notMadePoints = ({ candidate: { notMade } }: Standing): WhyPoint[] =>
  notMade === null
    ? []
    : [
        {
          kind: 'not-made',
          beside: [],
          setting: null,
          text: notMade,
          why: 'What is usual for the place (common practice, no source).',
        },
      ];

const materialWhys = ({ materials }: Standing): WhyPoint[] =>
  materials.map(({ kind, surfaces, text }) => ({
    kind: 'material',
    beside: surfaces,
    setting: null,
    text,
    why:
      kind === 'pattern'
        ? `Busy from ${BUSY.spread} CIEDE2000 by which colors stray from their mean, in figures from ${BUSY.figureMm} mm, less than ${BUSY.sizesApart} times apart in size (our judgment); that one pattern leads is common practice, no source.`
        : `Area means over ${WOODS.alike} (Paravina et al. 2015) and under ${WOODS.different} CIEDE2000 apart, less than ${WOODS.step} L* (our judgment); that woods match or differ clearly is common practice, no source.`,
  }));

function pointOf(relation: Relation, { surfaces }: ShortlistPlace): WhyPoint {
  const { judgment, bearing, held, own, other } = relation;
  const common = { kind: bearing, beside: held.surfaces, setting: null };
  const there = componentPhrase(other === held.colors[held.main] ? 'base' : other.role, held.spoken);
  const a = sampleSide(own);
  const b = sampleSide(other);
  if (faultCode(judgment.verdict)) {
    const known = `By what is known of both colors it holds in ${caseWords(faultHoldsAtLeast(judgment, a, b))} cases.`;
    return {
      ...common,
      text: faultSentence(
        judgment,
        own,
        spokenOf(surfaces),
        other,
        held.spoken,
        bearing !== 'rejects' && bearing !== 'part',
      ),
      why: `${pairWhy(judgment, AS_SAMPLE)} ${known}`,
    };
  }
  const n = judgment.numbers;
  const numbers = `${oneDecimal(judgment.de00)} CIEDE2000 and L* ${oneDecimal(n['d_l']!)} apart`;
  const hue =
    n['hue_apart_deg'] === undefined
      ? ''
      : `, hues ${Math.round(n['hue_apart_deg'])} degrees apart (related to ${PAIR.echoHueMax}, opposed from ${PAIR.opposedHueMin})`;
  const whiteness =
    n['d_wid'] === undefined ? '' : `, whiteness WID ${oneDecimal(n['d_wid'])} apart (limit ${WHITES.whitenessLimit})`;
  return { ...common, text: plainText(relation, there.text), why: `${numbers}${hue}${whiteness}, ${AS_SAMPLE}.` };
}

/** A share of plausible errors, a lower bound. */
const caseWords = (atLeast: number): string =>
  atLeast >= 0.995 ? 'nearly all' : atLeast > 0 ? `at least ${percent(atLeast)} of the` : 'too few';

/** Opposed hues of which one is a color of its own: no fault by the rules, and not nothing either. */
const isMeantContrast = ({ verdict, numbers }: Relation['judgment']): boolean =>
  verdict === 'none' &&
  numbers['hue_apart_deg']! >= PAIR.opposedHueMin &&
  numbers['strength_weaker']! >= PAIR.namedStrength &&
  numbers['strength_stronger']! >= PAIR.colorStrength;

function plainText({ bearing, judgment }: Relation, there: string): string {
  switch (bearing) {
    case 'agrees':
      return `Its white agrees with that of ${there}.`;
    case 'echoes':
      return `It echoes the hue of ${there}.`;
    case 'matches':
      return `It matches ${there}.`;
    case 'may':
      return isAssurance(judgment.verdict)
        ? `It may go with ${there}; the numbers do not settle it.`
        : `It may lean another way than ${there}.`;
    default:
      if (isMeantContrast(judgment))
        return `Its hue is opposite that of ${there}, but one of them is a color of its own: that looks meant.`;
      return judgment.verdict === 'none'
        ? `Beside ${there} it is neither related nor opposed.`
        : `What it has with ${there} is not sure enough to count.`;
  }
}

function edgePoints({ edges, candidate }: Standing, held: Ranking['held']): WhyPoint[] {
  return edges.map(({ surface, points, level }) => {
    const other = held.find((one) => one.surface === surface)!;
    const how = ['is easy to see', 'is soft', 'may be hard to see'][level]!;
    return {
      kind: 'edge',
      beside: [surface],
      setting: null,
      text: `The edge to ${surfacesPhrase([surface]).text} ${how}.`,
      why:
        `Light reflectance ${oneDecimal(candidate.lrv)} against ${oneDecimal(other.lrv)}, ${oneDecimal(points)} points apart, area means, ` +
        `D65, 10 degree (BS 8300-2, written for buildings other than homes, wants ${EDGE.wanted}; ${EDGE.least} may do in good light); ` +
        `Bowman-Sapolinski contrast ${Math.round(bowmanSapolinski(candidate.lrv, other.lrv))}% (30 wanted).`,
    };
  });
}

/** One point for a fault, with all settings it shows in. */
function inPlacePoints(places: readonly InPlace[], { surfaces }: ShortlistPlace): WhyPoint[] {
  const bySentence = new Map<string, { names: string[]; point: WhyPoint }>();
  for (const { setting, settingName, faults } of places) {
    for (const {
      pair: { a, b, tintOff },
      surfaces: beside,
      isFirm,
    } of faults) {
      const text = faultSentence(tintOff, a.color, spokenOf(surfaces), b.color, beside, !isFirm);
      const before = bySentence.get(text);
      if (before) {
        before.names.push(settingName);
        continue;
      }
      const why =
        `${pairWhy(tintOff, AS_INSTALLED)} The tint of each place is taken off.` +
        (isFirm ? '' : ' How a finish behaves in this light is guessed from its color.');
      bySentence.set(text, {
        names: [settingName],
        point: { kind: isFirm ? 'rejects' : 'in-place', beside, setting, text, why },
      });
    }
  }
  return [...bySentence.values()].map(({ names, point }) => ({
    ...point,
    text: `In place, in ${joined(names.map((name) => `“${name}”`))}: ${lowerFirst(point.text)}`,
    why: names.length > 1 ? `In “${names[0]}”: ${lowerFirst(point.why)}` : point.why,
  }));
}
