import { GLSL3, type IUniform, RawShaderMaterial, Vector2, Vector3 } from 'three';
import type { PatternTexture } from '../engine/pattern/types';
import type { SurfaceLook } from '../kitchen/look';
import type { PatternTextures } from './pattern-textures';
import { SURFACE_SHADERS } from './shader-sources';
import { sheenOfGloss } from './sheen';

const MOST_COMPONENTS = 4;
const MOST_GROUPS = 4;

/** The material of a surface or a prop; `shared` uniforms are taken by reference. */
export function createFinishMaterial(
  kind: 'surface' | 'prop',
  groups: number,
  shared: Readonly<Record<string, IUniform>>,
): RawShaderMaterial {
  const defines: Record<string, number> = {
    GROUPS: Math.min(MOST_GROUPS, Math.max(1, groups)),
    COMPONENTS: 1,
    SHEEN: 0,
  };
  if (kind === 'prop') defines['PROP'] = 1;
  return new RawShaderMaterial({
    ...SURFACE_SHADERS,
    glslVersion: GLSL3,
    defines,
    uniforms: {
      ...shared,
      groupColors: { value: new Float32Array(3 * MOST_COMPONENTS * MOST_GROUPS) },
      pattern: { value: null },
      patternPeriod: { value: new Vector2(1, 1) },
      cone: { value: 0 },
      roughness: { value: 1 },
      strength: { value: 0 },
      mirrorTint: { value: new Vector3() },
    },
  });
}

/** Gives a material the finish of a look. Only uniforms change, and the shader variant where the kind of finish differs. */
export function showFinish(
  material: RawShaderMaterial,
  look: SurfaceLook | undefined,
  patternOf: (key: string) => PatternTexture | undefined,
  textures: PatternTextures,
): void {
  const { uniforms } = material;
  const colors = uniforms['groupColors']!.value as Float32Array;
  colors.fill(0);
  look?.groupColors.slice(0, MOST_COMPONENTS).forEach((ofComponent, component) => {
    colors.set(ofComponent.subarray(0, 3 * MOST_GROUPS), 3 * MOST_GROUPS * component);
  });

  const isProp = material.defines['PROP'] === 1;
  const pattern = look?.pattern != null && !isProp ? patternOf(look.pattern) : undefined;
  uniforms['pattern']!.value = pattern ? textures.textureOf(pattern) : null;
  if (pattern) (uniforms['patternPeriod']!.value as Vector2).set(pattern.width_m, pattern.height_m);

  const sheen = look ? sheenOfGloss(look.glossGu) : null;
  if (sheen && look) {
    uniforms['cone']!.value = sheen.cone;
    uniforms['roughness']!.value = sheen.roughness;
    uniforms['strength']!.value = sheen.strength;
    (uniforms['mirrorTint']!.value as Vector3).set(...(look.flat[0] ?? [0, 0, 0]));
  }
  chooseVariant(material, {
    COMPONENTS: pattern ? Math.min(MOST_COMPONENTS, Math.max(2, look!.groupColors.length)) : 1,
    SHEEN: sheen ? (look!.metal ? 2 : 1) : 0,
    PATTERNED: pattern ? 1 : undefined,
  });
}

function chooseVariant(material: RawShaderMaterial, wanted: Readonly<Record<string, number | undefined>>): void {
  for (const [name, value] of Object.entries(wanted)) {
    if (material.defines[name] === value) continue;
    if (value === undefined) delete material.defines[name];
    else material.defines[name] = value;
    material.needsUpdate = true;
  }
}
