import { expect, it } from 'vitest';
import { mulberry32 } from '../random';
import { BorderedTridiagonal } from './bordered-tridiagonal';

/** Residual of the bordered system, computed from its definition. */
function worstResidual(system: BorderedTridiagonal, size: number): number {
  let worst = 0;
  for (let i = 0; i < size; i++) {
    let sum = system.diagonal[i]! * system.x[i]!;
    if (i > 0) sum += system.beside * system.x[i - 1]!;
    if (i < size - 1) sum += system.beside * system.x[i + 1]!;
    for (let r = 0; r < 3; r++) sum += system.border[3 * i + r]! * system.y[r]!;
    worst = Math.max(worst, Math.abs(sum - system.f[i]!));
  }
  for (let r = 0; r < 3; r++) {
    let sum = 0;
    for (let i = 0; i < size; i++) sum += system.border[3 * i + r]! * system.x[i]!;
    worst = Math.max(worst, Math.abs(sum - system.g[r]!));
  }
  return worst;
}

it.each([
  ['singular (pure slope)', (_random: () => number, i: number, size: number) => (i === 0 || i === size - 1 ? 2 : 4)],
  [
    'nearly singular, as Newton meets it',
    (random: () => number, i: number, size: number) => (i === 0 || i === size - 1 ? 2 : 4) + 0.02 * (random() - 0.7),
  ],
  ['positive definite', () => 5],
  ['indefinite, small pivots', (random: () => number) => 6 * random() - 3],
])('solves a system whose tridiagonal part is %s', (_name, entry) => {
  for (let trial = 0; trial < 50; trial++) {
    const random = mulberry32(trial + 1);
    const size = 5 + Math.floor(77 * random());
    const system = new BorderedTridiagonal(size, -2);
    for (let i = 0; i < size; i++) {
      system.diagonal[i] = entry(random, i, size);
      system.f[i] = random() - 0.5;
      for (let r = 0; r < 3; r++) system.border[3 * i + r] = random();
    }
    for (let r = 0; r < 3; r++) system.g[r] = random() - 0.5;
    expect(system.solve()).toBe(true);
    const largest = system.x.reduce((most, value) => Math.max(most, Math.abs(value)), 1);
    expect(worstResidual(system, size) / largest).toBeLessThan(1e-7);
  }
});

it('reports a system without a solution', () => {
  const system = new BorderedTridiagonal(6, -2);
  system.diagonal.fill(4);
  expect(system.solve()).toBe(false);
});
