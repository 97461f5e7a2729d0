import fc from 'fast-check';
import { expect, it } from 'vitest';
import { blendLights } from '../../src/engine/lamp/blend';
import { lightFromWords, lightName } from '../../src/engine/lamp/light-words';
import { phosphorLedSpd } from '../../src/engine/lamp/phosphor-led';
import { daylightSpd, LIGHT_IDS, lightById, planckSpd } from '../../src/engine/spectrum/lights';

function light(words: string) {
  const result = lightFromWords(words);
  if (!result.ok) throw new Error(result.problem.text);
  return [...result.value];
}

const led = (cct_k: number, ra: number) => {
  const result = phosphorLedSpd({ cct_k, ra });
  if (!result.ok) throw new Error(result.problem.text);
  return result.value;
};

it('knows each CIE light however its name is written', () => {
  for (const id of LIGHT_IDS) {
    const spellings = [id, id.toLowerCase(), ` ${id} `, id.replace('-', ' '), id.replace('-', ''), `CIE ${id}`];
    for (const words of spellings) expect(light(words), words).toEqual([...lightById(id)!]);
  }
  expect(light('fl 11')).toEqual([...lightById('FL11')!]);
});

it.each([
  ['planck:2856', planckSpd(2856)],
  ['Planck: 2856 K', planckSpd(2856)],
  ['daylight:5600', daylightSpd(5600)],
  ['led:2700,90', led(2700, 90)],
  ['LED : 2700 K, Ra 90', led(2700, 90)],
  ['led:2700', led(2700, 80)],
])('reads %s', (words, spd) => {
  expect(light(words)).toEqual([...spd]);
});

it.each([
  ['0.6 led:2700,90 + 0.4 FL11', 0.6, 0.4],
  ['60% led:2700,90+40% fl11', 0.6, 0.4],
  ['led:2700,90 + FL11', 1, 1],
  ['.6*led:2700,90 + .4 * FL11', 0.6, 0.4],
  ['led:2700,90 + 2. FL11', 1, 2],
])('blends %s in relative lux', (words, warm, tube) => {
  const blended = blendLights([
    { spd: led(2700, 90), level: warm },
    { spd: lightById('FL11')!, level: tube },
  ]);
  expect(blended.ok && [...blended.value]).toEqual(light(words));
});

it.each([
  ['', 'no-light'],
  ['D65 +', 'no-light'],
  ['0.5', 'no-light'],
  ['D99', 'unknown-light'],
  ['2700 K', 'unknown-light'],
  ['warm\nwhite', 'unknown-light'],
  ['led:', 'light-words'],
  ['led:warm', 'light-words'],
  ['led:2700,90,1', 'light-words'],
  ['planck:2700,90', 'light-words'],
  ['daylight:', 'light-words'],
  ['planck:500', 'light-temperature'],
  ['daylight:3000', 'light-temperature'],
  ['led:900', 'led-temperature'],
  ['led:2700,99', 'led-ra'],
  ['-0.5 A + D65', 'level-negative'],
  ['0 A + 0 D65', 'all-lights-off'],
])('refuses "%s" with %s and says what to write', (words, code) => {
  const result = lightFromWords(words);
  expect(!result.ok && result.problem.code).toBe(code);
  expect(!result.ok && result.problem.remedy).toMatch(/^(Write|Give) /);
});

it('answers any words with a light or a refusal, and twice the same', () => {
  const word = fc.constantFrom(
    'led',
    ':',
    '2700',
    ',',
    '90',
    '+',
    '0.4',
    '%',
    ' ',
    'D65',
    'planck',
    '-',
    'x',
    '1e9',
    '\n',
  );
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        fc.array(word, { maxLength: 12 }).map((words) => words.join('')),
      ),
      (words) => {
        const result = lightFromWords(words);
        if (result.ok) {
          expect(result.value.every((power) => power >= 0 && Number.isFinite(power))).toBe(true);
          expect(result.value.some((power) => power > 0)).toBe(true);
        }
        expect(lightFromWords(words)).toBe(result);
        expect(typeof lightName(words)).toBe('string');
      },
    ),
  );
});

it('keeps answers, but not without end', () => {
  const first = lightFromWords('planck:3001');
  expect(lightFromWords('planck:3001')).toBe(first);
  for (let cct_k = 4000; cct_k < 4200; cct_k++) lightFromWords(`planck:${cct_k}`);
  expect(lightFromWords('planck:3001')).not.toBe(first);
  expect(lightFromWords('planck:3001')).toEqual(first);
});

it.each([
  ['d65', 'CIE D65'],
  ['led b3', 'CIE LED-B3'],
  ['led:2700,90', 'LED 2700 K, Ra 90'],
  ['led:3000', 'LED 3000 K, Ra 80'],
  ['planck:2856', 'Black body 2856 K'],
  ['daylight:5600', 'Daylight 5600 K'],
  ['0.6 led:2700,90 + 0.4 FL11', '60% LED 2700 K, Ra 90 + 40% CIE FL11'],
  ['3 D65 + A', '75% CIE D65 + 25% CIE A'],
  ['0.6 D65', 'CIE D65'],
  [' kitchen strip ', 'kitchen strip'],
  ['0 A + 0 D65', '0 A + 0 D65'],
])('names "%s" %s', (words, name) => {
  expect(lightName(words)).toBe(name);
});
