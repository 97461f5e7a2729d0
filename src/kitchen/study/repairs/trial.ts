import type { AddedFinding, Assessment, Balance, Warning } from '../../../engine/judge/assessment';
import { type WeakEdge, weakEdges } from '../../../engine/judge/edges';
import { holdsIn } from '../../../engine/judge/holds';
import type { JudgeInput } from '../../../engine/judge/input';
import { judge } from '../../../engine/judge/judge';
import { compareFindings, type FindingsChange } from '../../../engine/judge/repairs/compare-findings';
import { isBalanceFirm } from '../../../engine/judge/repairs/repairable';
import type { Project } from '../../../model/project';
import { judgeTried } from '../judge-tried';
import type { RoomStudy } from '../room-study';
import type { SettingLight } from '../setting-light';

/** A room under a setting in which changes are tried. */
export interface TrialRoom {
  readonly option: string;
  readonly study: RoomStudy;
  readonly setting: SettingLight;
}

/** A change as it was run, by nominal colors. */
export interface NominalTrial {
  readonly input: JudgeInput;
  readonly assessment: Assessment;
  readonly findings: FindingsChange;
}

/** The same with how firmly its findings stand. */
export interface HeldTrial {
  readonly findings: FindingsChange;
  readonly balance: Balance;
  /** A balance it brings about stands under plausible errors; true of one that was there before. */
  readonly isFirm: boolean;
  readonly weakEdges: readonly WeakEdge[];
  /** Viewpoints from which a balance it brings about is another. */
  readonly otherwiseFrom: readonly string[];
}

/** Runs a changed project as installed. Null where it cannot be laid. */
export function runNominally(
  project: Project,
  { option, study, setting }: TrialRoom,
  before: readonly Warning[],
): NominalTrial | null {
  const input = judgeTried(project, option, study, setting, true);
  if (!input.ok) return null;
  const assessment = judge(input.value);
  return { input: input.value, assessment, findings: compareFindings(before, assessment.warnings) };
}

/** Finds out how firmly the findings of a trial stand; takes four times as long as running it. */
export function holdTrial({ input, assessment }: NominalTrial, before: Assessment): HeldTrial {
  const held = holdsIn(input, assessment);
  const isSame = held.balance.verdict === before.balance.verdict;
  return {
    findings: compareFindings(before.warnings, held.warnings),
    balance: held.balance,
    weakEdges: weakEdges(input),
    isFirm: isSame || isBalanceFirm(held.balance),
    otherwiseFrom: isSame ? [] : held.balance.otherwise_from,
  };
}

/** A finding that a change brings with it in a setting. */
export const addedIn = (setting: string, { code, severity, surfaces, text }: Warning): AddedFinding => ({
  code,
  surfaces,
  severity,
  setting,
  text,
});
