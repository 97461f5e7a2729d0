import type { Group, PerspectiveCamera, Scene, WebGLRenderer } from 'three';
import type { CameraRig } from './camera-rig';
import type { LookSlot } from './look-slot';
import type { OutlineMask } from './outline-mask';
import type { SharedUniforms } from './shared-uniforms';
import type { ViewMode } from './view-mode';

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
  readonly mode: ViewMode;
  readonly marksClipped: boolean;
  /** From left to right. */
  readonly halves: readonly Half[];
  readonly outline: OutlineMask | null;
}
