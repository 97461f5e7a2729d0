import { expect, it } from 'vitest';
import { run } from '../../src/cli/run';
import { fileWith, upstand } from './upstand';

const json = (...args: readonly string[]) => {
  const { exit, out } = run([...args, '--json']);
  expect(exit).toBe(0);
  return JSON.parse(out);
};

it('prints JSON and nothing else on standard output, messages beside', () => {
  const ran = upstand('color', '#f3efe0', '--json');
  expect(ran.exit).toBe(0);
  expect(Object.keys(JSON.parse(ran.out)).toSorted()).toEqual(
    [
      'role',
      'share',
      'lab_d65',
      'munsell',
      'name',
      'undertone',
      'lrv',
      'provenance',
      'uncertainty_de00',
      'whiteness',
      'uncertainty',
      'spectrum_source',
      'given',
      'finish_class',
      'gloss_gu',
      'specular',
      'specular_doubt_de00',
      'lrv_printed',
      'notes',
    ].toSorted(),
  );
});

it('lists the commands', () => {
  for (const args of [[], ['help'], ['--help']]) {
    const { exit, out } = run(args);
    expect(exit).toBe(0);
    for (const name of ['assess', 'color', 'light', 'help']) expect(out).toContain(`upstand ${name}`);
  }
});

it('gives a perfect white the whiteness 100, tint 0 and LRV 100 (CIE 15: the perfect reflecting diffuser)', () => {
  const white = json('color', 'lab:100,0,0');
  expect(white.whiteness.cie_w).toBeCloseTo(100, 6);
  expect(white.whiteness.cie_tint).toBeCloseTo(0, 6);
  expect(white.lrv).toBeCloseTo(100, 2);
});

it('names a color by ISCC-NBS (Kelly and Judd 1955: 5Y 9/1 is yellowish white, block 92)', () => {
  expect(json('color', 'munsell:5Y 9/1').name).toBe('yellowish white');
});

it('reports the light (CIE 15:2018: LED-B2 has 2998 K), and leaves a neutral as it is under it', () => {
  const gray = json('color', 'munsell:N 9/', '--light', 'LED-B2');
  expect(Math.abs(gray.under.cct_k - 2998)).toBeLessThan(5);
  expect(gray.under.shift_de00).toBeLessThan(0.5);
  // Illuminant D65 is where the color is given: nothing may shift.
  expect(json('color', 'lab:50,20,30', '--light', 'D65').under.shift_de00).toBeLessThan(0.02);
});

it('uses a measured spectrum as it is: 20 % at every wavelength is LRV 20 (closed form)', () => {
  const rows = Array.from({ length: 31 }, (_, i) => `${400 + 10 * i},20`);
  const gray = json('color', fileWith('gray.csv', rows.join('\n')));
  expect(gray).toMatchObject({ spectrum_source: 'measured', provenance: 'measured', name: 'medium gray' });
  expect(gray.lrv).toBeCloseTo(20, 6);
  // Kelly and Judd 1955: medium gray from Munsell value 4.5 to 6.5; Y = 20 is value 5.
  // CIELAB L* of Y = 20: 116 (0.2)^(1/3) - 16.
  expect(gray.lab_d65[0]).toBeCloseTo(116 * Math.cbrt(0.2) - 16, 6);
});

it('says in words how it read the file and what it lowered', () => {
  const rows = Array.from({ length: 31 }, (_, i) => `${400 + 10 * i},20`);
  expect(run(['color', fileWith('gray.csv', rows.join('\n'))]).messages).toContain('percent');
  expect(run(['color', 'lrv:warm gray 70']).messages).toContain('so light that it reads yellowish white');
  expect(run(['color', 'lab:0,0,0', '--json']).out).toContain('"yellowness_e313": null');
});

it('says back how a color was given, by options or in the value, and states it under D65, 2 degrees', () => {
  const byOption = json('color', 'lab:84.2,0.5,6.1', '--illuminant', 'd50', '--observer', '10');
  const inValue = json('color', 'L* 84.2 a* 0.5 b* 6.1 (D50/10°)');
  expect(byOption.given).toEqual({ kind: 'lab', lab: [84.2, 0.5, 6.1], illuminant: 'D50', observer_deg: 10 });
  expect(inValue).toEqual(byOption);
  // Whites and light colours keep L* within a few tenths; a yellowish one is less red under D65 than its a* under D50 says.
  expect(byOption.lab_d65[1]).toBeLessThan(0);
  expect(json('color', 'munsell:5y 9/1').munsell).toBe('5Y 9/1');
  expect(run(['color', 'munsell:10YR 9/1']).out).toContain('The notation is rounded: the color may lie about 2.4');
  expect(run(['color', 'lab:84,0,6']).out).not.toContain('rounded');
});

