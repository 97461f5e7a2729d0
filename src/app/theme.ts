import type { Theme } from '../ui/bar/MoreMenu';

/** Puts the theme on the page. */
export function applyTheme(theme: Theme): void {
  if (theme === 'system') delete document.documentElement.dataset['theme'];
  else document.documentElement.dataset['theme'] = theme;
}
