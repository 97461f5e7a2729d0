import type { BufferGeometry, CubeTexture, DataArrayTexture, RawShaderMaterial, WebGLCubeRenderTarget } from 'three';
import type { LightRoom } from '../engine/light/types';
import type { PatternTexture } from '../engine/pattern/types';
import type { Look, RoomLight } from '../kitchen/look';
import { piecesOf } from '../kitchen/study/lay-pattern';
import { createFinishMaterial, showFinish } from './finish-material';
import { createNodeTexture, type LightTexels, updateNodeTexture } from './light-textures';
import { createMirrorCube } from './mirror-cube';
import { mirrorFaces, surfacesOn } from './mirror-planes';
import { clothUniforms, outsideUniforms, showCloths, showOutside } from './outside';
import type { PatternTextures } from './pattern-textures';
import { PlaneMirrors } from './plane-mirrors';
import { propGeometry, updatePropColors, updatePropLight } from './prop-geometry';
import { chooseVariant, createRoomMaterial, type ShownAs, showAs } from './room-material';
import { CLOTH_SHADERS, LAMP_SHADERS, WINDOW_SHADERS } from './shader-sources';
import type { SharedUniforms } from './shared-uniforms';
import { sheenOfLook } from './sheen';

/** Of props that do not say where they lie on a pattern. */
const noPattern = (): undefined => undefined;

/**
 * Lamps and panes are drawn over the black faces they lie on. By so many steps of depth, not by their slope: a lamp seen edge on would
 * come through the rail that hides it.
 */
const OVER_BLACK = { polygonOffset: true, polygonOffsetFactor: 0, polygonOffsetUnits: -16 } as const;

/**
 * Everything on the graphics card that belongs to one look: materials, indirect colours, and the room as its polished
 * faces mirror it. Made once per room and half of the picture; a new look only changes uniforms and texture contents.
 */
export class LookSlot {
  readonly surfaces: readonly RawShaderMaterial[];
  readonly props: readonly RawShaderMaterial[];
  readonly propGeometries: readonly BufferGeometry[];
  readonly lamps: RawShaderMaterial;
  readonly windows: RawShaderMaterial;
  readonly cloths: RawShaderMaterial;
  readonly cube: WebGLCubeRenderTarget = createMirrorCube();
  readonly mirror: { value: CubeTexture | null } = { value: this.cube.texture };
  /** Polished planes in sight. */
  readonly planes = new PlaneMirrors();
  /** The captured room no longer fits what is shown. */
  cubeIsStale = true;
  readonly #nodes: DataArrayTexture;
  /** Per surface the numbers of its pieces. */
  readonly #pieces: readonly (readonly number[])[];
  #look: Look | null = null;

