import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { idleRules, notAhead, phaseAt } from '../../src/app/showroom/idle-clock';

const MINUTE_MS = 60_000;

describe('the idle clock of a showroom', () => {
  const rules = idleRules(3);

  it('has nothing to start afresh from before the first touch', () => {
    expect(phaseAt(null, 1e12, rules)).toEqual({ kind: 'fresh' });
  });

  it('warns in the last 30 seconds, counts them down whole, then is over', () => {
    const at = (seconds: number) => phaseAt(1000, 1000 + seconds * 1000, rules);
    expect(at(0)).toEqual({ kind: 'used' });
    expect(at(149.999)).toEqual({ kind: 'used' });
    expect(at(150)).toEqual({ kind: 'warned', left_s: 30 });
    expect(at(150.001)).toEqual({ kind: 'warned', left_s: 30 });
    expect(at(151)).toEqual({ kind: 'warned', left_s: 29 });
    expect(at(179.999)).toEqual({ kind: 'warned', left_s: 1 });
    expect(at(180)).toEqual({ kind: 'over' });
    expect(at(1e6)).toEqual({ kind: 'over' });
  });

  it('warns for half of a time that is shorter than a minute', () => {
    expect(idleRules(0.5)).toEqual({ after_ms: 30_000, warning_ms: 15_000 });
  });

  it('does not wait longer when the clock is set back', () => {
    const touched = notAhead(10 * MINUTE_MS, 2 * MINUTE_MS);
    expect(touched).toBe(2 * MINUTE_MS);
    expect(phaseAt(touched, 5 * MINUTE_MS, rules)).toEqual({ kind: 'over' });
    expect(notAhead(null, 0)).toBeNull();
  });

  it('goes one way without a touch: used, warned with fewer seconds left, over', () => {
    const rank = { fresh: 0, used: 1, warned: 2, over: 3 };
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 60, noNaN: true }),
        fc.integer({ min: 0, max: 4e6 }),
        fc.integer({ min: 0, max: 4e6 }),
        (minutes, first, more) => {
          const [a, b] = [first, first + more].map((now) => phaseAt(0, now, idleRules(minutes)));
          expect(rank[b!.kind]).toBeGreaterThanOrEqual(rank[a!.kind]);
          if (a!.kind === 'warned' && b!.kind === 'warned') expect(b.left_s).toBeLessThanOrEqual(a.left_s);
          for (const phase of [a, b]) if (phase!.kind === 'warned') expect(phase.left_s).toBeGreaterThan(0);
        },
      ),
    );
  });
});
