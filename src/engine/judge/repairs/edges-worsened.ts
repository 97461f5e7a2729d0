import { edgePhrase, type WeakEdge } from '../edges';
import { oneDecimal } from '../number-words';

/** Points of LRV from which on an edge is said to have got worse. Our judgment. */
const WORSE = 1;

/** Edges that were hard to see before and are harder after, each in a sentence. */
export function edgesWorsened(before: readonly WeakEdge[], after: readonly WeakEdge[]): string[] {
  return after.flatMap((edge) => {
    const was = before.find(({ first, second }) => String([first, second]) === String([edge.first, edge.second]));
    if (!was?.isWeak || edge.difference > was.difference - WORSE) return [];
    return [
      `The edge between ${edgePhrase(edge)} gets harder to see: ${oneDecimal(edge.difference)} points of light reflectance apart instead of ${oneDecimal(was.difference)}.`,
    ];
  });
}
