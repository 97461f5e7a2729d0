import blackFragment from '../../shaders/black.frag?raw';
import brushed from '../../shaders/brushed.glsl?raw';
import cardFragment from '../../shaders/card.frag?raw';
import cardVertex from '../../shaders/card.vert?raw';
import clothFragment from '../../shaders/cloth.frag?raw';
import clothVertex from '../../shaders/cloth.vert?raw';
import copyFragment from '../../shaders/copy.frag?raw';
import coverVertex from '../../shaders/cover.vert?raw';
import display from '../../shaders/display.glsl?raw';
import encode from '../../shaders/encode.glsl?raw';
import flatFragment from '../../shaders/flat.frag?raw';
import lampFragment from '../../shaders/lamp.frag?raw';
import lampVertex from '../../shaders/lamp.vert?raw';
import maskFragment from '../../shaders/mask.frag?raw';
import mirror from '../../shaders/mirror.glsl?raw';
import outlineFragment from '../../shaders/outline.frag?raw';
import pieces from '../../shaders/pieces.glsl?raw';
import placedVertex from '../../shaders/placed.vert?raw';
import sheen from '../../shaders/sheen.glsl?raw';
import surfaceFragment from '../../shaders/surface.frag?raw';
import surfaceVertex from '../../shaders/surface.vert?raw';
import viewMode from '../../shaders/view-mode.glsl?raw';
import windowFragment from '../../shaders/window.frag?raw';
import windowVertex from '../../shaders/window.vert?raw';

const PARTS: Readonly<Record<string, string>> = {
  brushed,
  display,
  encode,
  mirror,
  pieces,
  sheen,
  'view-mode': viewMode,
};

/** A shader with the parts it names put in, and theirs. */
const withParts = (source: string): string =>
  source.replace(/^#include "([a-z-]+)"$/gm, (_, name: string) => withParts(PARTS[name]!));

export const SURFACE_SHADERS = { vertexShader: surfaceVertex, fragmentShader: withParts(surfaceFragment) };
export const LAMP_SHADERS = { vertexShader: lampVertex, fragmentShader: withParts(lampFragment) };
export const WINDOW_SHADERS = { vertexShader: windowVertex, fragmentShader: withParts(windowFragment) };
export const CLOTH_SHADERS = { vertexShader: clothVertex, fragmentShader: withParts(clothFragment) };
export const MASK_SHADERS = { vertexShader: placedVertex, fragmentShader: maskFragment };
export const OUTLINE_SHADERS = { vertexShader: coverVertex, fragmentShader: outlineFragment };
export const BLACK_SHADERS = { vertexShader: placedVertex, fragmentShader: blackFragment };
export const FLAT_SHADERS = { vertexShader: placedVertex, fragmentShader: withParts(flatFragment) };
export const CARD_SHADERS = { vertexShader: cardVertex, fragmentShader: withParts(cardFragment) };
export const COPY_SHADERS = { vertexShader: coverVertex, fragmentShader: copyFragment };
