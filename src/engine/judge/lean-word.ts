import type { Lab } from '../color/types';

/** How the second looks against the first, by the axis of CIELAB on which they differ most. */
export function leanWord(from: Lab<'D65-2'>, to: Lab<'D65-2'>): string {
  const axes: readonly (readonly [number, string, string])[] = [
    [to.a - from.a, 'redder', 'greener'],
    [to.b - from.b, 'yellower', 'bluer'],
    [to.l - from.l, 'lighter', 'darker'],
  ];
  const [step, more, less] = axes.reduce((most, axis) => (Math.abs(axis[0]) > Math.abs(most[0]) ? axis : most));
  return step > 0 ? more : less;
}
