import { bakePattern } from '../engine/pattern/bake';
import { mipLevels } from '../engine/pattern/mips';
import type { FromPattern, ToPattern } from './messages';

const port = self as unknown as {
  postMessage(message: FromPattern, transfer: Transferable[]): void;
  onmessage: ((event: MessageEvent<ToPattern>) => void) | null;
};

port.onmessage = ({ data: { key, spec } }) => {
  try {
    const baked = bakePattern(spec);
    const texture = { ...baked, mips: mipLevels(baked) };
    const buffers = [texture.data, ...texture.mips].map((bytes) => bytes.buffer as ArrayBuffer);
    port.postMessage({ key, texture }, buffers);
  } catch {
    port.postMessage({ key, texture: null }, []);
  }
};
