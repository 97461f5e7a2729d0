import type { Frame } from './frame';
import type { Sheet } from './sheet';

/** Figures are drawn repeating. A slab is cut from a block this much longer, so that its two ends do not go on in each other. */
const BLOCK_PART = 9 / 8;

/** The block a slab is cut from: the same texels, more of them along s. */
export function uncutFrame(frame: Frame): Frame {
  return { ...frame, width: frame.width * BLOCK_PART, width_mm: frame.width_mm * BLOCK_PART };
}

/** Cuts the sheet of a block to the slab. */
export function cutSlab({ presence, edge, gain }: Sheet, { width, height }: Frame): Sheet {
  const cut = (field: Float32Array): Float32Array => {
    const from = field.length / height;
    const out = new Float32Array(width * height);
    for (let y = 0; y < height; y++) out.set(field.subarray(y * from, y * from + width), y * width);
    return out;
  };
  return { presence: presence.map(cut), edge, gain: cut(gain) };
}
