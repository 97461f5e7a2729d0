import {
  ClampToEdgeWrapping,
  DataArrayTexture,
  DataTexture,
  HalfFloatType,
  LinearFilter,
  NoColorSpace,
  RGBAFormat,
} from 'three';
import type { AtlasLayout } from '../engine/light/types';
import { halvesFromFloats } from './half-floats';

/** Layers of the node atlas: the components a finish may have. */
export const COMPONENT_LAYERS = 4;

/** The direct light of all rectangles: RGBA half floats, one channel per light group, lx at level 1. */
export function createDirectTexture(atlas: AtlasLayout): DataTexture {
  const halves = new Uint16Array(4 * atlas.width * atlas.height);
  const texture = new DataTexture(halves, atlas.width, atlas.height, RGBAFormat, HalfFloatType);
  filterSmoothly(texture);
  return texture;
}

/** Uploads a refined state of the direct light. Light of another layout (a stale room) is left out. */
export function updateDirectTexture(texture: DataTexture, direct: Float32Array): void {
  const halves = texture.image.data as Uint16Array;
  if (direct.length !== halves.length) return;
  halvesFromFloats(halves, direct);
  texture.needsUpdate = true;
}

/** The indirect colours of all rectangles: one layer per component. Filled by `updateNodeTexture`. */
export function createNodeTexture(atlas: AtlasLayout): DataArrayTexture {
  const halves = new Uint16Array(4 * COMPONENT_LAYERS * atlas.width * atlas.height);
  const texture = new DataArrayTexture(halves, atlas.width, atlas.height, COMPONENT_LAYERS);
  texture.format = RGBAFormat;
  texture.type = HalfFloatType;
  filterSmoothly(texture);
  return texture;
}

/** Shows other indirect colours. Colours of another layout (a stale room) are left out. */
export function updateNodeTexture(texture: DataArrayTexture, nodeColors: Uint16Array): void {
  if (nodeColors.length !== texture.image.data?.length) return;
  texture.image.data = nodeColors;
  texture.needsUpdate = true;
}

function filterSmoothly(texture: DataTexture | DataArrayTexture): void {
  texture.colorSpace = NoColorSpace;
  texture.minFilter = LinearFilter;
  texture.magFilter = LinearFilter;
  texture.wrapS = ClampToEdgeWrapping;
  texture.wrapT = ClampToEdgeWrapping;
  texture.generateMipmaps = false;
}
