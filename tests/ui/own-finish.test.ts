import { expect, it } from 'vitest';
import { parseSpectrumCsv } from '../../src/io/spectrum-file';
import { applyCommand } from '../../src/model/apply-command';
import type { Finish } from '../../src/model/project';
import { finishFacts } from '../../src/ui/drawer/finish-facts';
import {
  type OwnFinishEntry,
  ownDoubts,
  ownFinish,
  provenanceOf,
  sheenNear,
  withGloss,
  withKind,
  withValue,
} from '../../src/ui/drawer/own-finish';
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

it('takes the gloss an instrument shows, and says what is none', () => {
  const glossOf = (gloss: string) => ownFinish(withGloss(entry({ value: '84, 0, 6' }), gloss), library);
  for (const [text, gloss_gu] of [
    ['85', 85],
    ['85,5 GU', 85.5],
    ['0', 0],
    ['', 28],
  ] as const) {
    expect(glossOf(text)).toMatchObject({ ok: true, value: { gloss_gu } });
  }
  expect(withGloss(entry({}), '85').sheen).toBe('gloss');
  for (const text of ['high', '-1', '101']) {
    const result = glossOf(text);
    expect(!result.ok && result.problem).toMatchObject({ code: 'gloss-not-understood' });
    expect(!result.ok && result.problem.text).toContain(text);
  }
});

const made = (given: OwnFinishEntry): Finish => {
  const finish = ownFinish(given, library);
  if (!finish.ok) throw new Error(finish.problem.text);
  return finish.value;
};
const color = (given: OwnFinishEntry) => made(given).components[0]!.color;

it('keeps numbers with the light, the observer and the mirror reflection that are set', () => {
  const conditions = { illuminant: 'D50', observer_deg: 10 } as const;
  expect(color(entry({ kind: 'lch', value: '84, 6, 85', conditions, specular: 'excluded' }))).toEqual({
    kind: 'lch',
    lch: [84, 6, 85],
    ...conditions,
    specular: 'excluded',
  });
  expect(color(entry({ kind: 'xyz', value: '62 65 63' }))).toMatchObject({ illuminant: 'D65', observer_deg: 2 });
  expect(color(entry({ kind: 'munsell', value: '5Y 9/1', conditions }))).toEqual({
    kind: 'munsell',
    munsell: '5Y 9/1',
  });
  expect(color(entry({ kind: 'hex', value: 'd9d4c8', space: 'display-p3' }))).toMatchObject({ space: 'display-p3' });
});

it('fills the fields from a pasted line; what is set afterwards counts', () => {
  const pasted = withValue(entry({ kind: 'hex' }), 'L* 84.2 a* 0.5 b* 6.1 (D50/10°), SCE, LRV 64');
  expect(pasted).toMatchObject({
    kind: 'lab',
    conditions: { illuminant: 'D50', observer_deg: 10 },
    specular: 'excluded',
    lrv: '64',
  });
  expect(made(pasted).components[0]).toMatchObject({ color: { illuminant: 'D50', observer_deg: 10 }, lrv: 64 });
  const changed = {
    ...pasted,
    conditions: { illuminant: 'D65', observer_deg: 2 },
    specular: 'unsaid',
    lrv: '70',
  } as const;
  expect(made(changed).components[0]).toEqual({
    role: 'base',
    share: 1,
    lrv: 70,
    color: { kind: 'lab', lab: [84.2, 0.5, 6.1], illuminant: 'D65', observer_deg: 2 },
  });
  expect(withValue(entry({}), '#d9d4c8').kind).toBe('hex');
  expect(withValue(entry({}), '2.5Y 8.5/1').kind).toBe('munsell');
  expect(withValue(entry({}), 'LRV 62 off-white').kind).toBe('lrv');
});

