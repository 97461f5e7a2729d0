import type { IUniform, RawShaderMaterial } from 'three';
import type { PatternTexture } from '../engine/pattern/types';
import type { SurfaceLook } from '../kitchen/look';
import { DARKENING_POWER } from '../kitchen/study/local-exposure';
import type { PatternTextures } from './pattern-textures';
import { PIECE_KINDS, patternUniforms, showPattern } from './pattern-uniforms';
import { chooseVariant, createRoomMaterial } from './room-material';
import { SURFACE_SHADERS } from './shader-sources';
import { sheenOfLook } from './sheen';

const MOST_COMPONENTS = 4;
/** Light groups: four of daylight, four of lamps. */
const MOST_GROUPS = 8;

/** The material of a surface or a prop; `shared` uniforms are taken by reference. */
export function createFinishMaterial(
  kind: 'surface' | 'prop',
  shared: Readonly<Record<string, IUniform>>,
): RawShaderMaterial {
  const parameters = {
    ...SURFACE_SHADERS,
    uniforms: {
      ...shared,
      groupColors: { value: new Float32Array(3 * MOST_COMPONENTS * MOST_GROUPS) },
      groupWhites: { value: new Float32Array(3 * MOST_GROUPS) },
      daylightOn: { value: 0 },
      lampsOn: { value: 0 },
      pattern: { value: null },
      ...patternUniforms(),
      cone: { value: 0 },
      mirrorPart: { value: 0 },
      mirrorAlbedo: { value: new Float32Array(17) },
      mirrorTint: { value: [0, 0, 0] },
      bodyGain: { value: new Float32Array(12) },
      jointMask: { value: [0, 0, 0] },
      brushWidths: { value: null },
    },
  };
  const isProp = kind === 'prop' ? 1 : undefined;
  return createRoomMaterial(parameters, { COMPONENTS: 1, SHEEN: 0, DARKENING_POWER, PROP: isProp });
}

/** Gives a material the finish of a look; `pieces` are the numbers of its surface's pieces. Only uniforms change, and the shader variant where the kind of finish differs. */
export function showFinish(
  material: RawShaderMaterial,
  look: SurfaceLook | undefined,
  whites: Float32Array,
  patternOf: (key: string) => PatternTexture | undefined,
  textures: PatternTextures,
  pieces: readonly number[] = [],
): void {
  const { uniforms } = material;
  const colors = uniforms['groupColors']!.value as Float32Array;
  colors.fill(0);
  look?.groupColors.slice(0, MOST_COMPONENTS).forEach((ofComponent, component) => {
    colors.set(ofComponent.subarray(0, 3 * MOST_GROUPS), 3 * MOST_GROUPS * component);
  });
  (uniforms['groupWhites']!.value as Float32Array).set(whites.subarray(0, 3 * MOST_GROUPS));
  uniforms['daylightOn']!.value = isLit(colors, 0);
  uniforms['lampsOn']!.value = isLit(colors, 1);

  const pattern = look?.pattern != null ? patternOf(look.pattern) : undefined;
  uniforms['pattern']!.value = pattern ? textures.textureOf(pattern) : null;
  if (pattern) showPattern(uniforms, pattern, look!.shifts ?? null, pieces);

  const sheen = look ? sheenOfLook(look) : null;
  if (sheen) for (const [name, value] of Object.entries(sheen)) uniforms[name]!.value = value;
  chooseVariant(material, {
    COMPONENTS: pattern ? Math.min(MOST_COMPONENTS, Math.max(2, look!.groupColors.length)) : 1,
    SHEEN: sheen ? (look!.metal ? 2 : 1) : 0,
    // Brush lines run along the pattern.
    BRUSHED: sheen?.brushWidths && pattern ? 1 : undefined,
    PATTERNED: pattern ? 1 : undefined,
    PIECES: pattern?.pieces ? PIECE_KINDS[pattern.pieces.kind] : undefined,
  });
}

/** 1 where any component has a color under any group of a layer. */
function isLit(colors: Float32Array, layer: 0 | 1): 0 | 1 {
  const ofLayer = (3 * MOST_GROUPS) / 2;
  return colors.some((value, i) => value !== 0 && Math.floor(i / ofLayer) % 2 === layer) ? 1 : 0;
}
