import { createJudgeDesk } from './judge-desk';
import type { FromJudge, ToJudge } from './messages';

const port = self as unknown as {
  postMessage(message: FromJudge): void;
  onmessage: ((event: MessageEvent<ToJudge>) => void) | null;
};

/** Lets waiting messages in. */
const pause = () => new Promise<void>((resolve) => setTimeout(resolve));

const desk = createJudgeDesk((message) => port.postMessage(message), pause);
port.onmessage = ({ data }) => desk.receive(data);
