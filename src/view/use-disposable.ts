import { type DependencyList, useEffect, useMemo } from 'react';

/**
 * Makes something once per set of dependencies and disposes of it when they change or the component goes. Nothing made here
 * may take hold of the graphics card before it is drawn: a render that React drops leaves no trace then.
 */
export function useDisposable<T extends { dispose(): void } | null>(make: () => T, dependencies: DependencyList): T {
  // biome-ignore lint/correctness/useExhaustiveDependencies: the caller names them
  const made = useMemo(make, dependencies);
  useEffect(() => () => made?.dispose(), [made]);
  return made;
}
