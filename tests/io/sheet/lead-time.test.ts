import { expect, it } from 'vitest';
import { importOf } from './sample-files';

// Headings and cells as lists of suppliers have them: common practice, no source.

function toldOf(heading: string, ...cells: readonly string[]) {
  const rows = cells.map((cell, i) => `L${i}\t50\t0\t0\t${cell}`);
  const { notices } = importOf(`code\tL*\ta*\tb*\t${heading}\n${rows.join('\n')}`);
  return notices.filter(({ code }) => code === 'lead-time-unit').map(({ text }) => text);
}

it('lead times that name no unit are said to be read as weeks', () => {
  expect(toldOf('Lead time', '', '21')).toEqual(['Lead times that name no unit were read as weeks: "21" is 21 weeks.']);
  expect(toldOf('Lieferzeit', '3 Wochen', '2-3')).toHaveLength(1);
});

it.each([
  ['Lead time (days)', '21'],
  ['lead_time_weeks', '3'],
  ['Lieferzeit in Tagen', '21'],
  ['Lead time', '3 weeks'],
  ['Lead time', 'in stock'],
  ['Lead time', '0'],
])('nothing is said where the unit is known: %s, %s', (heading, cell) => {
  expect(toldOf(heading, cell)).toEqual([]);
});

it('the decimal comma is shown by a number of the file itself', () => {
  const { notices } = importOf('code;L*;a*;b*\nA;62,4;0,3;1,8');
  expect(notices.map(({ text }) => text).join(' ')).toContain('62,4 is 62.4');
});
