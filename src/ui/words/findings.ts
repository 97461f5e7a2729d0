import type {
  Assessment,
  BalanceVerdict,
  Basis,
  ComponentRecord,
  PairVerdict,
  Severity,
  UndertoneLevel,
  WarningCode,
} from '../../engine/judge/assessment';
import { fromViewpoint } from './engine-words';
import { capital, listed, percent } from './numbers';
import { retold, spoken } from './spoken';

const fromTo = (range: readonly string[]) => [...new Set(range)].join(' to ');

/** Words of the findings column. */
export const FINDINGS = spoken({
  region: 'Findings',
  balance: 'Balance',
  balanceOf: (option: string) => `Balance in ${option}`,
  warm: 'warm',
  leaning: 'leaning',
  neutral: 'neutral',
  cool: 'cool',
  asSamples: 'Samples',
  asInstalled: 'Installed',
  pending: 'Still working: these may change.',
  waiting: 'Reading the room. Findings come with the first light.',
  saidAbove: (of: 'warm' | 'cool', share: number, isFirm: boolean) => {
    const seen = share === 0 ? 'Nothing large' : share < 0.01 ? 'Under 1% of what' : `Only ${percent(share)} of what`;
    return `${seen} you see is ${of}, ${isFirm ? 'as samples' : 'if the colors are as given'}.`;
  },
  why: 'Why',
  hideWhy: 'Hide why',
  readings: 'Readings',
  nothing: 'Nothing here works against anything else.',
  sheetOpen: 'Show findings',
  sheetClose: 'Hide findings',
  clearStep: 'stand a clear lightness step apart',
  finePair: (one: string, other: string, how: string) => `${one} and ${other} ${how}`,
  fineBasis: (de00: string, basis: string) => `${de00} dE00, ${basis}`,
  fine: (count: number) => `Checked and found fine (${count})`,
  numbers: 'Numbers',
  question: 'open question',
  checking: 'Checking how firmly this holds',
  /** `unsettled`: later decisions that a change works against; they are named before open questions, which can wait. */
  count: (warnings: number, questions: number, unsettled: number) => {
    const warned = warnings === 0 ? 'No warnings' : warnings === 1 ? '1 warning' : `${warnings} warnings`;
    if (unsettled > 0)
      return `${warned}, ${unsettled === 1 ? '1 decision' : `${unsettled} decisions`} to look at again`;
    if (questions === 0) return warned;
    return `${warned}, ${questions === 1 ? '1 open question' : `${questions} open questions`}`;
  },
  body: 'All findings',
  verdict: (samples: string) => `${capital(samples)}, as samples.`,
  verdicts: (samples: string, installed: string) =>
    samples === installed
      ? `${capital(samples)}, as samples and as installed.`
      : `${capital(samples)} as samples, ${installed} as installed.`,
  ranges: (warm: readonly string[], cool: readonly string[]) =>
    `From the overview viewpoints: warm ${fromTo(warm)}, cool ${fromTo(cool)}.`,
  inEverySetting: 'In every light of this project',
  weighing: 'Weighing it in each light.',
  onScreen: ' (on screen)',
  noLight: 'No light is on',
  tipsTo: (verdict: string) => `The light tips it: ${verdict}`,
  otherwiseFrom: (viewpoints: readonly string[]) =>
    `It comes out differently ${listed(viewpoints.map(fromViewpoint))}.`,
  copy: 'Copy findings',
  copied: 'Copied as JSON, with every number',
  dark: (name: string) => `No light is on in ${name.toLowerCase()}: only the samples are judged, in neutral light.`,
  setting: (name: string, cct: number | null) =>
    cct === null
      ? `Read in ${name.toLowerCase()} light, as it looks once your eyes are used to it.`
      : `Read in ${name.toLowerCase()} light, about ${100 * Math.round(cct / 100)} K, as it looks once your eyes are used to it.`,
} as const);

/** A warning's grade, said beside its mark. */
export const SEVERITY_WORDS: { readonly [S in Severity]: string } = spoken({
  grave: 'grave',
  visible: 'visible',
  note: 'note',
});

export const BASIS_WORDS: { readonly [B in Basis]: string } = spoken({
  sample: 'judged as samples in neutral light',
  installed: 'judged as installed in this room and light',
});

export const BALANCE_WORDS: { readonly [V in BalanceVerdict]: string } = spoken({
  balanced: 'balanced',
  'lacks-warm': 'lacks warm',
  'lacks-cool': 'lacks cool',
  muted: 'muted',
  'nothing-chosen': 'nothing chosen yet',
});

export const PAIR_WORDS: { readonly [V in PairVerdict]: string } = spoken({
  same: 'look the same',
  match: 'match closely',
  agree: 'agree',
  relates: 'relate',
  'looks-dirty': 'one looks dirty',
  'too-yellow': 'one looks too yellow',
  'pulls-apart': 'pull apart',
  none: 'do not touch each other’s undertone',
  'cannot-tell': 'cannot tell from here',
});

/** A kind of warning in a few words. */
export const WARNING_WORDS: { readonly [C in WarningCode]: string } = spoken({
  'white-looks-dirty': 'a white that looks dirty',
  'too-yellow': 'a white that looks too yellow',
  'undertones-pull-apart': 'undertones that pull apart',
  'lacks-warm': 'nothing warm',
  'lacks-cool': 'nothing cool',
  'patterns-compete': 'busy patterns that compete',
  'woods-nearly-match': 'woods that nearly match',
  'weak-edge': 'an edge that is hard to see',
  'tinted-by-bounce': 'a surface tinted by its neighbors',
  'light-shift': 'a color that shifts with the light',
  'pair-splits': 'a match by day that parts in this light',
  'low-light': 'low light',
  'cannot-tell': 'a question only samples can answer',
});

export const UNDERTONE_LEVEL_WORDS: { readonly [L in UndertoneLevel]: string } = spoken({
  none: 'no undertone one would name',
  faint: 'a faint undertone',
  named: 'a clear undertone',
  color: 'a color of its own',
});

/** The undertone in one word for lists. */
export function undertoneLabel({ undertone, name }: ComponentRecord): string {
  if (undertone.level === 'none') return 'neutral';
  if (undertone.level === 'color') return retold(name);
  return undertone.level === 'faint' ? `faintly ${undertone.word}` : undertone.word;
}

/**
 * How firm a warning is, in words: the share of plausible errors, and in place of plausible spectra, under which it still
 * holds. What is null once the assessment is done rests on neither.
 */
export const holdsInWords = spoken(firmnessSentence);

function firmnessSentence(share: number | null, status: Assessment['status']): string {
  if (share === null) {
    return status !== 'pending'
      ? 'It rests on the room and its lamps, not on how well the colors are known.'
      : 'How firmly it holds is still being worked out.';
  }
  const tenths = Math.round(share * 10);
  if (share >= 0.995) return 'It stays so however far the colors may be off.';
  if (tenths === 10) return 'True in nearly all tries within what is known.';
  if (tenths === 0) return 'True in almost none of the tries within what is known.';
  return `True in ${tenths} of 10 tries within what is known.`;
}
