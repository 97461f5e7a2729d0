import { describe, expect, it } from 'vitest';
import { addDays, isDay } from '../../src/model/order/day';

/** The platform's calendar, which `model` may not ask. */
const byPlatform = (ms: number) => new Date(ms).toISOString().slice(0, 10);
const MS_PER_DAY = 86_400_000;

describe('days', () => {
  it('go on as the calendar of the platform does, for 800 years', () => {
    const from = Date.UTC(1800, 0, 1);
    const other = Array.from({ length: 292_200 }, (_, n) => n).filter(
      (n) => addDays('1800-01-01', n) !== byPlatform(from + n * MS_PER_DAY),
    );
    expect(other).toEqual([]);
  });

  it.each(['2026-02-29', '1900-02-29', '2026-13-01', '2026-00-10', '2026-04-31', '2026-4-1', 'soon', ''])(
    '"%s" is none',
    (text) => expect(isDay(text)).toBe(false),
  );

  it('stay days at both ends of the calendar', () => {
    expect(addDays('0001-01-01', -2000)).toBe('0000-03-01');
    expect(addDays('9999-12-31', 1)).toBe('9999-12-31');
    expect([isDay('0000-01-15'), isDay('9999-12-31')]).toEqual([false, true]);
  });

  it('2000 and 2024 have leap days', () => {
    expect(addDays('2000-02-28', 1)).toBe('2000-02-29');
    expect(addDays('2024-03-01', -1)).toBe('2024-02-29');
  });
});
