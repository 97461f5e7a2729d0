import { holdsIn } from '../engine/judge/holds';
import { judge } from '../engine/judge/judge';
import type { FromJudge, ToJudge } from './messages';

const port = self as unknown as {
  postMessage(message: FromJudge): void;
  onmessage: ((event: MessageEvent<ToJudge>) => void) | null;
};

/** Only the newest readings of an option matter: older ones still waiting are dropped. */
const waiting = new Map<string, ToJudge>();
let busy = false;

port.onmessage = ({ data }) => {
  waiting.set(data.input.option, data);
  if (!busy) void work();
};

async function work(): Promise<void> {
  busy = true;
  for (;;) {
    const next = waiting.entries().next();
    if (next.done) break;
    const [option, { input, complete }] = next.value;
    waiting.delete(option);
    const assessment = judge(input);
    port.postMessage({ assessment });
    await pause();
    if (complete && !waiting.has(option)) port.postMessage({ assessment: holdsIn(input, assessment) });
  }
  busy = false;
}

/** Lets waiting messages in. */
const pause = () => new Promise<void>((resolve) => setTimeout(resolve));
