const count = new Intl.NumberFormat('en-US', { maximumFractionDigits: 2 });

/** Weeks as one says them, halves as such: "half a week", "1 week", "2½ weeks", "3.25 weeks". */
export function leadTime(weeks: number): string {
  if (weeks === 0.5) return 'half a week';
  if (weeks === 1) return '1 week';
  return weeks % 1 === 0.5 ? `${count.format(Math.floor(weeks))}½ weeks` : `${count.format(weeks)} weeks`;
}
