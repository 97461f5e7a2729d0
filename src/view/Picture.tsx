import type { ReconcilerRoot, RootStore } from '@react-three/fiber';
import { type CSSProperties, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { CameraRig } from './camera-rig';
import { type CanvasSize, configureCanvasRoot, createCanvasRoot } from './canvas-root';
import { listenForGestures } from './gestures';
import { pickedAt } from './picked-at';
import { Scene } from './Scene';
import type { PictureProps } from './types';

interface Mounted {
  readonly canvas: HTMLCanvasElement;
  readonly root: ReconcilerRoot<HTMLCanvasElement>;
  readonly rig: CameraRig;
}

const WRAPPER: CSSProperties = { position: 'relative', width: '100%', height: '100%', overflow: 'hidden' };
const CANVAS = 'position:absolute;inset:0;display:block;touch-action:none;cursor:grab';
/** Black and white, to be seen on any picture and without a hue. */
const DIVIDER: CSSProperties = {
  position: 'absolute',
  insetBlock: 0,
  left: '50%',
  width: 2,
  marginLeft: -1,
  background: 'linear-gradient(to right, #fff 50%, #000 50%)',
  pointerEvents: 'none',
};

/**
 * The picture of a room in one look, or in two side by side. Draws when something changes, never otherwise. Drag turns, wheel
 * and pinch move nearer, arrows and + - do the same from the keyboard; a click picks a surface.
 */
export function Picture(props: PictureProps) {
  const { room, light, look, beside, viewpoint, viewpointVersion, sheen, outlined, mark, cardColor, onFrame, label } =
    props;
  const { mode, marksClipped, card: held, markIsRight, heightVersion = 0 } = props;
  const wrapper = useRef<HTMLDivElement>(null);
  const latest = useRef(props);
  const store = useRef<RootStore>(null);
  const [mounted, setMounted] = useState<Mounted | null>(null);
  const [size, setSize] = useState<CanvasSize>({ width: 0, height: 0 });
  const [contextVersion, setContextVersion] = useState(0);
  const [failure, setFailure] = useState<unknown>(null);
  if (failure) throw failure;

  useLayoutEffect(() => {
    latest.current = props;
  });

  useEffect(() => {
    const element = wrapper.current!;
    // A canvas of its own per mount: a context that was given up cannot be taken up again.
    const canvas = document.createElement('canvas');
    canvas.style.cssText = CANVAS;
    element.prepend(canvas);
    const { viewpoint: start, room: first } = latest.current;
    const rig = new CameraRig(start, first.light.fine, first.eyeLimits);
    const root = createCanvasRoot(canvas);
    let isLost = false;
    const lost = (event: Event): void => {
      event.preventDefault();
      isLost = true;
      latest.current.onContextLost?.();
    };
    const restored = (): void => {
      isLost = false;
      setContextVersion((version) => version + 1);
      latest.current.onContextRestored?.();
    };
    canvas.addEventListener('webglcontextlost', lost);
    canvas.addEventListener('webglcontextrestored', restored);
    const picked = (x: number, y: number) => pickedAt(canvas, rig, latest.current, x, y);
    const { picker } = latest.current;
    if (picker) picker.current = picked;
    const letGo = listenForGestures(
      element,
      canvas,
      rig,
      () => {
        store.current?.getState().invalidate();
        latest.current.onEye?.(rig.poseAt(performance.now()).eye);
      },
      (x, y) => latest.current.onPick?.(picked(x, y)),
    );
    // A picture that was away stands at its viewpoint, wherever its camera was before.
    latest.current.onEye?.(null);
    setMounted({ canvas, root, rig });
    return () => {
      letGo();
      if (picker) picker.current = null;
      canvas.removeEventListener('webglcontextlost', lost);
      canvas.removeEventListener('webglcontextrestored', restored);
      // A loss goes with its canvas: the next one has a context of its own.
      if (isLost) latest.current.onContextRestored?.();
      setMounted(null);
      store.current = null;
      root.unmount();
      canvas.remove();
    };
  }, []);

  useEffect(() => {
    const element = wrapper.current!;
    const measure = (): void => {
      const { clientWidth: width, clientHeight: height } = element;
      setSize((before) => (before.width === width && before.height === height ? before : { width, height }));
    };
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    measure();
    return () => observer.disconnect();
  }, []);

  useLayoutEffect(() => {
    if (!mounted || size.width === 0 || size.height === 0) return;
    configureCanvasRoot(mounted.root, size).catch(setFailure);
    // Setting the size empties the canvas; draw before the browser shows that.
    store.current?.getState().advance(performance.now(), false);
  }, [mounted, size]);

  useLayoutEffect(() => {
    if (!mounted || size.width === 0 || size.height === 0) return;
    mounted.rig.moveInto(room.light.fine, room.eyeLimits);
    const card = { mark: mark ?? null, cardColor: cardColor ?? null, card: held ?? null, markIsRight };
    const sceneProps = {
      room,
      light,
      look,
      beside,
      sheen,
      mode,
      marksClipped,
      outlined,
      ...card,
      onFrame,
      contextVersion,
    };
    store.current = mounted.root.render(<Scene {...sceneProps} rig={mounted.rig} />);
  }, [
    mounted,
    size,
    room,
    light,
    look,
    beside,
    sheen,
    mode,
    marksClipped,
    outlined,
    mark,
    cardColor,
    held,
    markIsRight,
    onFrame,
    contextVersion,
  ]);

  const [x, y, height] = viewpoint.eye;
  const place = [viewpoint.id, x, y, ...viewpoint.target, viewpoint.fov_deg, viewpointVersion].join();
  const shown = useRef({ place, height, heightVersion });
  const shownRoom = useRef(room);
  useEffect(() => {
    // There is no way from one room to another.
    const isElsewhere = shownRoom.current !== room;
    shownRoom.current = room;
    const before = shown.current;
    shown.current = { place, height, heightVersion };
    if (!mounted) return;
    const now = performance.now();
    if (before.place !== place) {
      mounted.rig.fly(latest.current.viewpoint, now, latest.current.reducedMotion || isElsewhere);
      latest.current.onEye?.(null);
    } else if (before.height !== height || before.heightVersion !== heightVersion) {
      mounted.rig.standAt(height, now);
    } else return;
    store.current?.getState().invalidate();
  }, [mounted, place, height, heightVersion, room]);

  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: arrows and + - move the camera while the picture has the focus
    <div ref={wrapper} role="img" aria-label={label} tabIndex={0} style={WRAPPER}>
      {beside && <div aria-hidden="true" style={DIVIDER} />}
    </div>
  );
}
