import type { AddedFinding, Assessment, Balance, Warning } from '../../../engine/judge/assessment';
import { holdsIn } from '../../../engine/judge/holds';
import { judge } from '../../../engine/judge/judge';
import { compareFindings, type FindingsChange } from '../../../engine/judge/repairs/compare-findings';
import { answersLack } from '../../../engine/judge/repairs/repairable';
import { presentSurfaces } from '../../present-surfaces';
import type { JudgedOption, OtherSetting } from './judged-option';
import { type LibraryChange, libraryChanges } from './library-changes';
import { placeReaders, screenChange } from './screen-change';
import { isSettled, mayHelp, throwsLess } from './source-change';
import { addedIn, type HeldTrial, holdTrial, type NominalTrial, runNominally, type TrialRoom } from './trial';

/** As many ways out of one warning are offered, each by another family. */
const MOST_OFFERS = 3;
/** Trials as installed for one warning, and in one family of it: what is smaller comes first, so that little is missed. */
const MOST_TRIALS = 12;
const MOST_TRIALS_IN_FAMILY = 6;
/** Clean ones in one family: one of them may turn out to raise something in another setting, or not to stand. */
const MOST_CLEAN_IN_FAMILY = 2;
/** Trials that raise something by nominal colors are held only so often, in case it does not stand. */
const MOST_DOUBTFUL = 3;

/** A change that was run and helps, with what it does. */
export interface Offer {
  readonly change: LibraryChange;
  readonly trial: HeldTrial;
  /** Grave and visible warnings it raises in other settings. */
  readonly elsewhere: readonly AddedFinding[];
  /** Of the warning it was found for. */
  readonly grade: Grade;
}

/** A change that would clear a warning but for another it raises. */
export interface Miss {
  readonly change: LibraryChange;
  readonly raises: Warning;
}

/**
 * How good a trial is for a warning: 0 clears it and all is well; 1 leaves a note of it, or holds from most places only; 2 raises a
 * warning in another setting.
 */
export type Grade = 0 | 1 | 2;

/** A change with what it would make of the findings, nearly. */
interface Screened {
  readonly change: LibraryChange;
  readonly findings: FindingsChange;
  readonly balance: Balance;
}

/** The option as it is in another setting. */
interface OtherRoom {
  readonly room: TrialRoom;
  readonly nominal: NominalTrial;
  held: Assessment | null;
}

/** The search for changes that clear warnings of one option; what several warnings need is worked out once. */
export class RepairSearch {
  readonly #before: Assessment;
  readonly #room: TrialRoom;
  #screened: readonly Screened[] = [];
  readonly #nominal = new Map<LibraryChange, NominalTrial | null>();
  readonly #held = new Map<LibraryChange, HeldTrial>();
  readonly #elsewhere = new Map<LibraryChange, readonly AddedFinding[]>();
  #others: readonly OtherRoom[] | null = null;
  readonly #nearest = new Map<Warning, Miss>();

  constructor(
    private readonly from: JudgedOption,
    private readonly settings: readonly OtherSetting[],
  ) {
    const { option, study, setting, input } = from;
    this.#before = judge(input);
    this.#room = { option: option.id, study, setting };
  }

  /** Every change of one family that could help with one of the warnings, judged as samples and nearly as installed. */
  *screen(warnings: readonly Warning[]): Generator<null, void> {
    const { project, option, study, solved, setting, input } = this.from;
    const places = placeReaders(study, solved, setting);
    const screened: Screened[] = [];
    for (const change of libraryChanges(project, option, presentSurfaces(study.room))) {
      if (!warnings.some((warning) => mayHelp(this.from, warning, change))) continue;
      const after = screenChange(input, places, change);
      const findings = compareFindings(this.#before.warnings, after.warnings);
      screened.push({ change, findings, balance: after.balance });
      yield null;
    }
    this.#screened = screened;
  }

  /** The smallest changes that clear a warning, one a family, best first. */
  *offersFor(warning: Warning): Generator<null, readonly Offer[]> {
    for (const isDecided of [false, true]) {
      const candidates = this.#screened.filter(
        (one) => one.change.isDecided === isDecided && this.#isWorthTrying(warning, one),
      );
      const { clean, doubtful } = yield* this.#runSmallest(warning, candidates);
      const found = yield* this.#hold(warning, clean);
      const isClear = found.some((offer) => offer.grade === 0);
      const more = isClear ? [] : yield* this.#hold(warning, doubtful.slice(0, MOST_DOUBTFUL));
      const all = [...found, ...more].sort((one, other) => one.grade - other.grade);
      if (all.length > 0) return onePerFamily(all).slice(0, MOST_OFFERS);
    }
    return [];
  }

  /** What comes nearest to clearing a warning that nothing clears. */
  nearestTo(warning: Warning): Miss | null {
    return this.#nearest.get(warning) ?? null;
  }

  /** Whether nothing may change where a warning could be cured. */
  isSettled(warning: Warning): boolean {
    return isSettled(this.from, warning, presentSurfaces(this.from.study.room));
  }

