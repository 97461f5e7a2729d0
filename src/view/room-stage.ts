import type { BufferGeometry, DataTexture } from 'three';
import type { Look, RoomLight } from '../kitchen/look';
import type { Room } from '../kitchen/types';
import { clothGeometry } from './cloth-geometry';
import { faceGeometry, faceOfRect } from './face-geometry';
import { lampGeometry } from './lamp-geometry';
import { createDirectTexture, type LightTexels, updateDirectTexture } from './light-textures';
import { LookSlot } from './look-slot';
import { PatternTextures } from './pattern-textures';
import { createSharedUniforms, type SharedUniforms } from './shared-uniforms';
import { surfaceGeometries } from './surface-geometry';

/** What the graphics card holds for one room, whatever its finishes: geometry, direct light, patterns in use. */
export class RoomStage {
  /** Per surface of the room; null where it has no rectangle. */
  readonly surfaces: readonly (BufferGeometry | null)[];
  /** Openings and what lies behind lamp faces. */
  readonly black: BufferGeometry | null;
  readonly lamps: BufferGeometry | null;
  readonly windows: BufferGeometry | null;
  /** Cloths of roller blinds, let down. */
  readonly cloths: BufferGeometry | null;
  /** Small things first: they hide parts of the large ones, whose pixels then need no shading. */
  readonly drawOrder: readonly number[];
  readonly shared: SharedUniforms;
  readonly #direct: readonly [daylight: DataTexture, lamps: DataTexture];
  readonly #patterns: PatternTextures;
  #light: RoomLight | null = null;

  constructor(
    readonly room: Room,
    private readonly firstLight: RoomLight,
    private readonly texels: LightTexels,
    anisotropy: number,
  ) {
    const geometries = surfaceGeometries(room.light, firstLight.directAtlas, firstLight.nodeAtlas);
    this.surfaces = geometries.slice(0, room.light.surfaces.length);
    this.black = geometries[room.light.surfaces.length] ?? null;
    this.lamps = lampGeometry(room.light.lamps);
    this.windows = faceGeometry(
      room.light.windows.map((window) => faceOfRect(window.rect)),
      {
        wallTangent: (face) => Math.tan((room.light.windows[face]!.facing_deg * Math.PI) / 180),
        roller: (face) => (room.light.windows[face]!.roller ? 1 : 0),
      },
    );
    this.cloths = clothGeometry(room.light.blinds ?? []);
    this.drawOrder = ranksByExtent(this.surfaces);
    const texture = () => createDirectTexture(firstLight.directAtlas, texels);
    this.#direct = [texture(), texture()];
    this.shared = createSharedUniforms(this.#direct, room.size);
    this.#patterns = new PatternTextures(anisotropy);
  }

  createSlot(): LookSlot {
    return new LookSlot(this.room.light, this.firstLight, this.shared, this.texels);
  }

  showLight(light: RoomLight, slots: readonly LookSlot[]): void {
    for (const layer of [0, 1] as const) {
      const direct = light.direct[layer];
      if (direct && direct !== this.#light?.direct[layer]) updateDirectTexture(this.#direct[layer], direct);
    }
    this.#light = light;
    for (const slot of slots) slot.showLight(light);
  }

  showLooks(shown: readonly (readonly [LookSlot, Look])[]): void {
    for (const [slot, look] of shown) slot.show(look, this.#patterns);
    this.#patterns.keepOnly(new Set(shown.flatMap(([slot]) => slot.patterns)));
  }

  dispose(): void {
    for (const geometry of [...this.surfaces, this.black, this.lamps, this.windows, this.cloths]) geometry?.dispose();
    for (const texture of this.#direct) texture.dispose();
    this.#patterns.dispose();
  }
}

/** Per geometry its place in the order of growing bounding boxes. */
function ranksByExtent(geometries: readonly (BufferGeometry | null)[]): readonly number[] {
  const extents = geometries.map((geometry) => {
    geometry?.computeBoundingBox();
    const box = geometry?.boundingBox;
    return box ? box.min.distanceTo(box.max) : 0;
  });
  const order = extents.map((_, i) => i).sort((a, b) => extents[a]! - extents[b]!);
  return extents.map((_, i) => order.indexOf(i));
}
