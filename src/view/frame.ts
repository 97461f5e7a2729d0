import type { WebGLRenderer } from 'three';
import type { Pose } from './camera-rig';
import { drawPlanes } from './draw-planes';
import type { FrameParts } from './frame-parts';
import { HELD_LAYER } from './held-layer';
import { captureRoom } from './mirror-cube';
import { MotionQuality } from './motion-quality';
import { placeCamera } from './place-camera';
import { SharpTarget } from './sharp-target';
import { drawTiles, type Shot } from './tiles';
import { VIEW_MODE_NUMBERS } from './view-mode';

const SHARPEST_PIXEL_RATIO = 1.5;
/** A dragged slider changes the light many times a second; mirrored rooms may lag behind by this, ms. */
const CAPTURE_PAUSE_MS = 250;
/** When a camera that moved is looked at again, ms. */
const SETTLE_CHECK_MS = 170;

/** Draws frames, coarser while the camera moves, and remembers when the rooms in the mirrors were captured. */
export class FrameDrawer {
  #captured_ms = Number.NEGATIVE_INFINITY;
  readonly #sharp = new SharpTarget();
  readonly #quality = new MotionQuality();

  /**
   * Draws one frame. `sharp`: at full quality and with fresh mirrors whatever the camera does. Returns after how many
   * milliseconds another frame is due: 0 = at once, null = when something changes.
   */
  draw(parts: FrameParts, now_ms: number, sharp = false): number | null {
    const { renderer, rig } = parts;
    const pose = rig.poseAt(now_ms);
    const moving = !sharp && rig.isMoving(now_ms);
    if (moving) this.#quality.noteFrame(now_ms);
    const share = moving ? this.#quality.share : 1;
    const coarse = share < 1;
    const ratio = Math.min(SHARPEST_PIXEL_RATIO, window.devicePixelRatio) * share;
    if (renderer.getPixelRatio() !== ratio) renderer.setPixelRatio(ratio);
    showView(parts);
    parts.shared.hatchPlace.value.set(0, 0, renderer.getPixelRatio());
    const mirrorsDue = this.#refreshMirrors(parts, now_ms, moving, sharp);
    const { width, height } = renderer.domElement;
    if (!coarse) this.#sharp.resize(width, height);
    if (sharp) for (const { slot } of parts.halves) slot.planes.expire();
    drawHalves(parts, pose, width, height, coarse ? null : this.#sharp);
    if (rig.flying) return 0;
    return moving ? SETTLE_CHECK_MS : mirrorsDue;
  }

  /** Draws what is shown now beside the canvas, at any size. */
  drawBeside(parts: FrameParts, now_ms: number, shot: Shot): Uint8ClampedArray {
    showView(parts);
    this.#refreshMirrors(parts, now_ms, false, true);
    return drawTiles(parts, parts.rig.poseAt(now_ms), shot);
  }

  dispose(): void {
    this.#sharp.dispose();
  }

  #refreshMirrors(parts: FrameParts, now_ms: number, moving: boolean, sharp: boolean): number | null {
    const stale = parts.sheen ? parts.halves.filter(({ slot }) => slot.cubeIsStale) : [];
    if (stale.length === 0) return null;
    const due = this.#captured_ms + CAPTURE_PAUSE_MS - now_ms;
    if (!sharp && (due > 0 || (moving && Number.isFinite(this.#captured_ms)))) return Math.max(due, 1);
    for (const { slot, group } of stale) {
      captureRoom(parts.renderer, parts.scene, group, slot.cube, slot.mirror, parts.shared);
      slot.cubeIsStale = false;
    }
    this.#captured_ms = now_ms;
    return null;
  }
}

function showView({ shared, halves, sheen, mode, marksClipped }: FrameParts): void {
  for (const { slot } of halves) slot.showAs({ sheen, marked: mode !== 'color' || marksClipped });
  shared.viewMode.value = VIEW_MODE_NUMBERS[mode];
  shared.marksClipped.value = marksClipped ? 1 : 0;
}

/** Draws the halves side by side, onto the canvas or by way of the sharp target; width and height in device pixels. */
function drawHalves(parts: FrameParts, pose: Pose, width: number, height: number, sharp: SharpTarget | null): void {
  const { renderer, scene, camera, halves } = parts;
  const isSplit = halves.length > 1;
  camera.layers.enable(HELD_LAYER);
  halves.forEach((half, i) => {
    const left = Math.round((width * i) / halves.length);
    const halfWidth = Math.round((width * (i + 1)) / halves.length) - left;
    placeCamera(camera, pose, halfWidth / height);
    for (const other of halves) other.group.visible = other === half;
    drawPlanes(parts, half, { left, bottom: 0, width: halfWidth, height });
    if (sharp) {
      sharp.target.viewport.set(left, 0, halfWidth, height);
      sharp.target.scissor.set(left, 0, halfWidth, height);
      sharp.target.scissorTest = isSplit;
      renderer.setRenderTarget(sharp.target);
    } else {
      renderer.setRenderTarget(null);
      setCanvasArea(renderer, left, halfWidth, height, isSplit);
    }
    renderer.render(scene, camera);
    const area = { left, width: halfWidth, height };
    parts.outline?.draw(renderer, camera, { width, height }, area, sharp?.target ?? null);
  });
  if (!sharp) return;
  setCanvasArea(renderer, 0, width, height, false);
  sharp.copyToCanvas(renderer);
}

/** The renderer takes areas of the canvas in CSS pixels. */
function setCanvasArea(renderer: WebGLRenderer, left: number, width: number, height: number, scissor: boolean): void {
  const ratio = renderer.getPixelRatio();
  renderer.setScissorTest(scissor);
  renderer.setViewport(left / ratio, 0, width / ratio, height / ratio);
  renderer.setScissor(left / ratio, 0, width / ratio, height / ratio);
}
