import type { PictureSize } from '../../src/view/read-pixels';
import type { PicturePage } from './browser';
import type { LabChange } from './page/main';

/** Pixels of the picture under test: RGBA, rows from the top. */
export interface ShownPicture {
  readonly width: number;
  readonly height: number;
  readonly bytes: Uint8Array;
}

/** What is on the canvas after a change. */
export async function shown(lab: PicturePage, change: LabChange): Promise<ShownPicture> {
  const picture = await lab.page.evaluate(async (c) => {
    await window.lab.show(c);
    return window.lab.read();
  }, change);
  return fromText(picture);
}

/** What is drawn beside the canvas at another size. */
export async function rendered(lab: PicturePage, size: PictureSize): Promise<ShownPicture> {
  return fromText(await lab.page.evaluate((s) => window.lab.render(s), size));
}

const fromText = ({ width, height, base64 }: { width: number; height: number; base64: string }): ShownPicture => ({
  width,
  height,
  bytes: new Uint8Array(Buffer.from(base64, 'base64')),
});
