import type { Assessment } from '../engine/judge/assessment';
import { holdsIn } from '../engine/judge/holds';
import type { JudgeInput } from '../engine/judge/input';
import { judge } from '../engine/judge/judge';
import { pairTable } from '../engine/judge/pair-table';
import { calculationFailed } from './failure';
import type { AskPairs, FromJudge, JudgeReadings, ToJudge } from './messages';

/** The judge worker without the worker. Only the newest readings of an option matter: older ones waiting are dropped. */
export function createJudgeDesk(
  post: (message: FromJudge) => void,
  pause: () => Promise<void>,
): { receive(message: ToJudge): void } {
  const waiting = new Map<string, JudgeReadings>();
  /** What was judged last, by option. */
  const judged = new Map<string, { readonly input: JudgeInput; readonly assessment: Assessment }>();
  let busy = false;

  async function work(): Promise<void> {
    busy = true;
    for (let next = take(); next; next = take()) {
      try {
        await answer(next);
      } catch (error) {
        post({ kind: 'problem', problem: calculationFailed('The findings', error) });
      }
    }
    busy = false;
  }

  function take(): JudgeReadings | null {
    for (const [option, message] of waiting) {
      waiting.delete(option);
      return message;
    }
    return null;
  }

  async function answer({ revision, input, complete }: JudgeReadings): Promise<void> {
    const tell = (assessment: Assessment) => {
      judged.set(input.option, { input, assessment });
      post({ kind: 'assessment', revision, assessment });
    };
    const assessment = judge(input);
    tell(assessment);
    await pause();
    if (complete && !waiting.has(input.option)) {
      tell(holdsIn(input, assessment));
      await pause();
    }
  }

  function answerPairs({ ticket, option }: AskPairs): void {
    try {
      const last = judged.get(option);
      post({ kind: 'pairs', ticket, table: last ? pairTable(last.input, last.assessment) : null });
    } catch (error) {
      post({ kind: 'problem', problem: calculationFailed('The pairs', error) });
      post({ kind: 'pairs', ticket, table: null });
    }
  }

  return {
    receive(message) {
      if (message.kind === 'pairs') return answerPairs(message);
      waiting.set(message.input.option, message);
      if (!busy) void work();
    },
  };
}
