import { type IUniform, type RawShaderMaterial, Vector3 } from 'three';
import type { OutsideLook } from '../kitchen/look';

/** Uniforms of what is seen through the panes, dark. */
export const outsideUniforms = (): Record<string, IUniform> => ({
  zenith: { value: [0, 0, 0] },
  ground: { value: [0, 0, 0] },
  facing: { value: [0, 0, 0] },
  gradation: { value: new Vector3(0, 0, 1) },
  indicatrix: { value: new Vector3() },
  towardsSun: { value: new Vector3(0, 0, 1) },
  sunOn: { value: 0 },
  blind: { value: 1 },
  darkenedBy: { value: 1 },
  bricks: { value: 0 },
});

/** Shows the outdoors of a look; null is night. */
export function showOutside({ uniforms }: RawShaderMaterial, outside: OutsideLook | null): void {
  const black = [0, 0, 0];
  uniforms['zenith']!.value = outside?.zenith ?? black;
  uniforms['ground']!.value = outside?.ground ?? black;
  uniforms['facing']!.value = outside?.facing ?? black;
  uniforms['blind']!.value = outside?.blind ?? 1;
  uniforms['darkenedBy']!.value = outside?.darkenedBy ?? 1;
  uniforms['bricks']!.value = outside?.isBrick ? 1 : 0;
  uniforms['sunOn']!.value = outside?.sunShines ? 1 : 0;
  if (!outside) return;
  const { a, b, c, d, e, traditional, towardsSun } = outside.sky;
  (uniforms['gradation']!.value as Vector3).set(a, b, traditional ? 1 : 0);
  (uniforms['indicatrix']!.value as Vector3).set(c, d, e);
  (uniforms['towardsSun']!.value as Vector3).set(...towardsSun);
}

/** Uniforms of the cloths of roller blinds, rolled up. */
export const clothUniforms = (count: number): Record<string, IUniform> => ({
  covered: { value: 0 },
  clothColors: { value: new Float32Array(3 * Math.max(1, count)) },
});

/** Lets the cloths down as a look has them; by night nobody knows, and they stay up. */
export function showCloths({ uniforms }: RawShaderMaterial, outside: OutsideLook | null): void {
  uniforms['covered']!.value = outside?.covered ?? 0;
  const colors = uniforms['clothColors']!.value as Float32Array;
  colors.set((outside?.cloths ?? []).flat().slice(0, colors.length));
}
