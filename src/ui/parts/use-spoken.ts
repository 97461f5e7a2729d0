import { type DependencyList, useMemo } from 'react';
import { choiceNow } from '../words/spoken';

/** As `useMemo`, for what has messages in it: made again when the choice of words or units changes, too. */
// biome-ignore lint/correctness/useExhaustiveDependencies: the caller names them
export const useSpoken = <T>(make: () => T, rests: DependencyList): T => useMemo(make, [...rests, choiceNow()]);
