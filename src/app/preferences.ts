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
    return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
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

/** Keeps them where the browser allows. */
export function keepPreferences(preferences: Preferences): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(preferences));
    localStorage.removeItem(KEY_OF_THEME);
  } catch {
    // Private mode: they last for this visit only.
  }
}

/** Whether two states differ in them. */
export const isPreferring = (state: AppState, before: AppState): boolean =>
  NAMES.some((name) => state[name] !== before[name]);
