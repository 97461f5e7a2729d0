import type { Day } from '../model/order/day';

/** The day it is, by the clock of this device and where it is. */
export function today(now = new Date()): Day {
  const two = (value: number) => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
