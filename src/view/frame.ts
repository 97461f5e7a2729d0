import type { Group, PerspectiveCamera, Scene, WebGLRenderer } from 'three';
import type { CameraRig, Pose } from './camera-rig';
import type { LookSlot } from './look-slot';
import { captureRoom } from './mirror-cube';
import type { OutlineRibbon } from './outline-ribbon';
import { isPlumb, verticalFovDeg } from './projection';
import type { SharedUniforms } from './shared-uniforms';

const SHARPEST_PIXEL_RATIO = 1.5;
const MOVING_PIXEL_SHARE = 0.6;
/** A dragged slider changes the light many times a second; mirrored rooms may lag behind by this, ms. */
const CAPTURE_PAUSE_MS = 250;

/** One half of the picture (or all of it): a look and its meshes. */
export interface Half {
  readonly slot: LookSlot;
  readonly group: Group;
}

export interface FrameParts {
  readonly renderer: WebGLRenderer;
  readonly scene: Scene;
  readonly camera: PerspectiveCamera;
  readonly rig: CameraRig;
  readonly shared: SharedUniforms;
  readonly sheen: boolean;
  /** From left to right. */
  readonly halves: readonly Half[];
  readonly outline: OutlineRibbon | null;
}

/** Draws frames and remembers when the rooms in the mirrors were captured. */
export class FrameDrawer {
  #captured_ms = Number.NEGATIVE_INFINITY;

  /**
   * Draws one frame. `sharp`: at full resolution and with fresh mirrors whatever the camera does. Returns after how many
   * milliseconds another frame is due: 0 = at once, null = when something changes.
   */
  draw(parts: FrameParts, now_ms: number, sharp = false): number | null {
    const pose = parts.rig.poseAt(now_ms);
    const moving = !sharp && parts.rig.isMoving(now_ms);
    const ratio = Math.min(SHARPEST_PIXEL_RATIO, window.devicePixelRatio) * (moving ? MOVING_PIXEL_SHARE : 1);
    if (parts.renderer.getPixelRatio() !== ratio) parts.renderer.setPixelRatio(ratio);
    const mirrorsDue = this.#refreshMirrors(parts, now_ms, moving, sharp);
    drawHalves(parts, pose, ratio);
    if (parts.rig.flying) return 0;
    return moving ? 170 : mirrorsDue;
  }

  #refreshMirrors(parts: FrameParts, now_ms: number, moving: boolean, sharp: boolean): number | null {
    parts.shared.sheenOn.value = parts.sheen ? 1 : 0;
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

function drawHalves(parts: FrameParts, pose: Pose, ratio: number): void {
  const { renderer, scene, camera, halves } = parts;
  const canvas = renderer.domElement;
  const width = canvas.width / ratio;
  const height = canvas.height / ratio;
  renderer.setScissorTest(halves.length > 1);
  halves.forEach((half, i) => {
    const left = Math.round((width * i) / halves.length);
    const halfWidth = Math.round((width * (i + 1)) / halves.length) - left;
    renderer.setViewport(left, 0, halfWidth, height);
    renderer.setScissor(left, 0, halfWidth, height);
    placeCamera(camera, pose, halfWidth / height);
    parts.outline?.viewportPx.set(halfWidth * ratio, height * ratio);
    parts.outline?.setPixelRatio(ratio);
    for (const other of halves) other.group.visible = other === half;
    renderer.render(scene, camera);
  });
}

function placeCamera(camera: PerspectiveCamera, pose: Pose, aspect: number): void {
  camera.position.set(...pose.eye);
  if (isPlumb(pose)) camera.up.set(0, 1, 0);
  else camera.up.set(0, 0, 1);
  camera.lookAt(...pose.target);
  camera.aspect = aspect;
  camera.fov = verticalFovDeg(pose.fov_deg, aspect);
  camera.updateProjectionMatrix();
  camera.updateMatrixWorld();
}
