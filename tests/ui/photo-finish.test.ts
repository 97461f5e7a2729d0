import { expect, it } from 'vitest';
import type { PhotoReading } from '../../src/engine/photo/read-sample';
import { isLeanSure } from '../../src/engine/photo/sure-lean';
import { layFinish } from '../../src/kitchen/study/lay-finish';
import { checkFinish } from '../../src/model/check-finish';
import type { Finish } from '../../src/model/project';
import { boxAt, middleOf, movedBox } from '../../src/ui/photo/boxes';
import { PHOTO_PATTERNS, type PhotoEntry, photoFinish, USUAL_MM } from '../../src/ui/photo/photo-finish';

const color = (l: number, a: number, b: number, share: number) => ({
  lab: { l, a, b },
  rawLab: { l, a, b },
  share,
  spreadDe00: 1,
});
const READING: PhotoReading = {
  colors: [color(88.04, -0.71, -0.36, 0.7712), color(65.6, -0.8, -4, 0.2288)],
  flags: [],
  provenance: 'photo-with-card',
  uncertaintyDe00: 2.5,
};
const ENTRY: PhotoEntry = {
  id: 'OWN-01',
  name: 'Shop slab',
  class: 'stone',
  gloss_gu: 28,
  pattern: 'veined',
  size_mm: 250,
  piece_mm: undefined,
};

const componentsOf = (finish: Finish) => {
  const laid = layFinish(new Map([[finish.id, finish]]), {
    finish: finish.id,
    state: 'open',
    laying: { layout: 'plain' },
  });
  if (!laid.ok) throw new Error(laid.problem.text);
  return laid.value.components;
};

it('makes a finish the project accepts, whatever pattern is chosen', () => {
  for (const pattern of PHOTO_PATTERNS) {
    const finish = photoFinish(READING, { ...ENTRY, pattern, size_mm: USUAL_MM[pattern] });
    expect(checkFinish(finish, 'library[0]')).toEqual([]);
    expect(finish.components.map(({ share }) => share)).toEqual([0.77, 0.23]);
    expect(finish.components[0]).toMatchObject({
      role: 'base',
      color: { kind: 'lab', lab: [88, -0.7, -0.4], illuminant: 'D65' },
    });
    expect(finish.pattern.kind).toBe(pattern);
    expect(componentsOf(finish).map(({ uncertaintyDe00 }) => uncertaintyDe00)).toEqual([2.5, 2.5]);
  }
  const plain = photoFinish({ ...READING, colors: [color(50, 0, 0, 1)] }, ENTRY);
  expect([plain.pattern.kind, plain.components.length]).toEqual(['plain', 1]);
});

it('carries more than usual uncertainty into every color, and never less', () => {
  const doubtful = photoFinish({ ...READING, uncertaintyDe00: 4.26 }, ENTRY);
  expect(doubtful.uncertainty_de00).toBe(4.3);
  expect(componentsOf(doubtful).map(({ uncertaintyDe00 }) => uncertaintyDe00)).toEqual([4.3, 4.3]);
  expect(photoFinish(READING, ENTRY)).not.toHaveProperty('uncertainty_de00');
  expect(componentsOf({ ...doubtful, uncertainty_de00: 0.5 })[0]!.uncertaintyDe00).toBe(2.5);
  expect(checkFinish({ ...doubtful, uncertainty_de00: 99 }, 'x')[0]?.code).toBe('out-of-range');
});

it('calls a lean sure only while it outlasts the usual error', () => {
  expect(isLeanSure({ l: 80, a: 1, b: 16 }, 1)).toBe(true);
  expect(isLeanSure({ l: 88, a: -0.7, b: -0.4 }, 2.5)).toBe(false);
  // More uncertainty never makes sure.
  for (const [l, a, b] of [
    [80, 1, 16],
    [37, -1.5, -5.5],
    [93, -0.3, 1.8],
  ] as const) {
    const sure = [0.1, 0.5, 1, 2.5, 5, 10].map((u) => isLeanSure({ l, a, b }, u));
    expect(sure).toEqual([...sure].sort((one, other) => Number(other) - Number(one)));
  }
});

it('keeps boxes within the picture, whole when they are moved whole', () => {
  const size = { width: 200, height: 100 };
  const quad = boxAt(size, 0.1, 0.1, 0.4, 0.6);
  expect(movedBox(quad, 2, { x: 999, y: -5 }, size)[2]).toEqual({ x: 200, y: 0 });
  const moved = movedBox(quad, null, { x: 999, y: 50 }, size);
  expect(Math.max(...moved.map(({ x }) => x))).toBeCloseTo(200, 9);
  expect(moved[1]!.x - moved[0]!.x).toBeCloseTo(quad[1]!.x - quad[0]!.x, 9);
  expect(middleOf(moved).y).toBeCloseTo(50, 9);
});
