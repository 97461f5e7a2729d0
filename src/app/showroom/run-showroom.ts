import type { StoreApi } from 'zustand/vanilla';
import type { AppState } from '../state';
import { enterFullScreen, isFullScreen } from './full-screen';
import { idleRules, type LastTouch, notAhead, phaseAt } from './idle-clock';
import type { Showroom } from './showroom-state';
import { startOver } from './start-over';
import { keepAwake } from './wake-lock';

/** How often the time is looked at, ms. */
const LOOK_EVERY_MS = 500;
const TOUCHES = ['pointerdown', 'pointermove', 'wheel', 'keydown', 'input'] as const;

/**
 * Runs the showroom mode for as long as the page is open: starts afresh when nobody has touched it for a while, keeps the screen on, and
 * fills it at the first touch if that is wanted (browsers allow it only then). The time goes on while the page is hidden: whoever
 * left a covered tablet has left. In the warning only what is asked there counts as an answer.
 */
export function runShowroom(store: StoreApi<AppState>, { minutes, fillsScreen }: Showroom): void {
  document.documentElement.dataset['showroom'] = '';
  keepAwake();
  const rules = idleRules(minutes);
  let touched: LastTouch = null;
  const look = () => {
    touched = notAhead(touched, Date.now());
    const phase = phaseAt(touched, Date.now(), rules);
    if (phase.kind === 'over') {
      touched = null;
      startOver(store);
      return;
    }
    const startsAfreshIn_s = phase.kind === 'warned' ? phase.left_s : null;
    if (store.getState().startsAfreshIn_s !== startsAfreshIn_s) store.setState({ startsAfreshIn_s });
  };
  const touch = () => {
    if (store.getState().startsAfreshIn_s === null) touched = Date.now();
  };
  for (const kind of TOUCHES) window.addEventListener(kind, touch, { capture: true, passive: true });
  if (fillsScreen) {
    window.addEventListener('pointerup', () => {
      if (!isFullScreen()) enterFullScreen();
    });
  }
  window.setInterval(look, LOOK_EVERY_MS);
  document.addEventListener('visibilitychange', look);
  store.subscribe((state, before) => {
    // Somebody went on, or started over by hand.
    if (state.startsAfreshIn_s === null && before.startsAfreshIn_s !== null)
      touched = touched === null ? null : Date.now();
    if (state.showroomRun !== before.showroomRun) touched = state.bringBack === null ? Date.now() : null;
  });
}
