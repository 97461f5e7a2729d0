import { type Beside, counterBeside, onCounter } from './clearances/counter-beside';
import {
  ACCESSIBLE_COUNTER,
  ACCESSIBLE_PASSAGE,
  ACROSS,
  BEHIND_SEATS,
  FRONTAGE,
  KNEE_DEPTHS,
  LANDING,
  PREP_WIDTH,
  SEAT_WIDTH,
  STONE_OVERHANG,
  TRIANGLE,
  WALKWAY,
  WORK_AISLE,
} from './clearances/figures';
import { distance, type Passage, passagesOf } from './clearances/passages';
import type { ClearanceCode, ClearanceHint, ClearanceSource, Stretch } from './clearances/types';
import { fridgePlace, frontOf } from './clearances/work-points';
import type { PlanPoint } from './fixture';
import type { Kitchen } from './kitchen';
import { counterTop } from './layout/hood-place';
import { planRows } from './layout/plan-rows';
import type { Rows, RunRows } from './layout/types';
import type { UserNeed } from './project';

/**
 * What planners recommend, held against a kitchen that passes `checkKitchen`: aisles, seats, counters, work triangle; with
 * heights and passages for those who use it. Recommendations, not law. All of them come back, those that are met as `fine`.
 */
export function clearanceHints(kitchen: Kitchen, users: readonly UserNeed[] = []): readonly ClearanceHint[] {
  const rows = planRows(kitchen);
  const passages = passagesOf(kitchen, rows);
  return [
    ...passages.map(passageHint),
    ...accessHints(kitchen, passages, users),
    ...seatHints(kitchen),
    ...landingHints(kitchen, rows),
    ...frontageHint(kitchen, rows),
    ...triangleHints(kitchen, rows),
  ];
}

function hint(
  code: ClearanceCode,
  measured: number,
  wanted_mm: number,
  at: readonly Stretch[],
  more: { readonly bound?: 'most'; readonly source?: ClearanceSource } = {},
): ClearanceHint {
  const measured_mm = Math.round(measured);
  const bound = more.bound ?? 'least';
  const isMet = bound === 'least' ? measured_mm >= wanted_mm : measured_mm <= wanted_mm;
  const source = more.source ?? 'planning-guidelines';
  return { code, measured_mm, wanted_mm, bound, level: isMet ? 'fine' : 'short', at, source };
}

const PASSAGES = { 'work-aisle': WORK_AISLE, walkway: WALKWAY, 'behind-seats': BEHIND_SEATS } as const;

const passageHint = ({ kind, width_mm, at }: Passage): ClearanceHint => hint(kind, width_mm, PASSAGES[kind], [at]);

/** The narrowest passage and the counter's height, for those who use a wheelchair or are no longer young. */
function accessHints(
  kitchen: Kitchen,
  passages: readonly Passage[],
  users: readonly UserNeed[],
): readonly ClearanceHint[] {
  const need = (['wheelchair', 'over-65'] as const).find((one) => users.includes(one));
  if (!need) return [];
  const [narrowest] = [...passages].sort((a, b) => a.width_mm - b.width_mm);
  const source = need === 'wheelchair' ? 'wheelchair-housing-uk' : 'accessible-housing-uk';
  const passage = narrowest
    ? [hint('accessible-passage', narrowest.width_mm, ACCESSIBLE_PASSAGE[need], [narrowest.at], { source })]
    : [];
  if (need !== 'wheelchair') return passage;
  const height = { bound: 'most', source: 'accessible-us' } as const;
  return [...passage, hint('counter-height', counterTop(kitchen), ACCESSIBLE_COUNTER, [], height)];
}

function seatHints(kitchen: Kitchen): readonly ClearanceHint[] {
  const { island, counter } = kitchen;
  if (!island || island.seat_overhang === 0) return [];
  const { x, y, width, depth, seat_overhang, stools } = island;
  const top = counterTop(kitchen);
  const knees = KNEE_DEPTHS.find(({ below }) => top < below)!.depth;
  const edge: Stretch = { from: [x, y], to: [x + width, y] };
  const over: Stretch = { from: [x + width / 2, y], to: [x + width / 2, y + seat_overhang] };
  const { thin, thick, thickFrom, share } = STONE_OVERHANG;
  const stone = Math.min(counter.thickness >= thickFrom ? thick : thin, Math.floor(depth * share));
  return [
    ...(stools > 0
      ? [hint('seat-width', width / stools, SEAT_WIDTH, [edge]), hint('knee-depth', seat_overhang, knees, [over])]
      : []),
    hint('stone-overhang', seat_overhang, stone, [over], { bound: 'most', source: 'stone-trade' }),
  ];
}

function landingHints(kitchen: Kitchen, rows: Rows): readonly ClearanceHint[] {
  return [
    ...rows.runs.flatMap((run) => [
      ...(run.cooktop ? bothSides('landing-cooktop', counterBeside(kitchen, run, run.cooktop), LANDING.cooktop) : []),
      ...(run.sink ? bothSides('landing-sink', counterBeside(kitchen, run, run.sink), LANDING.sink) : []),
      ...(run.sink ? [prepHint(counterBeside(kitchen, run, run.sink))] : []),
    ]),
    ...fridgeHint(kitchen, rows),
  ];
}

