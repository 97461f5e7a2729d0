import { expect, it } from 'vitest';
import type { Warning } from '../../src/engine/judge/assessment';
import { judge } from '../../src/engine/judge/judge';
import type { DecisionState, SurfaceId } from '../../src/engine/surface';
import type { JudgedOption } from '../../src/kitchen/study/repairs/judged-option';
import { isSettled } from '../../src/kitchen/study/repairs/source-change';
import { scheme } from '../judgement/schemes';
import { terrace } from '../ui/terrace';

const ROOM: readonly SurfaceId[] = ['counter', 'backsplash', 'floor', 'appliance'];

function settled(
  code: Warning['code'],
  surfaces: readonly SurfaceId[],
  states: Partial<Record<SurfaceId, DecisionState>>,
) {
  const [option] = terrace().options;
  const placed = ROOM.map((one) => [one, { ...option!.scheme[one], state: states[one] ?? 'fixed' }] as const);
  const held = judge(scheme([['counter', 'EN-01', 50]]));
  const tinted = { ...held.surfaces[0]!, surface: 'counter' as const };
  const place = { ...tinted.installed[0]!, tint_from: [{ surface: 'floor', share: 0.6 }] as never };
  const from = {
    option: { ...option!, scheme: { ...option!.scheme, ...Object.fromEntries(placed) } },
    held: { ...held, surfaces: [{ ...tinted, installed: [place] }] },
  } as unknown as JudgedOption;
  return isSettled(from, { code, surfaces } as unknown as Warning, ROOM);
}

// Where the library had nothing else for an open counter, it was said to be fixed or ordered.
it.each([
  ['white-looks-dirty', ['counter', 'backsplash'], { backsplash: 'open' }, false],
  ['white-looks-dirty', ['counter', 'backsplash'], { backsplash: 'decided' }, false],
  ['white-looks-dirty', ['counter', 'backsplash'], { counter: 'ordered', floor: 'open' }, true],
  ['lacks-warm', ['counter'], { floor: 'open' }, false],
  ['lacks-warm', ['counter'], { appliance: 'open' }, true],
  ['tinted-by-bounce', ['counter'], { floor: 'open' }, false],
  ['tinted-by-bounce', ['counter'], { counter: 'open', backsplash: 'open' }, true],
  // Nothing in the room throws this tint: that is no matter of what is fixed.
  ['tinted-by-bounce', ['backsplash'], {}, false],
] as const)('%s of %j with %j: settled %s', (code, surfaces, states, is) => {
  expect(settled(code, surfaces, states)).toBe(is);
});
