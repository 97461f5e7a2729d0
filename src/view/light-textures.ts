import {
  ClampToEdgeWrapping,
  DataArrayTexture,
  DataTexture,
  DataUtils,
  FloatType,
  HalfFloatType,
  LinearFilter,
  NoColorSpace,
  RGBAFormat,
  type WebGLRenderer,
} from 'three';
import type { AtlasLayout } from '../engine/light/types';
import { halvesFromFloats } from './half-floats';

/** Layers of the node atlas: the components a finish may have. */
const COMPONENT_LAYERS = 4;

/**
 * How light is kept in textures. Floats where they can be interpolated: in software they are sampled in half the time of
 * half floats. Many phones interpolate half floats only.
 */
export type LightTexels = 'float' | 'half';

export const lightTexelsOf = (renderer: WebGLRenderer): LightTexels =>
  renderer.extensions.has('OES_texture_float_linear') ? 'float' : 'half';

/** The direct light of all rectangles: one channel per light group, lx at level 1. Filled by `updateDirectTexture`. */
export function createDirectTexture(atlas: AtlasLayout, texels: LightTexels): DataTexture {
  const count = 4 * atlas.width * atlas.height;
  const data = texels === 'float' ? new Float32Array(count) : new Uint16Array(count);
  const texture = new DataTexture(data, atlas.width, atlas.height, RGBAFormat, typeOf(texels));
  filterSmoothly(texture);
  return texture;
}

/** Uploads a refined state of the direct light. Light of another layout (a stale room) is left out. */
export function updateDirectTexture(texture: DataTexture, direct: Float32Array): void {
  const data = texture.image.data as Float32Array | Uint16Array;
  if (direct.length !== data.length) return;
  if (data instanceof Uint16Array) halvesFromFloats(data, direct);
  else data.set(direct);
  texture.needsUpdate = true;
}

/** The indirect colours of all rectangles: one layer per component. Filled by `updateNodeTexture`. */
export function createNodeTexture(atlas: AtlasLayout, texels: LightTexels): DataArrayTexture {
  const count = 4 * COMPONENT_LAYERS * atlas.width * atlas.height;
  const data = texels === 'float' ? new Float32Array(count) : new Uint16Array(count);
  const texture = new DataArrayTexture(data, atlas.width, atlas.height, COMPONENT_LAYERS);
  texture.format = RGBAFormat;
  texture.type = typeOf(texels);
  filterSmoothly(texture);
  return texture;
}

/** Shows other indirect colours, given as half floats. Colours of another layout (a stale room) are left out. */
export function updateNodeTexture(texture: DataArrayTexture, nodeColors: Uint16Array): void {
  const data = texture.image.data as Float32Array | Uint16Array;
  if (nodeColors.length !== data.length) return;
  if (data instanceof Uint16Array) data.set(nodeColors);
  else for (let i = 0; i < nodeColors.length; i++) data[i] = DataUtils.fromHalfFloat(nodeColors[i]!);
  texture.needsUpdate = true;
}

const typeOf = (texels: LightTexels) => (texels === 'float' ? FloatType : HalfFloatType);

function filterSmoothly(texture: DataTexture | DataArrayTexture): void {
  texture.colorSpace = NoColorSpace;
  texture.minFilter = LinearFilter;
  texture.magFilter = LinearFilter;
  texture.wrapS = ClampToEdgeWrapping;
  texture.wrapT = ClampToEdgeWrapping;
  texture.generateMipmaps = false;
}
