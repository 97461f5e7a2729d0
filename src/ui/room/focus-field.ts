const CONTROL = 'input, select, button';
const CHOSEN = 'input:checked';

/** Opens what folds a field away, brings it into sight and gives it the focus. `path`: its place in the kitchen. */
export function focusField(within: HTMLElement | null, path: string): void {
  const field = within?.querySelector<HTMLElement>(`[data-field="${CSS.escape(path)}"]`);
  const fold = field?.closest('details');
  if (fold) fold.open = true;
  const control = field?.matches(CONTROL) ? field : field?.querySelector<HTMLElement>(`${CHOSEN}, ${CONTROL}`);
  control?.focus({ preventScroll: true });
  control?.scrollIntoView({ block: 'center' });
}