it('takes back what a pasted line filled in when another text replaces it, but not what was set by hand', () => {
  const line = 'L* 84.2 a* 0.5 b* 6.1 (D50/10°), SCE, LRV 64';
  const before = entry({ conditions: { illuminant: 'A', observer_deg: 10 }, lrv: '50' });
  for (const start of [entry({}), before]) {
    expect(withValue(withValue(start, line), '85, 0, 6')).toEqual({ ...start, value: '85, 0, 6' });
    expect(withValue(withValue(start, line), 'L* 80 a* 0 b* 6 SCI')).toMatchObject({
      ...start,
      value: 'L* 80 a* 0 b* 6 SCI',
      specular: 'included',
    });
  }
  const byHand = { conditions: { illuminant: 'C', observer_deg: 2 }, specular: 'included', lrv: '70' } as const;
  expect(withValue({ ...withValue(before, line), ...byHand }, '85, 0, 6')).toEqual({
    ...before,
    ...byHand,
    value: '85, 0, 6',
  });
  let typing = entry({});
  for (let length = 1; length <= line.length; length++) typing = withValue(typing, line.slice(0, length));
  expect(withValue(typing, '')).toEqual({ ...entry({}), kind: 'lab', value: '' });
  expect(withValue(withValue(entry({}), 'p3:#d9d4c8'), '#d9d4c8').space).toBeUndefined();
});

it('gives a spectrum nothing of a pasted line, and the line its own again', () => {
  const pasted = withValue(entry({}), 'L* 84.2 a* 0.5 b* 6.1 (D50/10°), SCE, LRV 64');
  const spectrum = withKind(pasted, 'spectrum');
  expect([spectrum.conditions, spectrum.specular, spectrum.lrv]).toEqual([undefined, undefined, undefined]);
  expect(withKind(spectrum, 'lab')).toEqual(pasted);
  expect(withKind({ ...spectrum, specular: 'included' }, 'lab')).toMatchObject({ specular: 'included', lrv: '64' });
});

it('counts as measured only a spectrum, and what was called so', () => {
  const { provenance: _, ...unsaid } = entry({ value: '84, 0, 6' });
  expect(provenanceOf(unsaid)).toBe('declared');
  const spectrum = withKind(unsaid, 'spectrum');
  expect(provenanceOf(spectrum)).toBe('measured');
  for (const kind of ['lab', 'lch', 'xyz', 'munsell'] as const) {
    expect(provenanceOf(withKind(spectrum, kind))).toBe('declared');
    expect(provenanceOf(withKind({ ...spectrum, provenance: 'measured' }, kind))).toBe('measured');
  }
  expect(provenanceOf(withKind({ ...unsaid, provenance: 'photo' }, 'spectrum'))).toBe('photo');
  expect(provenanceOf({ ...unsaid, kind: 'hex', provenance: 'measured' })).toBe('screen');
  expect(made({ ...withKind(spectrum, 'munsell'), value: '5Y 9/1' }).provenance).toBe('declared');
});

it('does not jump to another kind while numbers are typed', () => {
  for (const whole of ['100, 0.5, 6', '841', '84.2 -0.5 6.1', '5 5 5']) {
    let typing = entry({});
    for (let length = 1; length <= whole.length; length++) typing = withValue(typing, whole.slice(0, length));
    expect(typing).toMatchObject({ kind: 'lab', value: whole });
  }
});

it('says of what was given how it stands under D65, where it disagrees, and what mirror reflection may do', () => {
  const doubts = (changes: Partial<OwnFinishEntry>) => ownDoubts(made(entry(changes)));
  expect(doubts({ value: '84, 0.5, 6' })).toMatchObject({ given: null, notices: [] });
  expect(doubts({ kind: 'munsell', value: '5Y 9/1' }).given).toBe('Munsell 5Y 9/1');
  const printed = doubts({ value: '84, 0.5, 6', lrv: '75' });
  expect(printed.notices.map(({ code }) => code)).toEqual(['lrv-disagrees']);
  expect(doubts({ value: '30, 0, 0', sheen: 'gloss' }).specularDe00).toBeGreaterThan(4);
  expect(doubts({ value: '30, 0, 0', sheen: 'gloss', specular: 'included' }).specularDe00).toBe(0);
  expect(doubts({ kind: 'hex', value: '#333', sheen: 'gloss' }).specularDe00).toBe(0);
  const excluded = doubts({ value: '30, 0, 0', sheen: 'gloss', specular: 'excluded' });
  expect(excluded.notices.map(({ code }) => code)).toEqual(['specular-added']);
});

