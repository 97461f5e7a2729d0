import { GLSL3, Mesh, type Object3D, RawShaderMaterial, type ShaderMaterialParameters } from 'three';

/** What the room is drawn for: display.glsl. */
const DISPLAY = { mirrors: 0, screen: 1, markedScreen: 2 } as const;

/** How the picture shows what it shows: with mirrored light or without, with a view mode or marks of clipping or as it is. */
export interface ShownAs {
  readonly sheen: boolean;
  readonly marked: boolean;
}

type Defines = Readonly<Record<string, number | undefined>>;
/** Those that only matter where light is mirrored. */
const OF_SHEEN = ['SHEEN', 'BRUSHED', 'ON_PLANES'];

/** Of a material: what mirrors show of it, the variant that was chosen last, and how it is shown. */
interface Kept {
  readonly mirrored: RawShaderMaterial;
  chosen: Defines;
  shownAs: ShownAs;
}

const keptOf = new WeakMap<RawShaderMaterial, Kept>();

/**
 * A material of the room. Beside the variant on screen it has one for mirrors, with the same uniforms: linear light and no sheen, so that no
 * mirror shows another. What a variant does not do it does not hold, because a processor that draws runs both sides of every branch.
 */
export function createRoomMaterial(parameters: ShaderMaterialParameters, defines: Defines): RawShaderMaterial {
  const material = new RawShaderMaterial({ ...parameters, glslVersion: GLSL3 });
  const mirrored = new RawShaderMaterial({ ...parameters, glslVersion: GLSL3 });
  keptOf.set(material, { mirrored, chosen: {}, shownAs: { sheen: true, marked: false } });
  chooseVariant(material, defines);
  material.addEventListener('dispose', () => mirrored.dispose());
  return material;
}

/** Chooses the shader variant of a finish. */
export function chooseVariant(material: RawShaderMaterial, defines: Defines): void {
  const kept = keptOf.get(material)!;
  kept.chosen = { ...kept.chosen, ...defines };
  define(kept.mirrored, { ...kept.chosen, ...WITHOUT_SHEEN, DISPLAY: DISPLAY.mirrors });
  defineShown(material, kept);
}

export function showAs(material: RawShaderMaterial, shownAs: ShownAs): void {
  const kept = keptOf.get(material)!;
  if (kept.shownAs.sheen === shownAs.sheen && kept.shownAs.marked === shownAs.marked) return;
  kept.shownAs = shownAs;
  defineShown(material, kept);
}

function defineShown(material: RawShaderMaterial, { chosen, shownAs }: Kept): void {
  const display = shownAs.marked ? DISPLAY.markedScreen : DISPLAY.screen;
  define(material, { ...chosen, ...(shownAs.sheen ? {} : WITHOUT_SHEEN), DISPLAY: display });
}

/** Does some drawing with what mirrors show of the materials in a part of the scene. */
export function withMirrored(part: Object3D, draw: () => void): void {
  const changed: [Mesh, RawShaderMaterial][] = [];
  part.traverse((object) => {
    if (!(object instanceof Mesh)) return;
    const material = object.material as RawShaderMaterial;
    const mirrored = keptOf.get(material)?.mirrored;
    if (!mirrored) return;
    changed.push([object, material]);
    object.material = mirrored;
  });
  draw();
  for (const [mesh, material] of changed) mesh.material = material;
}

const WITHOUT_SHEEN: Defines = { ...Object.fromEntries(OF_SHEEN.map((name) => [name, undefined])), SHEEN: 0 };

function define(material: RawShaderMaterial, wanted: Defines): void {
  for (const [name, value] of Object.entries(wanted)) {
    if (material.defines[name] === value) continue;
    if (value === undefined) delete material.defines[name];
    else material.defines[name] = value;
    material.needsUpdate = true;
  }
}
