import type { CameraRig } from './camera-rig';

const RADIANS_PER_PX = 0.006;
const RADIANS_PER_KEY = 0.09;
const DOLLY_PER_KEY = 0.88;
const DOLLY_PER_WHEEL_PX = 0.0011;
/** A press that moves less than this is a click, px. */
const CLICK_SLOP_PX = 5;

/**
 * Hands and keys on the picture: one pointer turns, two pinch, the wheel moves nearer, arrows turn, + and - move; a press
 * without a drag is `onClick`. Returns the function that lets go again.
 */
export function listenForGestures(
  wrapper: HTMLElement,
  canvas: HTMLCanvasElement,
  rig: CameraRig,
  onMove: () => void,
  onClick: (clientX: number, clientY: number) => void,
): () => void {
  const pointers = new Map<number, { x: number; y: number }>();
  let pressedAt: { x: number; y: number } | null = null;
  let dragged = false;

  const spread = (): number => {
    const [a, b] = [...pointers.values()];
    return a && b ? Math.hypot(a.x - b.x, a.y - b.y) : 0;
  };

  const down = (event: PointerEvent): void => {
    if (event.pointerType === 'mouse' && event.button !== 0) return;
    canvas.setPointerCapture(event.pointerId);
    pointers.set(event.pointerId, { x: event.clientX, y: event.clientY });
    dragged = pointers.size > 1;
    pressedAt = { x: event.clientX, y: event.clientY };
  };

  const move = (event: PointerEvent): void => {
    const before = pointers.get(event.pointerId);
    if (!before) return;
    if (!dragged && pressedAt) {
      dragged = Math.hypot(event.clientX - pressedAt.x, event.clientY - pressedAt.y) > CLICK_SLOP_PX;
      if (!dragged) return;
    }
    const spreadBefore = spread();
    pointers.set(event.pointerId, { x: event.clientX, y: event.clientY });
    if (pointers.size === 1) {
      const right = event.clientX - before.x;
      const downward = event.clientY - before.y;
      rig.turn(-right * RADIANS_PER_PX, downward * RADIANS_PER_PX, performance.now());
    } else if (pointers.size === 2 && spread() > 0 && spreadBefore > 0) {
      rig.dolly(spreadBefore / spread(), performance.now());
    }
    onMove();
  };

  const up = (event: PointerEvent): void => {
    if (!pointers.delete(event.pointerId)) return;
    const isClick = event.type === 'pointerup' && !dragged && pointers.size === 0;
    if (isClick) onClick(event.clientX, event.clientY);
  };

  const wheel = (event: WheelEvent): void => {
    event.preventDefault();
    const px = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? event.deltaY * 16 : event.deltaY;
    rig.dolly(Math.exp(Math.max(-240, Math.min(240, px)) * DOLLY_PER_WHEEL_PX), performance.now());
    onMove();
  };

  const key = (event: KeyboardEvent): void => {
    if (event.altKey || event.ctrlKey || event.metaKey || !actOnKey(event.key, rig)) return;
    event.preventDefault();
    onMove();
  };

  canvas.addEventListener('pointerdown', down);
  canvas.addEventListener('pointermove', move);
  canvas.addEventListener('pointerup', up);
  canvas.addEventListener('pointercancel', up);
  canvas.addEventListener('wheel', wheel, { passive: false });
  wrapper.addEventListener('keydown', key);
  return () => {
    canvas.removeEventListener('pointerdown', down);
    canvas.removeEventListener('pointermove', move);
    canvas.removeEventListener('pointerup', up);
    canvas.removeEventListener('pointercancel', up);
    canvas.removeEventListener('wheel', wheel);
    wrapper.removeEventListener('keydown', key);
  };
}

function actOnKey(key: string, rig: CameraRig): boolean {
  const now = performance.now();
  switch (key) {
    case 'ArrowLeft':
      rig.turn(-RADIANS_PER_KEY, 0, now);
      return true;
    case 'ArrowRight':
      rig.turn(RADIANS_PER_KEY, 0, now);
      return true;
    case 'ArrowUp':
      rig.turn(0, RADIANS_PER_KEY, now);
      return true;
    case 'ArrowDown':
      rig.turn(0, -RADIANS_PER_KEY, now);
      return true;
    case '+':
    case '=':
      rig.dolly(DOLLY_PER_KEY, now);
      return true;
    case '-':
      rig.dolly(1 / DOLLY_PER_KEY, now);
      return true;
    default:
      return false;
  }
}
