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
      'spectrum_source',
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
  expect(run(['color', 'lrv:70 warm gray']).messages).toContain('unusual');
  expect(run(['color', 'lab:0,0,0', '--json']).out).toContain('"yellowness_e313": null');
});
