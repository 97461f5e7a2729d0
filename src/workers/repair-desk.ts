import type { Assessment } from '../engine/judge/assessment';
import { holdsIn } from '../engine/judge/holds';
import type { JudgeInput } from '../engine/judge/input';
import { judge } from '../engine/judge/judge';
import { findRepairs } from '../kitchen/study/repairs/find-repairs';
import { otherSettings } from '../kitchen/study/repairs/other-settings';
import type { SolvedScheme } from '../kitchen/study/solved-scheme';
import type { Finish } from '../model/project';
import type { Job } from './job';
import { underSky } from './under-sky';

/** Assessments kept for when one comes back to them: two options in a few settings, before and after a change. */
const MOST_KEPT = 8;

/** Looks for what would help, in slices, when all else is done. */
export class RepairDesk {
  readonly #kept = new Map<string, Assessment>();
  /** Libraries by number: to write a large one out would take long, and the same finish is the same object. */
  readonly #numbers = new WeakMap<Finish, number>();
  #count = 0;

  constructor(private readonly pause: () => Promise<void>) {}

  #numberOf(library: readonly Finish[]): readonly number[] {
    return library.map((finish) => {
      const number = this.#numbers.get(finish) ?? ++this.#count;
      this.#numbers.set(finish, number);
      return number;
    });
  }

  /** The assessment of an option, done, from its complete readings; null when something newer came in between. */
  async assess(job: Job, option: string, solved: SolvedScheme, input: JudgeInput): Promise<Assessment | null> {
    const { room, setting, stale } = job;
    const { project } = job.show;
    const key = JSON.stringify([option, setting.id, { ...project, library: this.#numberOf(project.library) }]);
    const known = this.#kept.get(key);
    if (known) return known;
    const judged = project.options.find(({ id }) => id === option)!;
    const { study } = room;
    const held = holdsIn(input, judge(input));
    const from = { project, option: judged, study, setting, solved, input, held };
    const studyUnder = function* (id: string) {
      return (yield* underSky(job, id))?.study ?? null;
    };
    const steps = findRepairs(from, otherSettings(project, setting.id, studyUnder));
    for (;;) {
      await this.pause();
      if (stale()) return null;
      const step = steps.next();
      if (!step.done) continue;
      this.#kept.set(key, step.value);
      if (this.#kept.size > MOST_KEPT) this.#kept.delete(this.#kept.keys().next().value!);
      return step.value;
    }
  }
}
