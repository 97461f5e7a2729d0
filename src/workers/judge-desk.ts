import { holdsIn } from '../engine/judge/holds';
import { judge } from '../engine/judge/judge';
import { calculationFailed } from './failure';
import type { FromJudge, ToJudge } from './messages';

/** The judge worker without the worker. Only the newest readings of an option matter: older ones waiting are dropped. */
export function createJudgeDesk(
  post: (message: FromJudge) => void,
  pause: () => Promise<void>,
): { receive(message: ToJudge): void } {
  const waiting = new Map<string, ToJudge>();
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

  function take(): ToJudge | null {
    for (const [option, message] of waiting) {
      waiting.delete(option);
      return message;
    }
    return null;
  }

  async function answer({ revision, input, complete }: ToJudge): Promise<void> {
    const assessment = judge(input);
    post({ kind: 'assessment', revision, assessment });
    await pause();
    if (complete && !waiting.has(input.option)) {
      post({ kind: 'assessment', revision, assessment: holdsIn(input, assessment) });
      await pause();
    }
  }

  return {
    receive(message) {
      waiting.set(message.input.option, message);
      if (!busy) void work();
    },
  };
}
