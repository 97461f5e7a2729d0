import { failure, type Result, success } from '../engine/result';
import { lookText, parseLook, typeOfFile } from '../io/look-file';
import { MOST_PICTURE_BYTES, pictureTooLarge, readPictureFile } from '../io/picture-file';
import { parseProject } from '../io/project-file';
import { lookOfOption } from '../kitchen/carry/look-of-option';
import type { CopiedLook } from '../model/look';
import type { PicturePixels } from '../ui/look/picture-points';
import { PICTURE_PROBLEMS } from '../ui/words/look';
import { PROBLEMS } from '../ui/words/problems';
import { reread } from '../ui/words/spoken';
import { fileNameOf } from './file-name';
import { type FileLimit, readFile } from './read-file';
import { saveBlob } from './save-blob';

/** A project may stand in for a look. */
const LOOK_FILE = reread(
  (): FileLimit => ({ megabytes: 40, tooLarge: PROBLEMS.tooLarge, remedy: PROBLEMS.tooLargeRemedy(40) }),
);
/** Points need no more pixels than this on the longer side, and a page has not much room for more. */
const SHOWN_PX = 1600;
const LEAST_PX = 16;

/** Decodes a picture in the browser. Only its pixels are taken: what else the file says, as its place and time, is never read. */
export async function decodePicture(file: File): Promise<Result<PicturePixels>> {
  if (file.size > MOST_PICTURE_BYTES) return failure({ ...pictureTooLarge(file.size), at: { file: file.name } });
  let bitmap: ImageBitmap;
  try {
    // A small file may hold a picture larger than memory: its size is read before it is decoded.
    const read = readPictureFile(new Uint8Array(await file.arrayBuffer()));
    if (!read.ok) return { ...read, problem: { ...read.problem, at: { file: file.name } } };
    bitmap = await createImageBitmap(file);
  } catch {
    return refused(file, 'not-a-picture', PICTURE_PROBLEMS.unreadable, PICTURE_PROBLEMS.unreadableRemedy);
  }
  try {
    const { width, height } = bitmap;
    if (Math.min(width, height) < LEAST_PX) {
      return refused(file, 'picture-too-small', PICTURE_PROBLEMS.tooSmall, PICTURE_PROBLEMS.tooSmallRemedy);
    }
    const scale = Math.min(1, SHOWN_PX / Math.max(width, height));
    const [w, h] = [Math.max(1, Math.round(width * scale)), Math.max(1, Math.round(height * scale))];
    const canvas = new OffscreenCanvas(w, h);
    const context = canvas.getContext('2d', { colorSpace: 'srgb', willReadFrequently: true });
    if (!context) return refused(file, 'not-a-picture', PICTURE_PROBLEMS.unreadable, PICTURE_PROBLEMS.unreadableRemedy);
    context.drawImage(bitmap, 0, 0, w, h);
    return success({ width: w, height: h, rgba: context.getImageData(0, 0, w, h).data });
  } finally {
    bitmap.close();
  }
}

const refused = (file: File, code: string, text: string, remedy: string): Result<never> => ({
  ok: false,
  problem: { code, text, at: { file: file.name }, remedy },
});

/** A look from a file: a look file, or the first option of a project file. */
export const readLookFile = (file: File): Promise<Result<CopiedLook>> =>
  readFile(file, LOOK_FILE, (text) => {
    if (typeOfFile(text) !== 'upstand-project') return parseLook(text, file.name);
    const project = parseProject(text, file.name);
    return project.ok ? lookOfOption(project.value, project.value.options[0]!.id) : project;
  });

export const saveLookFile = (look: CopiedLook): void =>
  saveBlob(
    new Blob([lookText(look)], { type: 'application/json' }),
    `${fileNameOf({ id: 'look', name: look.id })}.look.json`,
  );

/** An id that no look has. */
export function freeLookId(looks: readonly CopiedLook[]): string {
  for (let count = looks.length + 1; ; count++) {
    const id = `look-${count}`;
    if (!looks.some((one) => one.id === id)) return id;
  }
}
