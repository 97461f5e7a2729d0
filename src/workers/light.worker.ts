import { createFinishUnpacker } from './carry-finishes';
import { createShelfUnpacker } from './carry-shelf';
import { createLightDesk } from './light-desk';
import type { FromLight, ToLightWorker } from './messages';

const port = self as unknown as {
  postMessage(message: FromLight, transfer: Transferable[]): void;
  onmessage: ((event: MessageEvent<ToLightWorker>) => void) | null;
};

/** A message to oneself queues behind the messages waiting already, and unlike a timer it is not throttled. */
const channel = new MessageChannel();
const resume: (() => void)[] = [];
channel.port1.onmessage = () => resume.shift()?.();
const pause = () =>
  new Promise<void>((resolve) => {
    resume.push(resolve);
    channel.port2.postMessage(null);
  });

/** As long as people pause between two changes, ms. */
const REST_MS = 1500;
const rest = () => new Promise<void>((resolve) => setTimeout(resolve, REST_MS));

const desk = createLightDesk((message, transfer = []) => port.postMessage(message, transfer), pause, rest);
const unpack = createFinishUnpacker();
const unpackShelf = createShelfUnpacker();
port.onmessage = ({ data }) => {
  if (data.kind === 'shelf') return desk.receive({ ...data, shelf: unpackShelf(data.shelf) });
  if (data.kind !== 'show') return desk.receive(data);
  const { library, project, ...show } = data;
  desk.receive({ ...show, project: { ...project, library: unpack(library) } });
};
