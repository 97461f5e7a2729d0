import { createRoot, extend, type ReconcilerRoot } from '@react-three/fiber';
import { Group, Mesh } from 'three';

// Only what the scene names in JSX: registering all of three would keep all of it in the bundle.
extend({ Group, Mesh });

export interface CanvasSize {
  readonly width: number;
  readonly height: number;
}

/**
 * A drawing surface in `canvas`: opaque, drawn on demand, colours untouched. Pixel ratio and
 * multisampling are the frame drawer's business.
 */
export function createCanvasRoot(canvas: HTMLCanvasElement): ReconcilerRoot<HTMLCanvasElement> {
  return createRoot(canvas);
}

/** Applies size and settings; may be called again when the size changes. Rejects when no context is to be had. */
export async function configureCanvasRoot(root: ReconcilerRoot<HTMLCanvasElement>, size: CanvasSize): Promise<void> {
  await root.configure({
    gl: { antialias: false, alpha: false, powerPreference: 'high-performance' },
    camera: CAMERA,
    flat: true,
    frameloop: 'demand',
    dpr: 1,
    size: { width: size.width, height: size.height, top: 0, left: 0 },
  });
}

const CAMERA = { near: 0.03, far: 60, up: [0, 0, 1] as const, manual: true };