const FROM_MEMORY = { source: 'planning-guidelines-from-memory' } as const;

/** The longer side holds the longer landing. */
function bothSides(
  code: 'landing-cooktop' | 'landing-sink',
  sides: readonly [Beside, Beside],
  [shorter, longer]: readonly [number, number],
): readonly ClearanceHint[] {
  const [small, large] = [...sides].sort((a, b) => a.length_mm - b.length_mm) as [Beside, Beside];
  return [
    hint(code, small.length_mm, shorter, [small.at], FROM_MEMORY),
    hint(code, large.length_mm, longer, [large.at], FROM_MEMORY),
  ];
}

function prepHint([low, high]: readonly [Beside, Beside]): ClearanceHint {
  const longer = low.length_mm > high.length_mm ? low : high;
  return hint('prep-counter', longer.length_mm, PREP_WIDTH, [longer.at]);
}

/** Beside the fridge, or on an island across from it within reach. */
function fridgeHint(kitchen: Kitchen, rows: Rows): readonly ClearanceHint[] {
  const fridge = fridgePlace(rows);
  if (!fridge) return [];
  const { run, block, unit, isBesideCounter } = fridge;
  const [front, { island }] = [frontOf(kitchen, run.wall, unit), kitchen];
  const [low, high] = counterBeside(kitchen, run, block);
  const beside = block.end === 'from' ? high : low;
  const across = island && run.wall === 'back' ? front[1] - island.y - island.depth : Number.POSITIVE_INFINITY;
  const isAcross = !!island && across <= ACROSS && front[0] >= island.x && front[0] <= island.x + island.width;
  if (isAcross && (!isBesideCounter || beside.length_mm < LANDING.fridge)) {
    const edge = island.y + island.depth;
    const at: Stretch = { from: [island.x, edge], to: [island.x + island.width, edge] };
    return [hint('landing-fridge', island.width, LANDING.fridge, [at], FROM_MEMORY)];
  }
  const at = isBesideCounter ? [beside.at] : [{ from: front, to: front }];
  return [hint('landing-fridge', isBesideCounter ? beside.length_mm : 0, LANDING.fridge, at, FROM_MEMORY)];
}

/** Counters along their fronts, without sink and cooktop (as the guidelines are commonly read, no source). */
function frontageHint(kitchen: Kitchen, rows: Rows): readonly ClearanceHint[] {
  const stretches = rows.runs.map((run) => frontOfCounter(kitchen, run));
  const lengths = rows.runs.map((run, i) => {
    const { from, to } = stretches[i]!;
    const taken = [run.sink, run.cooktop].reduce((sum, span) => sum + (span ? span.to - span.from : 0), 0);
    return to - from - taken;
  });
  const { island } = kitchen;
  const total = lengths.reduce((sum, length) => sum + Math.max(0, length), 0) + (island ? island.width : 0);
  const at = rows.runs.map(({ wall }, i) => onCounter(kitchen, wall, stretches[i]!.from, stretches[i]!.to));
  return [hint('counter-frontage', total, FRONTAGE, at)];
}

/** A corner has no front. */
function frontOfCounter({ counter: { depth } }: Kitchen, { counter, ends }: RunRows): { from: number; to: number } {
  return {
    from: counter.from + (ends.from === 'owns-corner' ? depth : 0),
    to: counter.to - (ends.to === 'owns-corner' ? depth : 0),
  };
}

/** Fridge, sink and cooktop, from the middles of their fronts, straight. */
function triangleHints(kitchen: Kitchen, rows: Rows): readonly ClearanceHint[] {
  const fridge = fridgePlace(rows);
  const sink = rows.runs.find((run) => run.sink);
  const cooktop = rows.runs.find((run) => run.cooktop);
  if (!fridge || !sink?.sink || !cooktop?.cooktop) return [];
  const points = [
    frontOf(kitchen, fridge.run.wall, fridge.unit),
    frontOf(kitchen, sink.wall, sink.sink),
    frontOf(kitchen, cooktop.wall, cooktop.cooktop),
  ] as const;
  const legs = points.map((from, i): Stretch => ({ from, to: points[(i + 1) % 3] as PlanPoint }));
  const lengths = legs.map(({ from, to }) => distance(from, to));
  const [least, most] = TRIANGLE.leg;
  const sum = lengths.reduce((total, length) => total + length, 0);
  return [
    hint('work-triangle', sum, TRIANGLE.sum, legs, { bound: 'most' }),
    ...legs.map((leg, i) => {
      const length = lengths[i]!;
      return length > most
        ? hint('triangle-leg', length, most, [leg], { bound: 'most' })
        : hint('triangle-leg', length, least, [leg]);
    }),
  ];
}
