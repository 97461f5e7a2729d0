import type { Theme } from '../ui/bar/MoreMenu';

const KEY = 'upstand-theme';

/** The theme kept from last time; as the system when nothing is kept or storage is closed. */
export function keptTheme(): Theme {
  try {
    const kept = localStorage.getItem(KEY);
    return kept === 'light' || kept === 'dark' ? kept : 'system';
  } catch {
    return 'system';
  }
}

/** Puts the theme on the page and keeps it where the browser allows. */
export function applyTheme(theme: Theme): void {
  if (theme === 'system') delete document.documentElement.dataset['theme'];
  else document.documentElement.dataset['theme'] = theme;
  try {
    localStorage.setItem(KEY, theme);
  } catch {
    // Private mode: the theme lasts for this visit only.
  }
}
