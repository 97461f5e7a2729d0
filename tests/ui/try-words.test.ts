import { expect, it } from 'vitest';
import type { Warning } from '../../src/engine/judge/assessment';
import { SURFACES } from '../../src/engine/surface';
import { againstBefore } from '../../src/ui/try/against-before';
import { isNamedIn, TRY } from '../../src/ui/words/try-out';

const warning = (code: Warning['code'], severity: Warning['severity'], ...surfaces: Warning['surfaces']): Warning => ({
  code,
  severity,
  surfaces,
  text: code,
  why: '',
  basis: 'sample',
  holds_in: 1,
});

const DIRTY = warning('white-looks-dirty', 'visible', 'counter', 'backsplash');
const EASED = warning('white-looks-dirty', 'note', 'counter', 'backsplash');
const TINT = warning('tinted-by-bounce', 'note', 'ceiling');
const QUESTION = warning('cannot-tell', 'note', 'floor', 'base-fronts');

it('a trial is told by what comes and what goes, in either direction', () => {
  const words = (before: readonly Warning[], after: readonly Warning[]) => TRY.against(againstBefore(before, after));
  expect(words([DIRTY], [TINT])).toBe('Against before: clears 1 warning, brings 1 note.');
  expect(words([TINT], [DIRTY])).toBe('Against before: clears 1 note, brings 1 warning.');
  expect(words([DIRTY, TINT], [EASED, TINT])).toBe('Against before: leaves a note of 1 warning.');
  expect(words([], [QUESTION, TINT])).toBe('Against before: brings 1 note and 1 open question.');
  expect(words([DIRTY, TINT], [TINT, DIRTY])).toBe('Against before: the same findings.');
});

it('every surface that moves is named, those beyond a few by their number', () => {
  expect(TRY.movesBriefly(['counter', 'island-counter', 'upstand'])).toBe('It changes the counters and the upstand.');
  expect(TRY.movesBriefly(['counter', 'floor', 'wall', 'ceiling', 'backsplash'])).toMatch(
    /^It changes (the \w+, ){2}the \w+ and 2 more\.$/,
  );
  // All of them, however many there are.
  expect(TRY.moves(SURFACES)).toMatch(/faucet.*trim/);
});

it('is silent only where the label names the one thing that moves', () => {
  expect(isNamedIn('backsplash: TL-02 tile', ['backsplash'])).toBe(true);
  expect(isNamedIn('look with PT-23 on the island fronts', ['island-fronts'])).toBe(true);
  expect(isNamedIn('look with PT-23 on the island fronts', ['island-fronts', 'counter'])).toBe(false);
  expect(isNamedIn('look with PT-23 on the island fronts', ['counter'])).toBe(false);
});
