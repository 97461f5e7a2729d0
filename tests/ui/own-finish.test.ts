import { expect, it } from 'vitest';
import { applyCommand } from '../../src/model/apply-command';
import { finishFacts } from '../../src/ui/drawer/finish-facts';
import { type OwnFinishEntry, ownFinish, sheenNear } from '../../src/ui/drawer/own-finish';
import { terrace } from './terrace';

const { library } = terrace();
const entry = (changes: Partial<OwnFinishEntry>): OwnFinishEntry => ({
  kind: 'lab',
  value: '',
  name: '',
  class: 'paint',
  sheen: 'satin',
  provenance: 'declared',
  ...changes,
});

it('makes a finish that the project takes', () => {
  const made = ownFinish(entry({ value: '84, 0.5, 6', name: 'Shop sample' }), library);
  if (!made.ok) throw new Error(made.problem.text);
  expect(made.value.label).toBe(`Shop sample, ${made.value.id}`);
  expect(applyCommand(terrace(), { kind: 'add-finish', finish: made.value }).ok).toBe(true);
});

it('gives the color back that was typed in as Lab', () => {
  const made = ownFinish(entry({ value: '84, 0.5, 6' }), library);
  if (!made.ok) throw new Error(made.problem.text);
  const facts = finishFacts(made.value);
  if (!facts.ok) throw new Error(facts.problem.text);
  const [l, a, b] = facts.value.lab_d65;
  expect([l.toFixed(1), a.toFixed(1), b.toFixed(1)]).toEqual(['84.0', '0.5', '6.0']);
});

it('never believes a hex code more than a screen', () => {
  const made = ownFinish(entry({ kind: 'hex', value: '#d9d4c8', provenance: 'measured' }), library);
  expect(made.ok && made.value.provenance).toBe('screen');
});

it('is less sure of a hex code than of declared numbers', () => {
  const sure = (changes: Partial<OwnFinishEntry>) => {
    const made = ownFinish(entry(changes), library);
    const facts = made.ok ? finishFacts(made.value) : null;
    return facts?.ok ? facts.value.uncertainty_de00 : Number.NaN;
  };
  expect(sure({ kind: 'hex', value: '#d9d4c8' })).toBeGreaterThan(sure({ value: '85, 0, 6' }));
});

it('says what is wrong and what to do', () => {
  for (const value of ['', '#zz', '1, 2', '200, 0, 0']) {
    const made = ownFinish(entry({ value }), library);
    expect(made.ok).toBe(false);
    if (!made.ok) expect(made.problem.remedy.length).toBeGreaterThan(10);
  }
});

it('speaks of what was typed, not of the prefix that stands for the kind', () => {
  for (const changes of [
    { kind: 'lrv', value: '72' },
    { kind: 'lab', value: '1, 2' },
    { kind: 'hex', value: 'zz' },
  ] as const) {
    const made = ownFinish(entry(changes), library);
    expect(made.ok).toBe(false);
    if (made.ok) continue;
    expect(made.problem.text).toContain(`"${changes.value}"`);
    expect(made.problem.remedy).not.toContain(`${changes.kind}:`);
  }
});

it('keeps the size of a tile and finds the sheen nearest to a gloss', () => {
  const made = ownFinish(entry({ kind: 'hex', value: '#f4f1e8', class: 'glazed', piece_mm: [200, 100] }), library);
  expect(made.ok && made.value.piece_mm).toEqual([200, 100]);
  expect([4, 28, 85].map(sheenNear)).toEqual(['flat', 'satin', 'gloss']);
});
