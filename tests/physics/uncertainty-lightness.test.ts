import { expect, it } from 'vitest';
import { differenceParts } from '../../src/engine/color/difference';
import { finishComponent } from '../../src/engine/finish/component';
import { standardNormals } from '../../src/engine/uncertainty/draws';
import { estimatesOf } from '../../src/engine/uncertainty/estimates';
import { drawLab } from '../../src/engine/uncertainty/lab-error';

const made = (color: Parameters<typeof finishComponent>[0]['color']) => {
  const component = finishComponent({ role: 'base', share: 1, color, finishClass: 'paint', provenance: 'declared' });
  if (!component.ok) throw new Error(component.problem.text);
  return component.value;
};

it('knows the lightness of a color given by its LRV from that, and only its hue and chroma by eye', () => {
  const greige = made({ kind: 'lrv', lrv: 50, hue: 'greige' });
  expect(greige.uncertaintyDe00).toBe(5);
  // A printed LRV is taken to be off by one point (our judgment).
  expect(Math.abs(estimatesOf(greige).lrv.sigma - 1)).toBeLessThan(0.05);
  const byEye = { ...greige, lightnessDe00: undefined } as unknown as typeof greige;
  expect(estimatesOf(byEye).lrv.sigma).toBeGreaterThan(3);
});

it('draws errors whose lightness part is the one given, and the whole still the uncertainty', () => {
  const lab = { l: 76, a: 1, b: 7 };
  const [whole, lightness] = [1, 0.2];
  const normals = standardNormals(3, 2000, 5);
  let [all, light] = [0, 0];
  for (let i = 0; i < 2000; i++) {
    const drawn = drawLab(lab, whole, [normals[3 * i]!, normals[3 * i + 1]!, normals[3 * i + 2]!], lightness);
    const parts = differenceParts(lab, drawn);
    all += parts.de00 ** 2 / 2000;
    light += parts.lightness ** 2 / 2000;
  }
  // First order in the error, as for any uncertainty up to 1 (uncertainty-lab-error).
  expect(Math.abs(Math.sqrt(all) / whole - 1)).toBeLessThan(0.03);
  expect(Math.abs(Math.sqrt(light) / lightness - 1)).toBeLessThan(0.03);
});

it('has a finite LRV for black, however dark', () => {
  const black = made({ kind: 'lab', lab: [0, 0, 0], illuminant: 'D65', observer_deg: 2 });
  expect(estimatesOf(black).lrv.sigma).toBeLessThan(0.5);
});
