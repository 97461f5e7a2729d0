import type { StoreApi } from 'zustand/vanilla';
import type { PatternSpec, PatternTexture } from '../engine/pattern/types';
import type { Studio } from '../workers/studio';
import { paintCard } from './held-card';
import { drawnScene, isRoomOutdated } from './scene';
import { type AppState, projectOf, shownOption } from './state';

/** Cards whose pattern is kept for the next place they are held at. */
const MOST_PATTERNS = 6;

/**
 * Keeps the card held at the picked place true: it goes as soon as something it depends on changes, and comes back colored for the
 * light that is shown then.
 */
export function followHeld(
  store: StoreApi<AppState>,
  readHeld: Studio['readHeld'],
  bake: (spec: PatternSpec) => Promise<PatternTexture>,
): () => void {
  let asked = 0;
  const patterns = new Map<string, Promise<PatternTexture>>();
  const patternOf = (key: string, spec: PatternSpec) => {
    const known = patterns.get(key) ?? bake(spec);
    patterns.delete(key);
    patterns.set(key, known);
    if (patterns.size > MOST_PATTERNS) patterns.delete(patterns.keys().next().value!);
    return known;
  };
  const read = async (state: AppState) => {
    const mine = ++asked;
    const { picked, held } = state;
    const { id: option } = shownOption(state);
    const drawn = drawnScene(state);
    const look = drawn.looks[option];
    if (isRoomOutdated(state)) return;
    if (!picked || !held || look?.setting !== state.setting || look.seenBy !== state.seenBy) return;
    const reading = await readHeld({ option, ...picked, onStand: drawn.id === 'stand' }, held);
    if (mine !== asked) return;
    const pattern = reading?.pattern ? await patternOf(reading.pattern.key, reading.pattern.spec) : null;
    if (mine === asked) store.setState({ heldCard: reading && { reading, paint: paintCard(reading, pattern) } });
  };
  return store.subscribe((state, before) => {
    const isOther =
      state.picked !== before.picked ||
      state.held !== before.held ||
      state.setting !== before.setting ||
      state.seenBy !== before.seenBy ||
      projectOf(state) !== projectOf(before) ||
      shownOption(state).id !== shownOption(before).id;
    const drawn = [drawnScene(state), drawnScene(before)] as const;
    const isDrawnAnew = lookOf(state) !== lookOf(before) || drawn[0].light !== drawn[1].light;
    if (isOther) {
      asked++;
      if (state.heldCard) store.setState({ heldCard: null });
    }
    if (isOther || isDrawnAnew) void read(state);
  });
}

const lookOf = (state: AppState) => drawnScene(state).looks[shownOption(state).id];