  constructor(
    private readonly room: LightRoom,
    light: RoomLight,
    shared: SharedUniforms,
    texels: LightTexels,
  ) {
    this.#nodes = createNodeTexture(light.nodeAtlas, texels);
    const uniforms = { ...shared, nodeAtlas: { value: this.#nodes }, mirrorCube: this.mirror, ...this.planes.uniforms };
    this.#pieces = room.surfaces.map((_, surface) => piecesOf(room.fine.filter((rect) => rect.surface === surface)));
    this.surfaces = room.surfaces.map(() => createFinishMaterial('surface', uniforms));
    this.props = room.props.map(() => createFinishMaterial('prop', uniforms));
    this.propGeometries = room.props.map(propGeometry);
    const lamps = Math.max(1, room.lamps.length);
    const ofLamps = { lampColors: { value: new Float32Array(3 * lamps) }, shadeFalloff: { value: falloffOf(room) } };
    this.lamps = createRoomMaterial(
      { ...LAMP_SHADERS, ...OVER_BLACK, uniforms: { ...uniforms, ...ofLamps } },
      { LAMPS: lamps, SHEEN: 1 },
    );
    this.windows = createRoomMaterial(
      { ...WINDOW_SHADERS, ...OVER_BLACK, uniforms: { ...uniforms, ...outsideUniforms() } },
      { SHEEN: 1 },
    );
    const blinds = room.blinds?.length ?? 0;
    this.cloths = createRoomMaterial(
      { ...CLOTH_SHADERS, uniforms: { ...uniforms, ...clothUniforms(blinds) } },
      { BLINDS: Math.max(1, blinds), SHEEN: 1 },
    );
  }

  /** Takes over a state of the direct light of the props (that of surfaces is a shared texture). */
  showLight(light: RoomLight): void {
    this.propGeometries.forEach((geometry, i) => {
      updatePropLight(geometry, 'daylight', light.propDirect[0]?.[i]);
      updatePropLight(geometry, 'lamps', light.propDirect[1]?.[i]);
    });
    this.expire();
  }

  /** What its mirrors show is no longer what they should. */
  expire(): void {
    this.cubeIsStale = true;
    this.planes.expire();
  }

  show(look: Look, textures: PatternTextures): void {
    if (look === this.#look) return;
    const patternOf = (key: string) => look.patterns.get(key);
    const bySurface = new Map(look.surfaces.map((surface) => [surface.surface, surface]));
    this.surfaces.forEach((material, surface) => {
      showFinish(material, bySurface.get(surface), look.groupWhites, patternOf, textures, this.#pieces[surface]);
    });
    this.props.forEach((material, i) => {
      const { surface, pattern, piece = 0 } = this.room.props[i]!;
      // A prop is one piece: its vertices carry no number, which reads as the first.
      const its = pattern ? patternOf : noPattern;
      showFinish(material, bySurface.get(surface), look.groupWhites, its, textures, [piece]);
      updatePropColors(this.propGeometries[i]!, look.propColors[i]);
    });
    if (look.nodeColors !== this.#look?.nodeColors) updateNodeTexture(this.#nodes, look.nodeColors);
    const lampColors = this.lamps.uniforms['lampColors']!.value as Float32Array;
    look.lampColors.slice(0, this.room.lamps.length).forEach((color, i) => {
      lampColors.set(color, 3 * i);
    });
    showOutside(this.windows, look.outside);
    showCloths(this.cloths, look.outside);
    // By day a pane's own mirror drowns in what is seen through it.
    const faces = mirrorFaces(this.room, clearMirrors(look), look.outside === null);
    this.planes.setFaces(faces);
    const onPlanes = surfacesOn(faces, this.room);
    this.surfaces.forEach((material, surface) => {
      chooseVariant(material, { ON_PLANES: onPlanes.has(surface) ? 1 : undefined });
    });
    this.#look = look;
    this.expire();
  }

  /** Only shader variants change. */
  showAs(shownAs: ShownAs): void {
    for (const material of this.#materials) showAs(material, shownAs);
  }

  /** The patterns the look shown uses. */
  get patterns(): readonly PatternTexture[] {
    return this.#look ? [...this.#look.patterns.values()] : [];
  }

  dispose(): void {
    for (const material of this.#materials) material.dispose();
    for (const geometry of this.propGeometries) geometry.dispose();
    this.#nodes.dispose();
    this.cube.dispose();
    this.planes.dispose();
  }

  get #materials(): readonly RawShaderMaterial[] {
    return [...this.surfaces, ...this.props, this.lamps, this.windows, this.cloths];
  }
}

/** All shades have one form. */
function falloffOf({ lamps }: LightRoom): readonly [even: number, k: number] {
  const falloff = lamps.find(({ opening }) => opening)?.opening?.falloff;
  return falloff ? [falloff.even, falloff.k] : [1, 0];
}

/** A rougher finish blurs what it mirrors so far that the room's cube will do: half angle of the lobe, rad. */
const CLEAR_CONE = 0.06;

/** Surfaces whose faces mirror clearly enough for things to be told apart in them. */
const clearMirrors = ({ surfaces }: Look): ReadonlySet<number> =>
  new Set(
    surfaces
      .filter((surface) => {
        const sheen = sheenOfLook(surface);
        return sheen !== null && !sheen.brushWidths && sheen.cone < CLEAR_CONE;
      })
      .map(({ surface }) => surface),
  );
