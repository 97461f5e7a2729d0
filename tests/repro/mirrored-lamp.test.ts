import { expect, it } from 'vitest';
import { intensityOf } from '../../src/engine/photometry/web-intensity';
import { webFromIes } from '../../src/io/ies-file';
import { ies } from '../io/ies-text';

// A lamp measured from 90 to 270 degrees in very fine steps held the program up for half a minute: every angle of the
// other side was looked for from the first one on.

const finely = (steps: number) => {
  const horizontal = Array.from({ length: steps + 1 }, (_, i) => Number((90 + (180 * i) / steps).toFixed(4)));
  return webFromIes(ies({ vertical: [0, 90], horizontal, planes: horizontal.map((h) => [100, Math.abs(h - 180)]) }));
};

it('completes a lamp that was measured on one side in fine steps', () => {
  const read = finely(20_000);
  if (!read.ok) throw new Error(read.problem.text);
  const { web } = read.value;
  expect(web.candela).toHaveLength(2 * 40_001);
  for (const h of [0, 12, 45, 89, 90, 150, 180]) {
    expect(intensityOf(web, 90, h), `${h}`).toBeCloseTo(h < 90 ? h : 180 - h, 6);
    expect(intensityOf(web, 90, (540 - h) % 360), `${h}`).toBeCloseTo(intensityOf(web, 90, h), 6);
  }
});

it('refuses one that both sides together make too large', () => {
  const read = finely(30_000);
  expect(!read.ok && read.problem).toMatchObject({ code: 'too-many-candela', text: expect.stringMatching('120002') });
});
