import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { Picture } from '../../../src/view/Picture';
import { type PictureSize, readPixels, renderPicture } from '../../../src/view/read-pixels';
import type { PickedPoint, PictureProps } from '../../../src/view/types';
import { type LaidPattern, smallLight, smallLook, smallRoom } from '../small-room';

// The page the picture tests drive: shows the small room and hands out its pixels.
const room = smallRoom();
const light = smallLight(room);

export interface Lab {
  /** Shows what was shown first; resolves when the picture rests. */
  startOver(): Promise<void>;
  /** Changes some properties; resolves when the picture rests. */
  show(change: LabChange): Promise<void>;
  readonly picks: (PickedPoint | null)[];
  readonly events: string[];
  read(): Promise<{ width: number; height: number; base64: string }>;
  render(size: PictureSize): Promise<{ width: number; height: number; base64: string }>;
  frames(): number;
  /** Objects on the graphics card, by kind. */
  held(): Record<string, number>;
  unmount(): void;
}

export interface LabChange {
  readonly tint?: number;
  readonly besideTint?: number | null;
  readonly gloss?: readonly number[];
  readonly exposure?: number;
  readonly eye?: readonly [number, number, number];
  readonly target?: readonly [number, number, number];
  readonly fov_deg?: number;
  readonly sheen?: boolean;
  readonly mode?: PictureProps['mode'];
  readonly marksClipped?: boolean;
  readonly outlined?: readonly number[];
  readonly mark?: PictureProps['mark'];
  /** A card held at the mark; its colors as plain numbers, for they cross into the page as text. */
  readonly card?: Omit<NonNullable<PictureProps['card']>, 'linear'> & { readonly linear: readonly number[] };
  readonly markIsRight?: boolean;
  readonly laid?: LaidPattern;
  /** Where the bytes of the laid pattern are, which is baked already. */
  readonly bakedAt?: string;
  readonly size?: readonly [width: number, height: number];
}

let frames = 0;
let isDue = false;
const picks: (PickedPoint | null)[] = [];
const events: string[] = [];
const element = document.getElementById('root')!;
const root = createRoot(element);
const START: PictureProps = {
  room,
  light,
  look: smallLook(room, light),
  beside: null,
  viewpoint: { id: 'a', name: 'a', eye: [0.4, 0.3, 1.6], target: [2.4, 2.4, 0.9], fov_deg: 60, overview: true },
  viewpointVersion: 0,
  reducedMotion: true,
  sheen: false,
  outlined: [],
  onPick: (point) => picks.push(point),
  onContextLost: () => events.push('lost'),
  onContextRestored: () => events.push('restored'),
  onFrame: (due_ms) => {
    frames++;
    isDue = due_ms !== null;
  },
  label: 'A small room',
};
let props = START;

const render = () =>
  root.render(
    <StrictMode>
      <Picture {...props} />
    </StrictMode>,
  );

/** How many screen refreshes without a frame mean that none is under way. */
const STILL = 6;

/** A frame drawn already under way says nothing: waits until none is due and none has come for a while. */
async function settled(): Promise<void> {
  for (let still = 0; still < STILL; ) {
    const before = frames;
    await new Promise((resolve) => requestAnimationFrame(resolve));
    still = frames === before && !isDue ? still + 1 : 0;
  }
}

function asText(bytes: Uint8ClampedArray): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 8192) text += String.fromCharCode(...bytes.subarray(i, i + 8192));
  return btoa(text);
}

async function withBaked(change: LabChange): Promise<LabChange> {
  if (!change.laid?.baked || !change.bakedAt) return change;
  const data = new Uint8Array(await (await fetch(change.bakedAt)).arrayBuffer());
  return { ...change, laid: { ...change.laid, baked: { ...change.laid.baked, data } } };
}

const lab: Lab = {
  startOver() {
    element.removeAttribute('style');
    picks.length = 0;
    events.length = 0;
    props = { ...START, viewpointVersion: props.viewpointVersion + 1 };
    render();
    return settled();
  },
  async show(given) {
    const change = await withBaked(given);
    const { viewpoint } = props;
    if (change.size) element.style.cssText = `width:${change.size[0]}px;height:${change.size[1]}px`;
    props = {
      ...props,
      look:
        change.tint === undefined && !change.gloss && !change.laid
          ? props.look
          : smallLook(room, light, change.tint ?? 0, change.gloss, change.exposure, change.laid),
      beside:
        change.besideTint === undefined
          ? (props.beside ?? null)
          : change.besideTint === null
            ? null
            : smallLook(room, light, change.besideTint, change.gloss),
      viewpoint: {
        ...viewpoint,
        eye: change.eye ?? viewpoint.eye,
        target: change.target ?? viewpoint.target,
        fov_deg: change.fov_deg ?? viewpoint.fov_deg,
      },
      viewpointVersion: props.viewpointVersion + 1,
      sheen: change.sheen ?? props.sheen,
      mode: change.mode ?? 'color',
      marksClipped: change.marksClipped ?? false,
      outlined: change.outlined ?? props.outlined,
      mark: change.mark ?? props.mark ?? null,
      card: change.card ? { ...change.card, linear: Float32Array.from(change.card.linear) } : (props.card ?? null),
      markIsRight: change.markIsRight ?? props.markIsRight ?? false,
    };
    render();
    return settled();
  },
  picks,
  events,
  async read() {
    const { width, height, data } = await readPixels(element.querySelector('canvas')!);
    return { width, height, base64: asText(data) };
  },
  async render(size) {
    const { width, height, rgba } = await renderPicture(element.querySelector('canvas')!, size);
    return { width, height, base64: asText(rgba) };
  },
  frames: () => frames,
  held: () => ({ ...window.heldGpuObjects }),
  unmount: () => root.unmount(),
};
render();
void settled().then(() => Object.assign(window, { lab }));
