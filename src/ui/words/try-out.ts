import type { DecisionState, SurfaceId } from '../../engine/surface';
import { surfacesPhrase } from './engine-words';
import { listed } from './numbers';
import { spoken } from './spoken';

/** Findings by kind. */
export interface FindingCounts {
  readonly warnings: number;
  readonly notes: number;
  readonly questions: number;
}

/** What a trial does to the findings. */
export interface AgainstBefore {
  readonly clears: FindingCounts;
  /** Warnings of which a note stays. */
  readonly eases: number;
  readonly brings: FindingCounts;
}

/** Surfaces that a trial changes though they were settled so. */
export interface SettledMoved {
  readonly state: Exclude<DecisionState, 'open'>;
  readonly surfaces: readonly SurfaceId[];
}

const SETTLED: { readonly [S in SettledMoved['state']]: string } = spoken({
  fixed: 'what stays',
  ordered: 'what is ordered',
  decided: 'what is decided',
});

/** More are counted only. */
const MOST_NAMED = 3;

const phrase = (surfaces: readonly SurfaceId[]): string => surfacesPhrase(surfaces).text;

/** Words of a change on trial. */
export const TRY = spoken({
  region: 'Change on trial',
  trying: (label: string, option: string) => `Trying in ${option}: ${label}.`,
  moves: (surfaces: readonly SurfaceId[]) => `It changes ${phrase(surfaces)}.`,
  /** The same, with no more surfaces than fit into a line. */
  movesBriefly: (surfaces: readonly SurfaceId[]) => {
    const named = groups(surfaces);
    const more = named.length - MOST_NAMED;
    return more > 1 ? `It changes ${named.slice(0, MOST_NAMED).join(', ')} and ${more} more.` : TRY.moves(surfaces);
  },
  settled: ({ state, surfaces }: SettledMoved) => `Changes ${SETTLED[state]}: ${phrase(surfaces)}.`,
  unkept: 'Nothing is changed until you keep it.',
  comparing: 'Against before: still comparing.',
  otherLight: 'Against before: go back to the light this began in to compare.',
  against: ({ clears, eases, brings }: AgainstBefore) => {
    const clauses = [
      ...said('clears', clears),
      ...(eases > 0 ? [`leaves a note of ${counted(eases, 'warning')}`] : []),
      ...said('brings', brings),
    ];
    return `Against before: ${clauses.length > 0 ? clauses.join(', ') : 'the same findings'}.`;
  },
  keep: 'Keep',
  drop: 'Drop',
  caption: (label: string) => `On trial, not kept: ${label}.`,
} as const);

/** Whether a label says by itself that these are what changes. */
export function isNamedIn(label: string, surfaces: readonly SurfaceId[]): boolean {
  const [only, ...more] = groups(surfaces);
  return only === undefined || (more.length === 0 && label.toLowerCase().includes(only.replace(/^the /, '')));
}

/** "the counters", "the base and island fronts", "the upstand": as they are named, one by one. */
const groups = (surfaces: readonly SurfaceId[]): readonly string[] => {
  const text = phrase(surfaces);
  return text === '' ? [] : text.split(/, (?=the )| and (?=the )/);
};

function said(what: string, { warnings, notes, questions }: FindingCounts): readonly string[] {
  const kinds = [
    ...(warnings > 0 ? [counted(warnings, 'warning')] : []),
    ...(notes > 0 ? [counted(notes, 'note')] : []),
    ...(questions > 0 ? [counted(questions, 'open question')] : []),
  ];
  return kinds.length > 0 ? [`${what} ${listed(kinds)}`] : [];
}

const counted = (count: number, of: string): string => `${count} ${of}${count === 1 ? '' : 's'}`;