it('calls what nobody named by what was typed, so that samples can be told apart', () => {
  const text = Array.from({ length: 31 }, (_, i) => `${400 + 10 * i},0.6`).join('\n');
  const spectrum = { file: 'sill white.csv', read: parseSpectrumCsv(text, 'sill white.csv') };
  const names = (
    [
      [{ kind: 'munsell', value: '10yr 9/1' }, 'Munsell 10YR 9/1'],
      [{ kind: 'lrv', value: 'warm gray 70' }, 'LRV 70 warm gray'],
      [{ kind: 'hex', value: 'D8D2C4' }, '#d8d2c4'],
      [{ kind: 'hex', value: '#d8d2c4', space: 'display-p3' }, '#d8d2c4 on P3'],
      [withValue(entry({}), 'L* 92.1 a* -0.4 b* 3.2 D65/10'), 'Lab 92.1 −0.4 3.2, D65 10°'],
      [{ kind: 'lch', value: '84, 6, 85' }, 'LCh 84 6 85, D65 2°'],
      [{ kind: 'xyz', value: '62 65 63' }, 'XYZ 62 65 63, D65 2°'],
      [{ kind: 'spectrum', spectrum }, 'sill white'],
      [{ kind: 'hex', value: '#d8d2c4', name: ' Shop sample ' }, 'Shop sample'],
    ] as const
  ).map(([changes, name]) => [made(entry(changes)), name] as const);
  for (const [finish, name] of names) expect(finish.label).toBe(`${name}, ${finish.id}`);
});

it('reads an LRV and its word in either order, and says which of them is missing', () => {
  for (const value of ['LRV 70 warm gray', 'warm gray 70', '70 warm gray', 'warm gray, LRV 70']) {
    expect(color(entry({ kind: 'lrv', value }))).toEqual({ kind: 'lrv', lrv: 70, hue: 'warm gray' });
  }
  const missing = ownFinish(entry({ kind: 'lrv', value: 'warm gray' }), library);
  expect(!missing.ok && missing.problem).toMatchObject({
    text: '"warm gray" says which color it is, not how light.',
    remedy: 'Add the number printed on the sample: 70 warm gray.',
  });
});

it('says what the rounding of a notation leaves open, and counts it', () => {
  const chip = made(entry({ kind: 'munsell', value: '10YR 9/1' }));
  // Half a step of value is 5 in L*, half a step of chroma 3 in b*: 2.4 CIEDE2000 root mean square.
  expect(ownDoubts(chip).roundingDe00).toBeCloseTo(2.4, 1);
  const facts = finishFacts(chip);
  expect(facts.ok && facts.value.uncertainty_de00).toBeCloseTo(2.6, 1);
  expect(ownDoubts(made(entry({ value: '84, 0.5, 6' }))).roundingDe00).toBe(0);
});

it('takes an opened spectrum, and names what is wrong with one or with a printed LRV', () => {
  const text = Array.from({ length: 31 }, (_, i) => `${400 + 10 * i},0.6`).join('\n');
  const spectrum = { file: 'a.csv', read: parseSpectrumCsv(text, 'a.csv') };
  const opened = made(entry({ kind: 'spectrum', spectrum, provenance: 'measured' }));
  expect(opened).toMatchObject({
    provenance: 'measured',
    components: [{ color: { kind: 'spectrum', start_nm: 400 } }],
  });
  const broken = ownFinish(
    entry({ kind: 'spectrum', spectrum: { file: 'b.csv', read: parseSpectrumCsv('', 'b.csv') } }),
    library,
  );
  expect(!broken.ok && broken.problem.code).toBe('no-spectrum');
  const wrong = ownFinish(entry({ value: '84, 0, 0', lrv: 'bright' }), library);
  expect(!wrong.ok && wrong.problem.text).toContain('bright');
  const high = ownFinish(entry({ value: '184, 0, 0' }), library);
  expect(!high.ok && high.problem.text).toMatch(/^L\* is 184/);
});
