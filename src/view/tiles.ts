import { NearestFilter, type WebGLRenderer, WebGLRenderTarget } from 'three';
import type { Pose } from './camera-rig';
import { drawPlanes } from './draw-planes';
import type { FrameParts } from './frame-parts';
import { HELD_LAYER } from './held-layer';
import { type Crop, placeCamera } from './place-camera';
import { SHARP_SAMPLES } from './sharp-target';

/** A picture drawn beside the canvas. */
export interface Shot {
  /** Whole pixels. */
  readonly width: number;
  readonly height: number;
  /** Pixels of the shot per CSS pixel: how wide lines and stripes are. */
  readonly pixelRatio: number;
  /** With the outline and the cards held in the room. */
  readonly marks: boolean;
}

/** Larger pictures are drawn in tiles: one of this size takes some 130 MB while it is drawn. */
const TILE_PX = 2048;
/** What an outline looks at round a pixel, CSS pixels: tiles overlap by that. */
const OUTLINE_REACH = 8;

/** A stretch of pixels. */
interface Stretch {
  readonly from: number;
  readonly to: number;
}

/**
 * Draws the picture of a pose tile by tile and half by half, as sharp as one at rest. RGBA bytes, rows from the top. What it leaves
 * on the canvas is as before.
 */
export function drawTiles(parts: FrameParts, pose: Pose, shot: Shot): Uint8ClampedArray {
  const { renderer, scene, halves } = parts;
  const whole = new Uint8ClampedArray(4 * shot.width * shot.height);
  const visible = scene.children.map((child) => child.visible);
  if (shot.marks) parts.camera.layers.enable(HELD_LAYER);
  else parts.camera.layers.disable(HELD_LAYER);
  const margin = shot.marks && parts.outline ? Math.ceil(OUTLINE_REACH * shot.pixelRatio) : 0;
  const tile = tileSize(renderer, margin);
  halves.forEach((half, i) => {
    const from = Math.round((shot.width * i) / halves.length);
    const to = Math.round((shot.width * (i + 1)) / halves.length);
    for (const other of halves) other.group.visible = other === half;
    for (const x of stretches({ from, to }, tile)) {
      for (const y of stretches({ from: 0, to: shot.height }, tile)) {
        drawTile(parts, pose, shot, { from, to }, x, y, margin, whole);
      }
    }
  });
  scene.children.forEach((child, i) => {
    child.visible = visible[i]!;
  });
  renderer.setRenderTarget(null);
  return whole;
}

/** Draws one tile of a half (x and y from the left and from the bottom of the shot) and puts it in its place. */
function drawTile(
  parts: FrameParts,
  pose: Pose,
  { width, height, pixelRatio, marks }: Shot,
  half: Stretch,
  x: Stretch,
  y: Stretch,
  margin: number,
  whole: Uint8ClampedArray,
): void {
  const { renderer, scene, camera, shared } = parts;
  const left = Math.max(half.from, x.from - margin);
  const right = Math.min(half.to, x.to + margin);
  const bottom = Math.max(0, y.from - margin);
  const top = Math.min(height, y.to + margin);
  const size = { width: right - left, height: top - bottom };
  const target = new WebGLRenderTarget(size.width, size.height, {
    samples: SHARP_SAMPLES,
    minFilter: NearestFilter,
    magFilter: NearestFilter,
  });
  const across = half.to - half.from;
  const crop: Crop = {
    left: (left - half.from) / across,
    right: (right - half.from) / across,
    bottom: bottom / height,
    top: top / height,
  };
  placeCamera(camera, pose, across / height, crop);
  shared.hatchPlace.value.set(left, bottom, pixelRatio);
  const shown = parts.halves.find(({ group }) => group.visible)!;
  drawPlanes(parts, shown, { left: 0, bottom: 0, ...size });
  renderer.setRenderTarget(target);
  renderer.render(scene, camera);
  if (marks) parts.outline?.draw(renderer, camera, size, { left: 0, ...size }, target, { left, bottom, pixelRatio });
  const bytes = new Uint8Array(4 * (x.to - x.from) * (y.to - y.from));
  renderer.readRenderTargetPixels(target, x.from - left, y.from - bottom, x.to - x.from, y.to - y.from, bytes);
  target.dispose();
  const row = 4 * (x.to - x.from);
  for (let line = y.from; line < y.to; line++) {
    const at = (line - y.from) * row;
    whole.set(bytes.subarray(at, at + row), 4 * ((height - 1 - line) * width + x.from));
  }
}

function tileSize(renderer: WebGLRenderer, margin: number): number {
  const gl = renderer.getContext();
  const [wide, high] = gl.getParameter(gl.MAX_VIEWPORT_DIMS) as Int32Array;
  const most = Math.min(wide!, high!, gl.getParameter(gl.MAX_RENDERBUFFER_SIZE) as number);
  return Math.min(TILE_PX, most) - 2 * margin;
}

function stretches({ from, to }: Stretch, size: number): Stretch[] {
  const parts = Math.ceil((to - from) / size);
  const at = (i: number): number => from + Math.round(((to - from) * i) / parts);
  return Array.from({ length: parts }, (_, i) => ({ from: at(i), to: at(i + 1) }));
}
