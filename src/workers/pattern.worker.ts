import { bakePattern } from '../engine/pattern/bake';
import type { FromPattern, ToPattern } from './messages';

const port = self as unknown as {
  postMessage(message: FromPattern, transfer: Transferable[]): void;
  onmessage: ((event: MessageEvent<ToPattern>) => void) | null;
};

port.onmessage = ({ data: { key, spec } }) => {
  try {
    const texture = bakePattern(spec);
    port.postMessage({ key, texture }, [texture.data.buffer as ArrayBuffer]);
  } catch {
    port.postMessage({ key, texture: null }, []);
  }
};