it('puts an excluded mirror reflection back by the gloss, and says by how much it is off where nobody told', () => {
  const asMeasured = json('color', 'lab:40,0,0', '--specular', 'included', '--gloss', '85');
  const putBack = json('color', 'lab:40,0,0', '--specular', 'excluded', '--gloss', '85');
  // Fresnel at 8 degrees, n = 1.5: 4.00 %; 85 of the 89 gloss units a smooth surface of that index has.
  expect(putBack.lrv - asMeasured.lrv).toBeCloseTo((4 * (85 - 2.5 * 0.112)) / 89.2, 1);
  expect(putBack.specular).toBe('included');
  const untold = json('color', 'lab:40,0,0', '--gloss', '85');
  expect(untold.specular).toBeNull();
  expect(untold.specular_doubt_de00).toBeGreaterThan(3);
  expect(json('color', 'lab:40,0,0').specular_doubt_de00).toBeNull();
  expect(run(['color', 'lab:60,0,10', '--specular', 'excluded', '--class', 'metal']).messages).toContain('metal');
});

it('checks a printed LRV against the color and uses the color', () => {
  const messages = (...args: readonly string[]) => run(['color', ...args]).messages;
  const own = json('color', 'lab:84.2,0.5,6.1').lrv;
  expect(messages('lab:84.2,0.5,6.1', '--lrv', String(Math.round(own)))).toBe('');
  expect(messages('lab:84.2,0.5,6.1', '--lrv', '70')).toMatch(/printed LRV is 70.*has 64\.\d/);
  expect(messages('L* 84.2 a* 0.5 b* 6.1, LRV 70')).toMatch(/printed LRV is 70/);
  expect(json('color', 'lab:84.2,0.5,6.1', '--lrv', '70').lrv).toBe(own);
});

it('shows a color under several lights, with the range over the spectra it may have', () => {
  const shown = json('color', 'lab:84.2,0.5,6.1', '--light', 'FL11', '--light', 'LED-B2');
  expect(shown.lights.map((one: { light: string }) => one.light)).toEqual(['FL11', 'LED-B2']);
  expect(shown.under).toEqual(shown.lights[0]);
  for (const { shift_de00, shift_from_to_de00 } of shown.lights) {
    expect(shift_from_to_de00[0]).toBeLessThan(shift_de00);
    expect(shift_from_to_de00[1]).toBeGreaterThan(shift_de00);
  }
});

it('takes the words of a value without quotes, numbers below zero among them', () => {
  for (const words of [
    'munsell:5Y 9/1',
    'lrv:60 greige',
    'lab:93, -0.3, 1.8',
    'lab:93 -0.3 -1.8',
    'L* 84 a* -0.5 b* 6',
  ]) {
    expect(json('color', ...words.split(' '))).toEqual(json('color', words));
  }
  expect(run(['color', '#fff', '--gloss', '-5'])).toMatchObject({ exit: 2, out: '' });
});

it('reads one of several samples of a file by FILE#NAME', () => {
  const nm = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);
  const row = (name: string, value: number) => [name, ...nm.map(() => value)].join(',');
  const two = fileWith(
    'two.csv',
    ['Name,', ...nm.map((one) => `R${one},`)]
      .join('')
      .slice(0, -1)
      .concat(`\n${row('Door', 20)}\n${row('Wall #2', 60)}`),
  );
  expect(json('color', `${two}#wall #2`).lrv).toBeCloseTo(60, 6);
  const all = run(['color', two]);
  expect([all.exit, all.out]).toEqual([2, '']);
  expect(all.messages).toMatch(/two\.csv: .*Door, Wall #2.*two\.csv#Door/);
  expect(run(['color', `${two}#floor`]).messages).toMatch(/"floor".*Door, Wall #2/);
});

it('gives its remarks as notes in JSON, too', () => {
  expect(json('color', 'lrv:70 warm gray').notes).toEqual([
    { code: 'lrv-and-word-disagree', text: expect.stringContaining('warm gray') },
  ]);
  expect(json('color', 'lab:84,0,6').notes).toEqual([]);
});

it('says perhaps where the undertone is within its own uncertainty', () => {
  for (const [value, open] of [
    ['munsell:5Y 9/0.7', true],
    ['lab:60,0,30', false],
  ] as const) {
    const { undertone, uncertainty } = json('color', value);
    expect(Math.abs(undertone.strength - 1) < uncertainty.strength).toBe(open);
    const first = run(['color', value]).out.split('\n')[0]!;
    expect(/perhaps|could be sure/.test(first)).toBe(open);
    expect(first).toContain(`±${uncertainty.strength.toFixed(1)})`);
  }
});

it('prints whiteness of near-whites only', () => {
  for (const value of ['lab:93,-0.3,1.8', 'munsell:5Y 9/1']) expect(run(['color', value]).out).toContain('WID');
  for (const value of ['lab:50,0,2', 'lab:80,0,60']) expect(run(['color', value]).out).not.toContain('WID');
  expect(json('color', 'lab:50,0,2').whiteness.wid).toBeGreaterThan(0);
});

it('explains its words and options in the help of any command', () => {
  const { out } = run(['color', '--help']);
  for (const word of ['WID', 'Duv', 'strength', '--class', '--gloss'])
    expect(out).toMatch(new RegExp(`\n  ${word} +\\S`));
});

it('lines its values up', () => {
  const out = run(['color', 'lab:84.2,0.5,6.1', '--light', 'FL11', '--gloss', '85', '--lrv', '70']).out;
  const rows = out.split('\n').filter((line) => line.startsWith('  '));
  expect(rows.length).toBeGreaterThan(8);
  for (const line of rows) expect(line.slice(25, 28)).toMatch(/^ {2}\S$/);
  for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
});
