const KEY = 'upstand-open';

/** Notes which project is open: for this tab, and for one that begins anew. */
export function noteOpen(project: string): void {
  try {
    sessionStorage.setItem(KEY, project);
    localStorage.setItem(KEY, project);
  } catch {
    // Private mode: nothing is kept there anyway.
  }
}

/** The project that was open in this tab, or in the one used last; null where none is kept. Read at once: a first visit waits for nothing. */
export function notedOpen(): string | null {
  try {
    return sessionStorage.getItem(KEY) ?? localStorage.getItem(KEY);
  } catch {
    return null;
  }
}
