import type { Kitchen, Run } from './kitchen';
import { cooktopModule, dishwasherModules, sinkModules } from './layout/fixed-modules';
import type { TriedRows } from './layout/plan-rows';
import { formCorner, meetsPeninsula, runEnds, wallLength } from './layout/run-ends';
import type { Check } from './misfit';

/** A run that ends before a wall leaves at least this to clean, mm (our judgment). */
const LEAST_GAP = 150;

/** What is wrong with where runs are, before modules are fitted into them. */
export const runChecks = (kitchen: Kitchen): Check[] => [
  ...kitchen.runs.flatMap((run, i) => placeChecks(kitchen, run, `runs[${i}]`)),
  ...fixedChecks(kitchen),
];

const named = ({ wall }: Run): string => `The run on the ${wall} wall`;

function placeChecks(kitchen: Kitchen, run: Run, path: string): Check[] {
  const length = wallLength(kitchen, run.wall);
  const { from, to } = run;
  const isCorner = (end: 'from' | 'to'): boolean => {
    if (run.wall === 'back') return formCorner(kitchen, end === 'from' ? 'left' : 'right');
    return end === 'to'
      ? formCorner(kitchen, run.wall)
      : kitchen.island?.joined === run.wall && meetsPeninsula(kitchen);
  };
  const cornerTall = (end: 'from' | 'to', tall: Run['tall_from']): Check => [
    `${path}.tall_${end}`,
    tall.length === 0 || !isCorner(end),
    `${named(run)} has tall units in a corner, where nobody gets at them.`,
    'Put them at its other end, or on the other run.',
  ];
  const meets = run.wall !== 'back' && isCorner('from');
  return [
    [`${path}.to`, from < to, `${named(run)} ends before it begins.`, 'Give it an end beyond its beginning.'],
    [
      `${path}.to`,
      to <= length + 0.5,
      `${named(run)} reaches beyond its wall.`,
      `Let it end at ${length} mm or before.`,
    ],
    [
      `${path}.from`,
      from <= 0.5 || from >= LEAST_GAP || meets,
      `${named(run)} leaves a gap of ${from} mm to the wall.`,
      `Let it begin at the wall, or leave ${LEAST_GAP} mm.`,
    ],
    [
      `${path}.to`,
      to >= length - 0.5 || to <= length - LEAST_GAP,
      `${named(run)} leaves a gap of ${length - to} mm to the wall.`,
      `Let it end at the wall (${length} mm), or leave ${LEAST_GAP} mm.`,
    ],
    cornerTall('from', run.tall_from),
    cornerTall('to', run.tall_to),
  ];
}

/** Sink and cooktop have a run, and stand on it. */
function fixedChecks(kitchen: Kitchen): Check[] {
  const { region, cooktop, runs, sink } = kitchen;
  const module = cooktopModule(region, cooktop);
  const most = region === 'us' ? '36 in (914 mm)' : '900 mm';
  const on = (name: 'sink' | 'cooktop', least: number): Check[] => {
    const { run: wall, center } = kitchen[name];
    const run = runs.find((one) => one.wall === wall);
    if (!run) {
      return [[`${name}.run`, false, `There is no run on the ${wall} wall for the ${name}.`, 'Choose another run.']];
    }
    const { from, to } = runEnds(kitchen, run);
    const [low, high] = [from.at + from.tile + from.filler, to.at - to.tile - to.filler];
    if (high - low < least) {
      const text = `${named(run)} is too short for the ${name}.`;
      return [[`${name}.run`, false, text, 'Make the run longer, or choose another.']];
    }
    const [first, last] = [Math.ceil(low), Math.floor(high)];
    return [
      [
        `${name}.center`,
        center >= low && center <= high,
        `The ${name} lies beyond the base units of its run.`,
        `Put its middle between ${first} and ${last} mm.`,
      ],
    ];
  };
  return [
    ['cooktop.width', module !== null, 'The cooktop is wider than any unit made for one.', `Use ${most} or less.`],
    ...on('sink', sinkModules(region, sink.bowls).at(-1)!),
    ...on('cooktop', module ?? 0),
  ];
}

/** Whether modules fill every run and the island. */
export function fillChecks(kitchen: Kitchen, { runs, island }: TriedRows): Check[] {
  return [
    ...runs.map((row, i): Check => [...whyNot(kitchen, kitchen.runs[i]!, i, row !== null)]),
    ['island.width', kitchen.island === null || island !== null, 'The island is too narrow for any unit.', 'Widen it.'],
  ];
}

/** Where to change what when modules do not go into a run. */
function whyNot(kitchen: Kitchen, run: Run, i: number, holds: boolean): Check {
  const { sink, cooktop, dishwasher, region } = kitchen;
  const [hasSink, hasCooktop] = [sink.run === run.wall, cooktop.run === run.wall];
  const { from, to } = runEnds(kitchen, run);
  const length = to.at - to.tile - to.filler - (from.at + from.tile + from.filler);
  const needs = [
    ...(hasSink ? [sinkModules(region, sink.bowls).at(-1)!] : []),
    ...(hasSink && dishwasher !== 'none' ? [dishwasherModules(region).at(-1)!] : []),
    ...(hasCooktop ? [cooktopModule(region, cooktop) ?? 0] : []),
  ].reduce((sum, width) => sum + width, 0);
  const things = [
    ...(hasSink ? ['sink'] : []),
    ...(hasSink && dishwasher !== 'none' ? ['dishwasher'] : []),
    ...(hasCooktop ? ['cooktop'] : []),
  ];
  const together = things.length > 1 ? `${things.slice(0, -1).join(', ')} and ${things.at(-1)}` : (things[0] ?? 'unit');
  if (things.length === 0 || length < needs) {
    const missing = Math.ceil(Math.max(0, needs - length));
    return [
      `runs[${i}].to`,
      holds,
      things.length === 0 ? `${named(run)} is too short for any unit.` : `${named(run)} is too short for ${together}.`,
      missing > 0
        ? `Make it ${missing} mm longer, or move something to another run.`
        : 'Make it longer, or leave it out.',
    ];
  }
  if (hasSink && hasCooktop) {
    return [
      'cooktop.center',
      holds,
      `${capital(together)} do not fit beside each other where they are.`,
      'Move the sink and the cooktop apart, or away from the ends of the run.',
    ];
  }
  return [
    hasSink ? 'sink.center' : 'cooktop.center',
    holds,
    `${capital(together)} ${things.length > 1 ? 'do' : 'does'} not fit so near to the end of the run.`,
    'Move towards the middle of the run.',
  ];
}

const capital = (words: string): string => `The ${words}`;
