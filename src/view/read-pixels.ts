import type { Look, RoomLight } from '../kitchen/look';
import type { Shot } from './tiles';

/** Pixels as in ImageData: RGBA bytes, rows from the top. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
}

/** What a mounted picture does for those who want its pixels. */
export interface Drawer {
  /** What it draws: one look, or two from left to right, and the light. */
  readonly shows: { readonly looks: readonly Look[]; readonly light: RoomLight };
  /** Draws a sharp frame on the canvas and gives its context. */
  drawSharp(): WebGLRenderingContext | WebGL2RenderingContext;
  /** Draws beside the canvas; null while there is nothing to draw with. RGBA bytes, rows from the top. */
  drawBeside(shot: Shot): Uint8ClampedArray | null;
}

const drawers = new WeakMap<HTMLCanvasElement, Drawer>();

/** Lets `readPixels` and `renderPicture` draw what this canvas shows. */
export function registerDrawer(canvas: HTMLCanvasElement, drawer: Drawer): () => void {
  drawers.set(canvas, drawer);
  return () => drawers.delete(canvas);
}

function drawerOf(canvas: HTMLCanvasElement): Drawer {
  const drawer = drawers.get(canvas);
  if (!drawer) throw new Error('This canvas shows no picture.');
  return drawer;
}

/** What a canvas draws by now: what is asked for comes a little later. Null where it is no mounted picture. */
export const shownOn = (canvas: HTMLCanvasElement): Drawer['shows'] | null => drawers.get(canvas)?.shows ?? null;

/**
 * Draws the picture at full resolution and reads it back before the browser takes the buffer away.
 * Rejects when the canvas is not a mounted picture.
 */
export async function readPixels(canvas: HTMLCanvasElement): Promise<Pixels> {
  const gl = drawerOf(canvas).drawSharp();
  const width = gl.drawingBufferWidth;
  const height = gl.drawingBufferHeight;
  const bottomUp = new Uint8Array(4 * width * height);
  gl.readPixels(0, 0, width, height, gl.RGBA, gl.UNSIGNED_BYTE, bottomUp);
  const data = new Uint8ClampedArray(bottomUp.length);
  for (let row = 0; row < height; row++) {
    data.set(bottomUp.subarray(4 * width * (height - 1 - row), 4 * width * (height - row)), 4 * width * row);
  }
  return { width, height, data };
}

/** How large a picture is wanted. */
export interface PictureSize {
  /** At scale 1, whole pixels. With the canvas's own size in pixels, scale 1 gives the pixels on screen. */
  readonly width: number;
  readonly height: number;
  /** 1-4: as many times more pixels along each edge, the picture the same but sharper. */
  readonly scale?: number;
  /** With the outline and the cards held in the room, which are else left out. */
  readonly marks?: boolean;
}

/** A picture to keep: RGBA bytes, rows from the top. */
export interface RenderedPicture {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8ClampedArray;
}

/**
 * Draws what a mounted picture shows now (camera, look or both, mode, marks of clipping) at another size, sharp, without touching
 * the canvas. Rejects when the canvas is not a mounted picture or the graphics card is lost just now.
 */
export async function renderPicture(
  canvas: HTMLCanvasElement,
  { width, height, scale = 1, marks = false }: PictureSize,
): Promise<RenderedPicture> {
  const shot = {
    width: Math.round(width * scale),
    height: Math.round(height * scale),
    pixelRatio: (scale * width) / Math.max(1, canvas.clientWidth),
    marks,
  };
  const rgba = drawerOf(canvas).drawBeside(shot);
  if (!rgba) throw new Error('There is no picture to be drawn just now.');
  return { width: shot.width, height: shot.height, rgba };
}
