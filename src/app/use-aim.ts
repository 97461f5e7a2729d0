import { type KeyboardEvent, type RefObject, useEffect, useState } from 'react';
import { surfaceName } from '../ui/words/engine-words';
import { integer } from '../ui/words/numbers';
import { AIM } from '../ui/words/picture';
import type { PickedPoint } from '../view/types';
import { useApp, useAppState } from './context';
import { drawnScene } from './scene';
import { aimAtStart } from './state';

/** Shares of the picture by which an arrow key moves the mark. */
const STEP = 0.01;
const LARGE_STEP = 0.06;

const WAYS: Readonly<Record<string, readonly [x: number, y: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/**
 * The reading mark by keys: M or Enter puts it in the middle of the picture, arrows move it, Enter reads there, Esc takes it
 * away. `said` is for screen readers. Keys are caught before the picture turns by them.
 */
export function useAim(
  picker: RefObject<((clientX: number, clientY: number) => PickedPoint | null) | null>,
  isSplit: boolean,
  onPick: (point: PickedPoint | null, isRight: boolean) => void,
) {
  const { store } = useApp();
  const aim = useAppState((state) => state.aim);
  const point = useAppState((state) => state.point);
  const [said, setSaid] = useState('');

  const isAiming = aim !== null;
  useEffect(() => {
    if (isAiming) setSaid(AIM.start);
  }, [isAiming]);

  useEffect(() => {
    if (point && store.getState().aim) setSaid(AIM.read(surfaceName(point.surface), integer(point.lux)));
  }, [point, store]);

  const under = (box: DOMRect, x: number, y: number) =>
    picker.current?.(box.left + x * box.width, box.top + y * box.height) ?? null;

  const onKeyDownCapture = (event: KeyboardEvent<HTMLElement>) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const { letterKeys } = store.getState();
    const { room } = drawnScene(store.getState());
    const box = event.currentTarget.getBoundingClientRect();
    const take = () => {
      event.preventDefault();
      event.stopPropagation();
    };
    if (!aim) {
      if (event.key !== 'Enter' && !(letterKeys && event.key.toLowerCase() === 'm')) return;
      take();
      return store.setState({ aim: aimAtStart(isSplit) });
    }
    if (event.key === 'Escape') {
      take();
      if (store.getState().held && store.getState().picked) return store.setState({ held: null });
      setSaid('');
      return store.setState({ aim: null, picked: null });
    }
    if (event.key === 'Enter') {
      take();
      const found = under(box, aim.x, aim.y);
      if (!found) setSaid(AIM.nothing);
      return onPick(found, aim.x > 0.5);
    }
    const way = WAYS[event.key];
    if (!way) return;
    take();
    const step = event.shiftKey ? LARGE_STEP : STEP;
    const within = (value: number) => Math.min(0.995, Math.max(0.005, value));
    const next = { x: within(aim.x + way[0] * step), y: within(aim.y + way[1] * step) };
    store.setState({ aim: next });
    const surface = room?.surfaces[under(box, next.x, next.y)?.surface ?? -1];
    setSaid(surface ? surfaceName(surface) : AIM.nothing);
  };
  return { aim, said, onKeyDownCapture };
}
