import { linearPictureMaker } from '../../engine/photo/linear-picture';
import type { LinearPicture } from '../../engine/photo/types';
import { failure, type Result, success } from '../../engine/result';
import { MOST_PICTURE_BYTES, pictureTooLarge, readPictureFile } from '../../io/picture-file';
import { PHOTO } from '../words/photo';

/** A picture ready to work with. Nothing of the file is kept but its pixels, and those only as long as the form is open. */
export interface OpenedPicture {
  readonly width: number;
  readonly height: number;
  readonly linear: LinearPicture;
  /** To look at, no larger than a screen needs. */
  readonly shown: ImageBitmap;
}

const MOST_SHOWN_PX = 2000;
/** Rows taken in at a time; between them the page answers. */
const STRIP_ROWS = 256;

/**
 * Decodes a picture into linear light. The browser turns it upright and converts its colors to sRGB, or to Display P3 where it
 * has a profile; of what else is in the file (place, time, camera) nothing is read.
 */
export async function openPicture(file: Blob): Promise<Result<OpenedPicture>> {
  if (file.size > MOST_PICTURE_BYTES) return failure(pictureTooLarge(file.size));
  let bitmap: ImageBitmap | null = null;
  try {
    const read = readPictureFile(new Uint8Array(await file.arrayBuffer()));
    if (!read.ok) return read;
    bitmap = await createImageBitmap(file);
    const { width, height } = bitmap;
    const maker = linearPictureMaker(width, height, read.value.space);
    const canvas = new OffscreenCanvas(width, Math.min(STRIP_ROWS, height));
    const pen = canvas.getContext('2d', { colorSpace: read.value.space, willReadFrequently: true });
    if (!pen) throw new Error('There is no canvas to decode on.');
    for (let top = 0; top < height; top += STRIP_ROWS) {
      const rows = Math.min(STRIP_ROWS, height - top);
      pen.clearRect(0, 0, width, rows);
      pen.drawImage(bitmap, 0, -top);
      maker.take(pen.getImageData(0, 0, width, rows, { colorSpace: read.value.space }).data);
      await new Promise((resolve) => setTimeout(resolve));
    }
    const scale = Math.min(1, MOST_SHOWN_PX / Math.max(width, height));
    const shown = await createImageBitmap(bitmap, {
      resizeWidth: Math.max(1, Math.round(width * scale)),
      resizeHeight: Math.max(1, Math.round(height * scale)),
      resizeQuality: 'medium',
    });
    return success({ width, height, linear: maker.finish(), shown });
  } catch {
    return failure({ code: 'picture-broken', text: PHOTO.broken, remedy: PHOTO.brokenRemedy });
  } finally {
    bitmap?.close();
  }
}
