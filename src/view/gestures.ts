import type { CameraRig } from './camera-rig';

const RADIANS_PER_PX = 0.006;
const RADIANS_PER_KEY = 0.09;
const DOLLY_PER_KEY = 0.88;
const DOLLY_PER_WHEEL_PX = 0.0011;
const STEP_PER_KEY_M = 0.15;
const LIFT_PER_KEY_M = 0.05;
/** A press that moves less than this is a click, px: a mouse and a pen are held still, a finger rolls. */
const CLICK_SLOP_PX = { fine: 5, finger: 10 } as const;
/** The second button of a mouse or pen. */
const SECOND_BUTTON = 2;

/**
 * Hands and keys on the picture. One finger, the pen or the mouse turns; two fingers, the second button or Shift move the eye
 * sideways and up, a pinch or the wheel nearer; arrows turn, with Shift they walk, Page Up and Down lift, + and - go nearer. A
 * press without a drag is `onClick`; `onMove` follows each movement. Returns the function that lets go again.
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
  let moves = false;
  let press: { x: number; y: number } | null = null;

  const spread = (): number => {
    const [a, b] = [...pointers.values()];
    return a && b ? Math.hypot(a.x - b.x, a.y - b.y) : 0;
  };

  const down = (event: PointerEvent): void => {
    const isSecond = event.pointerType !== 'touch' && event.button === SECOND_BUTTON;
    if (event.button !== 0 && !isSecond) return;
    canvas.setPointerCapture(event.pointerId);
    pointers.set(event.pointerId, { x: event.clientX, y: event.clientY });
    moves = isSecond || event.shiftKey;
    dragged = pointers.size > 1;
    pressedAt = { x: event.clientX, y: event.clientY };
    press = null;
  };

  /** What is looked at goes along with the hand. */
  const slide = (right_px: number, down_px: number): void => {
    const meters = rig.metersPerPixel(canvas.clientHeight);
    rig.walk(0, -right_px * meters, performance.now());
    rig.lift(down_px * meters, performance.now());
  };

  const move = (event: PointerEvent): void => {
    const before = pointers.get(event.pointerId);
    if (!before) return;
    if (!dragged && pressedAt) {
      const slop = event.pointerType === 'touch' ? CLICK_SLOP_PX.finger : CLICK_SLOP_PX.fine;
      dragged = Math.hypot(event.clientX - pressedAt.x, event.clientY - pressedAt.y) > slop;
      if (!dragged) return;
    }
    const spreadBefore = spread();
    pointers.set(event.pointerId, { x: event.clientX, y: event.clientY });
    const right = event.clientX - before.x;
    const downward = event.clientY - before.y;
    if (pointers.size === 2) {
      // Of two fingers one moves at a time: their middle goes half as far.
      slide(right / 2, downward / 2);
      if (spread() > 0 && spreadBefore > 0) rig.dolly(spreadBefore / spread(), performance.now());
    } else if (pointers.size === 1 && moves) {
      slide(right, downward);
    } else if (pointers.size === 1) {
      rig.turn(-right * RADIANS_PER_PX, downward * RADIANS_PER_PX, performance.now());
    }
    onMove();
  };

  const up = (event: PointerEvent): void => {
    if (!pointers.delete(event.pointerId)) return;
    const isPress = event.type === 'pointerup' && !dragged && !moves && pointers.size === 0;
    press = isPress ? { x: event.clientX, y: event.clientY } : null;
  };

  // Only at the click that follows a press: what opens may move the page under the finger, and a click still to come would meet
  // it. The place is that of the press, as clicks are told in whole pixels.
  const click = (): void => {
    if (press) onClick(press.x, press.y);
    press = null;
  };

  const wheel = (event: WheelEvent): void => {
    event.preventDefault();
    const px = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? event.deltaY * 16 : event.deltaY;
    rig.dolly(Math.exp(Math.max(-240, Math.min(240, px)) * DOLLY_PER_WHEEL_PX), performance.now());
    onMove();
  };

  const key = (event: KeyboardEvent): void => {
    if (event.altKey || event.ctrlKey || event.metaKey || !actOnKey(event.key, event.shiftKey, rig)) return;
    event.preventDefault();
    onMove();
  };

  // The second button moves the eye.
  const menu = (event: MouseEvent): void => event.preventDefault();

  canvas.addEventListener('contextmenu', menu);
  canvas.addEventListener('pointerdown', down);
  canvas.addEventListener('pointermove', move);
  canvas.addEventListener('pointerup', up);
  canvas.addEventListener('pointercancel', up);
  canvas.addEventListener('click', click);
  canvas.addEventListener('wheel', wheel, { passive: false });
  wrapper.addEventListener('keydown', key);
  return () => {
    canvas.removeEventListener('contextmenu', menu);
    canvas.removeEventListener('pointerdown', down);
    canvas.removeEventListener('pointermove', move);
    canvas.removeEventListener('pointerup', up);
    canvas.removeEventListener('pointercancel', up);
    canvas.removeEventListener('click', click);
    canvas.removeEventListener('wheel', wheel);
    wrapper.removeEventListener('keydown', key);
  };
}

/** What a key does to the camera; with Shift, arrows walk. */
const KEYS: Readonly<Record<string, (rig: CameraRig, now_ms: number) => void>> = {
  ArrowLeft: (rig, now) => rig.turn(-RADIANS_PER_KEY, 0, now),
  ArrowRight: (rig, now) => rig.turn(RADIANS_PER_KEY, 0, now),
  ArrowUp: (rig, now) => rig.turn(0, RADIANS_PER_KEY, now),
  ArrowDown: (rig, now) => rig.turn(0, -RADIANS_PER_KEY, now),
  PageUp: (rig, now) => rig.lift(LIFT_PER_KEY_M, now),
  PageDown: (rig, now) => rig.lift(-LIFT_PER_KEY_M, now),
  '+': (rig, now) => rig.dolly(DOLLY_PER_KEY, now),
  '=': (rig, now) => rig.dolly(DOLLY_PER_KEY, now),
  '-': (rig, now) => rig.dolly(1 / DOLLY_PER_KEY, now),
};

const SHIFT_KEYS: typeof KEYS = {
  ArrowLeft: (rig, now) => rig.walk(0, -STEP_PER_KEY_M, now),
  ArrowRight: (rig, now) => rig.walk(0, STEP_PER_KEY_M, now),
  ArrowUp: (rig, now) => rig.walk(STEP_PER_KEY_M, 0, now),
  ArrowDown: (rig, now) => rig.walk(-STEP_PER_KEY_M, 0, now),
};

function actOnKey(key: string, shift: boolean, rig: CameraRig): boolean {
  const act = (shift ? SHIFT_KEYS[key] : undefined) ?? KEYS[key];
  act?.(rig, performance.now());
  return act !== undefined;
}
