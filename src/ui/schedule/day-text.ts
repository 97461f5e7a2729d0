import type { Day } from '../../model/order/day';
import { localeNow } from '../words/spoken';

/** A day as one reads it: "May 4, 2026", "4 May 2026". */
export const dayText = (day: Day): string =>
  new Intl.DateTimeFormat(localeNow(), { dateStyle: 'medium', timeZone: 'UTC' }).format(new Date(`${day}T00:00:00Z`));