  #isWorthTrying(warning: Warning, { change, findings, balance }: Screened): boolean {
    // What light makes of it is only known once it is run: samples alone may rule a change out here.
    const raises = findings.added.find(({ basis }) => basis === 'sample');
    const isTint = warning.code === 'tinted-by-bounce';
    const helps = isTint ? throwsLess(this.from, warning, change) : this.#clears(warning, findings, balance);
    if (helps && raises) this.#miss(warning, change, raises);
    return helps && !raises;
  }

  /** Runs candidates, smallest first: those that clear the warning and raise nothing, and those that raise something. */
  *#runSmallest(warning: Warning, candidates: readonly Screened[]) {
    const clean: LibraryChange[] = [];
    const doubtful: LibraryChange[] = [];
    const triedIn = new Map<string, number>();
    let trials = 0;
    for (const { change } of candidates) {
      const family = familyKey(change);
      const tried = triedIn.get(family) ?? 0;
      const found = clean.filter((one) => familyKey(one) === family).length;
      if (tried >= MOST_TRIALS_IN_FAMILY || found === MOST_CLEAN_IN_FAMILY) continue;
      if (trials++ === MOST_TRIALS) break;
      triedIn.set(family, tried + 1);
      const trial = this.#run(change);
      yield null;
      if (!trial || !this.#clears(warning, trial.findings, trial.assessment.balance)) continue;
      const [raises] = trial.findings.added;
      if (raises) this.#miss(warning, change, raises);
      (raises ? doubtful : clean).push(change);
    }
    return { clean, doubtful };
  }

  /** Of changes that were run, those that help firmly, one a family, best first. */
  *#hold(warning: Warning, changes: readonly LibraryChange[]): Generator<null, readonly Offer[]> {
    const offers: Offer[] = [];
    for (const change of changes) {
      if (offers.some((offer) => offer.grade === 0 && familyKey(offer.change) === familyKey(change))) continue;
      const trial = this.#held.get(change) ?? holdTrial(this.#nominal.get(change)!, this.from.held);
      this.#held.set(change, trial);
      yield null;
      const { findings, isFirm, balance } = trial;
      const [raises] = findings.added;
      if (raises) this.#miss(warning, change, raises);
      // A tint of a place that stays as a note is hardly worth another finish (our judgment).
      const isLess = warning.code !== 'tinted-by-bounce' && findings.softened.includes(warning);
      const helps = findings.cleared.includes(warning) || isLess;
      if (raises || !isFirm || !helps || !answersLack(warning.code, balance)) continue;
      const elsewhere = this.#elsewhere.get(change) ?? (yield* this.#raisedElsewhere(change));
      this.#elsewhere.set(change, elsewhere);
      offers.push({ change, trial, elsewhere, grade: gradeOf(warning, trial, elsewhere) });
    }
    const good = offers.filter((offer) => offer.grade < 2).sort((one, other) => one.grade - other.grade);
    return onePerFamily(good.length > 0 ? good : offers).slice(0, MOST_OFFERS);
  }

  /** Whether findings clear or soften a warning; the nominal ones may know it by another name. */
  #clears(warning: Warning, { cleared, softened }: FindingsChange, balance: Balance): boolean {
    if (!answersLack(warning.code, balance)) return false;
    const isIt = (one: Warning) => one.code === warning.code && one.surfaces.some((s) => warning.surfaces.includes(s));
    if (!this.#before.warnings.some(isIt)) return true;
    return [...cleared, ...softened].some(isIt);
  }

  #run(change: LibraryChange): NominalTrial | null {
    let trial = this.#nominal.get(change);
    if (trial === undefined) {
      trial = runNominally(change.project, this.#room, this.#before.warnings);
      this.#nominal.set(change, trial);
    }
    return trial;
  }

  /** The smallest is kept: changes come in that order. */
  #miss(warning: Warning, change: LibraryChange, raises: Warning): void {
    // The same thing said again of the new finish is nothing near.
    if (raises.code === warning.code && String(raises.surfaces) === String(warning.surfaces)) return;
    const known = this.#nearest.get(warning);
    if (!known || change.moved_de00 < known.change.moved_de00) this.#nearest.set(warning, { change, raises });
  }

  /** Grave and visible warnings that a change raises in the other settings; only what stands is told. */
  *#raisedElsewhere({ project }: LibraryChange): Generator<null, readonly AddedFinding[]> {
    const added: AddedFinding[] = [];
    for (const other of yield* this.#otherRooms()) {
      const trial = runNominally(project, other.room, other.nominal.assessment.warnings);
      yield null;
      if (!trial || trial.findings.added.length === 0) continue;
      other.held ??= holdsIn(other.nominal.input, other.nominal.assessment);
      const held = holdTrial(trial, other.held);
      yield null;
      added.push(...held.findings.added.map((warning) => addedIn(other.room.setting.id, warning)));
    }
    return added;
  }

  *#otherRooms() {
    if (this.#others) return this.#others;
    const others: OtherRoom[] = [];
    for (const { setting, study: studied } of this.settings) {
      const study = yield* silently(studied());
      if (!study) continue;
      const room = { option: this.from.option.id, study, setting };
      const nominal = runNominally(this.from.project, room, []);
      if (nominal) others.push({ room, nominal, held: null });
      yield null;
    }
    this.#others = others;
    return others;
  }
}

function gradeOf(warning: Warning, { findings, otherwiseFrom }: HeldTrial, elsewhere: readonly AddedFinding[]): Grade {
  if (elsewhere.length > 0) return 2;
  return findings.cleared.includes(warning) && otherwiseFrom.length === 0 ? 0 : 1;
}

const familyKey = ({ surfaces }: LibraryChange): string => surfaces.join();

function onePerFamily(offers: readonly Offer[]): readonly Offer[] {
  const byFamily = new Map<string, Offer>();
  for (const offer of offers) {
    if (!byFamily.has(familyKey(offer.change))) byFamily.set(familyKey(offer.change), offer);
  }
  return [...byFamily.values()];
}

function* silently<T>(steps: Generator<unknown, T>): Generator<null, T> {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    yield null;
  }
}
