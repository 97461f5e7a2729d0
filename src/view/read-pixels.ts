/** Pixels as in ImageData: RGBA bytes, rows from the top. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
}

const drawers = new WeakMap<HTMLCanvasElement, () => WebGLRenderingContext | WebGL2RenderingContext>();

/** Lets `readPixels` draw on this canvas; `draw` draws a sharp frame and gives the context. */
export function registerDrawer(
  canvas: HTMLCanvasElement,
  draw: () => WebGLRenderingContext | WebGL2RenderingContext,
): () => void {
  drawers.set(canvas, draw);
  return () => drawers.delete(canvas);
}

/**
 * Draws the picture at full resolution and reads it back before the browser takes the buffer away.
 * Rejects when the canvas is not a mounted picture.
 */
export async function readPixels(canvas: HTMLCanvasElement): Promise<Pixels> {
  const draw = drawers.get(canvas);
  if (!draw) throw new Error('This canvas shows no picture.');
  const gl = draw();
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
