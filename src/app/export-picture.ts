import { joined } from '../io/png-chunks';
import { pngFile } from '../io/png-file';
import { renderPicture } from '../view/read-pixels';
import { captionLines } from './caption-lines';
import { drawCaption } from './draw-caption';
import type { AppState } from './state';

const CSS_PX_PER_METER = 96 / 0.0254;

/** The canvas on which the room is drawn; null where there is none. */
export const pictureCanvas = (): HTMLCanvasElement | null => document.querySelector('.stage-fill canvas');

/**
 * The picture on screen as a PNG file, `scale` times as fine (1: the very pixels on screen), with what it is of written below it
 * and into the file. Rejects when there is no picture or no memory for it.
 */
export async function exportPicture(state: AppState, scale: number, date: Date): Promise<Blob> {
  const canvas = pictureCanvas();
  if (!canvas) throw new Error('There is no picture on screen.');
  const perCssPx = canvas.width / Math.max(1, canvas.clientWidth);
  const { width, height, rgba } = await renderPicture(canvas, { width: canvas.width, height: canvas.height, scale });
  const [title, ...rest] = captionLines(state, date);
  const band = drawCaption([title, ...rest], width, scale * perCssPx);
  const file = await pngFile(
    {
      width,
      height: height + band.height,
      rgba: joined([asBytes(rgba), asBytes(band.rgba)]),
      pixelsPerMeter: CSS_PX_PER_METER * perCssPx * scale,
      texts: [
        ['Title', title],
        ['Description', rest.join('\n')],
        ['Software', 'Upstand'],
        ['Creation Time', date.toISOString()],
      ],
    },
    deflated,
  );
  return new Blob([file], { type: 'image/png' });
}

const asBytes = ({ buffer, byteOffset, byteLength }: Uint8ClampedArray): Uint8Array =>
  new Uint8Array(buffer, byteOffset, byteLength);

/** A zlib stream: what the web platform calls "deflate". */
async function deflated(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array> {
  const stream = new Blob([bytes]).stream().pipeThrough(new CompressionStream('deflate'));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}
