import { afterEach, expect, it, vi } from 'vitest';
import { decodePicture } from '../../src/app/look-files';
import { openPicture } from '../../src/ui/photo/open-picture';

/** A PNG (W3C) that says its size and ends, as a file of a few kilobytes may that unfolds to gigabytes. */
function png(width: number, height: number): File {
  const bytes = new Uint8Array(45);
  bytes.set([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  const view = new DataView(bytes.buffer);
  view.setUint32(8, 13);
  bytes.set(new TextEncoder().encode('IHDR'), 12);
  view.setUint32(16, width);
  view.setUint32(20, height);
  bytes.set(new TextEncoder().encode('IEND'), 37);
  return new File([bytes], 'bomb.png', { type: 'image/png' });
}

afterEach(() => vi.unstubAllGlobals());

// The look's picture was decoded first and measured afterwards.
it.each([
  ['of a look', decodePicture],
  ['of a sample', openPicture],
])('a picture %s is measured before it is decoded', async (_, open) => {
  const decode = vi.fn(() => Promise.reject(new Error('broken')));
  vi.stubGlobal('createImageBitmap', decode);
  const codeOf = async (file: File) => {
    const opened = await open(file);
    return opened.ok ? 'opened' : opened.problem.code;
  };
  expect(await codeOf(png(20_000, 20_000))).toBe('picture-too-many-pixels');
  expect(await codeOf(png(0, 0))).toBe('picture-broken');
  expect(await codeOf(new File([], 'empty.png'))).toBe('picture-empty');
  expect(await codeOf(new File(['GIF89a and so on'], 'moving.gif'))).toBe('picture-unknown');
  expect(decode).not.toHaveBeenCalled();
  // What decodes to nothing is a problem, too, and no exception.
  expect(await codeOf(png(100, 100))).toMatch(/picture/);
  expect(decode).toHaveBeenCalledOnce();
});
