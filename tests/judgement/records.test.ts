import { describe, expect, it } from 'vitest';
import { averageRecord, componentRecord } from '../../src/engine/judge/component-record';
import { judge } from '../../src/engine/judge/judge';
import { componentPhrase, surfaceName, surfacesPhrase } from '../../src/engine/judge/surface-words';
import { meanWeights, viewWeights } from '../../src/engine/judge/view-weights';
import { finish } from './finishes';
import { type Row, scheme } from './schemes';

describe('component records', () => {
  // Names and strengths: ISCC-NBS blocks (NBS SP 440) over the Munsell renotation, computed outside this project's code.
  it.each([
    ['EN-01', 0, 'white', 0.33],
    ['EN-01', 1, 'bluish gray', 2.54],
    ['ST-01', 0, 'dark bluish gray', 2.56],
    ['WD-01', 0, 'light yellowish brown', 5.94],
    ['PT-14', 0, 'light greenish gray', 2.27],
    ['TL-02', 0, 'yellowish white', 2.31],
  ] as const)('%s component %d: %s', (id, index, name, strength) => {
    const record = componentRecord(finish(id).components[index]!);
    expect(record.name).toBe(name);
    expect(Math.abs(record.undertone.strength - strength)).toBeLessThan(0.05);
    expect(record.provenance).toBe('declared');
  });

  it('mixes the average in linear light: LRV adds by share, lightness does not', () => {
    const [base, vein] = finish('EN-01').components.map(componentRecord);
    const average = averageRecord(finish('EN-01').components);
    expect(average.role).toBe('average');
    expect(average.lrv).toBeCloseTo(0.84 * base!.lrv + 0.16 * vein!.lrv, 6);
    // Area mean of Y: 66 (2 degree).
    expect(Math.abs(average.lrv - 66)).toBeLessThan(1);
    expect(average.lab_d65[0]).toBeGreaterThan(0.84 * base!.lab_d65[0] + 0.16 * vein!.lab_d65[0]);
  });
});

describe('overview views', () => {
  const rows: Row[] = [
    ['counter', 'EN-01', 10, 60],
    ['floor', 'WD-01', 20, 0],
    ['base-fronts', 'PT-01', 40, 30],
    ['wall', 'PT-02', 10, 10],
  ];
  it('leaves out a close-up that shows no floor, and scales the rest to 1', () => {
    const views = viewWeights(scheme(rows));
    expect(views.map((v) => v.viewpoint)).toEqual(['view 1']);
    expect(meanWeights(views)).toEqual([10 / 80, 20 / 80, 40 / 80, 10 / 80]);
  });
  it('takes close-ups where there is nothing better', () => {
    const closeUp = rows.map(([surface, of, , second]): Row => [surface, of, second!]);
    expect(viewWeights(scheme(closeUp))).toHaveLength(1);
  });
  it('stands in a typical kitchen before anything is seen', () => {
    const unseen = scheme(rows);
    const weights = meanWeights(
      viewWeights({ ...unseen, surfaces: unseen.surfaces.map((s) => ({ ...s, installed: [] })) }),
    );
    expect(weights.reduce((x, y) => x + y, 0)).toBeCloseTo(1, 12);
    expect(judge({ ...unseen, surfaces: unseen.surfaces.map((s) => ({ ...s, installed: [] })) }).balance.verdict).toBe(
      'balanced',
    );
  });
});

describe('surfaces in words', () => {
  it('uses the names of the ledge', () => {
    expect(surfaceName('plinth')).toBe('Toe kick');
    expect(surfaceName('island-counter')).toBe('Island counter');
    expect(surfaceName('shelf')).toBe('shelf');
  });
  it.each([
    [['floor'], 'the floor', false],
    [['wall', 'floor'], 'the floor and the wall', false],
    [['base-fronts'], 'the base fronts', true],
    [['island-fronts', 'base-fronts'], 'the base and island fronts', true],
    [['base-fronts', 'wall-fronts', 'tall-fronts', 'plinth'], 'the fronts', true],
    [['counter', 'island-counter', 'wall'], 'the counters and the wall', true],
  ] as const)('%j: %s', (surfaces, text, pluralAlone) => {
    const phrase = surfacesPhrase([...surfaces]);
    expect(phrase.text).toBe(text);
    expect(phrase.plural).toBe(pluralAlone || text.includes(' and '));
  });
  it('names veins by the counter they lie in', () => {
    expect(componentPhrase('vein', ['counter'])).toEqual({ text: 'the veins of the counter', plural: true });
  });
});
