import type { LengthUnit } from '../model/length-text';
import type { TradeWords } from '../model/trade-words';
import type { Theme } from '../ui/bar/MoreMenu';
import type { AppState } from './state';

/** What somebody chose for this browser; nothing of it is part of a project. */
export type Preferences = Pick<AppState, 'theme' | 'letterKeys' | 'sheen' | 'words' | 'lengthUnit'>;

const KEY = 'upstand-preferences';
/** Where only the theme was kept before. */
const KEY_OF_THEME = 'upstand-theme';

const USUAL: Preferences = { theme: 'system', letterKeys: true, sheen: true, words: null, lengthUnit: null };

const ALLOWED: { readonly [K in keyof Preferences]: readonly Preferences[K][] } = {
  theme: ['system', 'light', 'dark'] satisfies Theme[],
  letterKeys: [true, false],
  sheen: [true, false],
  words: [null, 'us', 'uk'] satisfies (TradeWords | null)[],
  lengthUnit: [null, 'mm', 'in'] satisfies (LengthUnit | null)[],
};
const NAMES = Object.keys(ALLOWED) as (keyof Preferences)[];

/** Reads what was kept, entry by entry: what is missing or unknown is as usual. `theme`: what the older entry holds. */
export function readPreferences(text: string | null, theme: string | null = null): Preferences {
  const kept: Record<string, unknown> = { theme, ...recordOf(text) };
  return Object.fromEntries(
    NAMES.map((name) => [name, (ALLOWED[name] as readonly unknown[]).includes(kept[name]) ? kept[name] : USUAL[name]]),
  ) as unknown as Preferences;
}

function recordOf(text: string | null): Record<string, unknown> {
  try {
    const value: unknown = JSON.parse(text ?? '');
    return typeof value === 'object' && value !== null && !Array.isArray(value)
      ? (value as Record<string, unknown>)
      : {};
  } catch {
    return {};
  }
}

/** The preferences of last time; as usual where nothing is kept or storage is closed. */
export function keptPreferences(): Preferences {
  try {
    return readPreferences(localStorage.getItem(KEY), localStorage.getItem(KEY_OF_THEME));
  } catch {
    return USUAL;
  }
}

/** The preferences in a state, and nothing else. */
export const preferencesOf = (state: AppState): Preferences =>
  Object.fromEntries(NAMES.map((name) => [name, state[name]])) as unknown as Preferences;

/** What is kept once some were changed: what another tab changed meanwhile stays, and so do entries that this program does not know. */
export function changedPreferences(
  text: string | null,
  theme: string | null,
  now: Preferences,
  before: Preferences,
): string {
  const changed = NAMES.filter((name) => now[name] !== before[name]).map((name) => [name, now[name]]);
  return JSON.stringify({ ...(theme !== null && { theme }), ...recordOf(text), ...Object.fromEntries(changed) });
}

/** Keeps where the browser allows what was changed of them. */
export function keepPreferences(now: Preferences, before: Preferences): void {
  try {
    const kept = changedPreferences(localStorage.getItem(KEY), localStorage.getItem(KEY_OF_THEME), now, before);
    localStorage.setItem(KEY, kept);
    localStorage.removeItem(KEY_OF_THEME);
  } catch {
    // Private mode: they last for this visit only.
  }
}

/** Whether two states differ in them. */
export const isPreferring = (state: AppState, before: AppState): boolean =>
  NAMES.some((name) => state[name] !== before[name]);
