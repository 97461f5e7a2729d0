import {
  DataTexture,
  LinearFilter,
  LinearMipmapLinearFilter,
  MirroredRepeatWrapping,
  NoColorSpace,
  RepeatWrapping,
  RGBAFormat,
  UnsignedByteType,
} from 'three';
import { mipLevels } from '../engine/pattern/mips';
import type { PatternTexture } from '../engine/pattern/types';

const MOST_ANISOTROPY = 8;

/** The pattern textures in use, one per baked pattern, shared by both halves of a split picture. */
export class PatternTextures {
  readonly #textures = new Map<PatternTexture, DataTexture>();

  constructor(private readonly anisotropy: number) {}

  textureOf(pattern: PatternTexture): DataTexture {
    let texture = this.#textures.get(pattern);
    if (!texture) {
      texture = createPatternTexture(pattern, Math.min(MOST_ANISOTROPY, this.anisotropy));
      this.#textures.set(pattern, texture);
    }
    return texture;
  }

  /** Frees the textures of patterns that none of the looks shown uses. */
  keepOnly(used: ReadonlySet<PatternTexture>): void {
    for (const [pattern, texture] of this.#textures) {
      if (used.has(pattern)) continue;
      texture.dispose();
      this.#textures.delete(pattern);
    }
  }

  dispose(): void {
    this.keepOnly(new Set());
  }
}

/** Weights are linear numbers, not colours; the levels for distance are the pattern's own, exact in colour. */
function createPatternTexture(pattern: PatternTexture, anisotropy: number): DataTexture {
  const texture = new DataTexture(pattern.data, pattern.width, pattern.height, RGBAFormat, UnsignedByteType);
  texture.colorSpace = NoColorSpace;
  const wrapping = pattern.wrap === 'mirror' ? MirroredRepeatWrapping : RepeatWrapping;
  texture.wrapS = wrapping;
  texture.wrapT = wrapping;
  texture.magFilter = LinearFilter;
  texture.minFilter = LinearMipmapLinearFilter;
  const levels = [pattern.data, ...(pattern.mips ?? mipLevels(pattern))];
  texture.mipmaps = levels.map((data, level) => ({
    data,
    width: Math.max(1, pattern.width >> level),
    height: Math.max(1, pattern.height >> level),
  }));
  texture.generateMipmaps = false;
  texture.anisotropy = anisotropy;
  texture.needsUpdate = true;
  return texture;
}
